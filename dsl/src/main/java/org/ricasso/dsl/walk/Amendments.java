package org.ricasso.dsl.walk;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.shared.quantity.Numbers;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.Unit;

/** Values as they would be written after a change: tolerance kept, digits as the engineer wrote them. */
final class Amendments {
    private Amendments() {}

    /** The attempt that a rule's remedy computes, or null where it computes nothing that can be written. */
    static Finding.Attempt attempt(Walk walk, Rule.Remedy remedy, int index, Frame frame) {
        Value amount = remedy.value().eval(frame);
        if (amount instanceof Value.Unknown || amount instanceof Value.Absent) {
            return null;
        }
        Value current = remedy.target().setting() >= 0 && index >= 0 ? frame.settings[remedy.target().setting()]
                : remedy.target().entry() == null ? null : walk.product.at(remedy.target().entry());
        if (current == null) {
            return null;
        }
        String text = changed(current, remedy.change(), amount);
        if (text == null) {
            return null;
        }
        return remedy.target().setting() >= 0 ? new Finding.Attempt.Setting(index, remedy.target().setting(), text)
                : new Finding.Attempt.Entry(remedy.target().entry(), text);
    }

    private static String changed(Value current, Rule.Change change, Value amount) {
        if (change == Rule.Change.TO) {
            return Shows.show(amount);
        }
        if (!(current instanceof Value.Num now) || !(amount instanceof Value.Num by)) {
            return null;
        }
        Quantity quantity = now.quantity();
        Quantity target = by.quantity();
        double up = quantity.aim().most() - middle(quantity);
        double down = middle(quantity) - quantity.aim().least();
        return switch (change) {
            case MOST -> write(quantity, target.reach().least() - up, up, down, RoundingMode.FLOOR);
            case LEAST -> write(quantity, target.reach().most() + down, up, down, RoundingMode.CEILING);
            case MIDDLE -> write(quantity, target.aim().middle(), up, down, RoundingMode.HALF_EVEN);
            default -> !quantity.hasNominal() ? widened(quantity, target.reach().most()) : write(quantity, middle(quantity), target.reach().most(), target.reach().most(),
                    RoundingMode.HALF_EVEN);
        };
    }

    private static double middle(Quantity quantity) {
        return quantity.hasNominal() ? quantity.nominal() : quantity.aim().middle();
    }

    /** A range about the same middle that reaches at least so far to both sides. */
    private static String widened(Quantity like, double by) {
        Unit unit = like.shown().unit();
        boolean point = like.measure().point();
        int decimals = like.shown().decimals();
        double middle = middle(like);
        return Double.isNaN(middle) || Double.isInfinite(middle) ? null
                : round(unit.fromCoherent(middle - by, point), decimals, RoundingMode.FLOOR) + ".."
                        + round(unit.fromCoherent(middle + by, point), decimals, RoundingMode.CEILING) + " " + unit.sign();
    }

    /** A quantity with another middle, written as this one is: same unit, same decimals, same tolerance. */
    static String moved(Quantity quantity, double middle) {
        return write(quantity, middle, quantity.aim().most() - middle(quantity), middle(quantity) - quantity.aim().least(),
                RoundingMode.HALF_EVEN);
    }

    private static String write(Quantity like, double middle, double up, double down, RoundingMode mode) {
        if (Double.isInfinite(up) || Double.isInfinite(down) || Double.isNaN(middle)) {
            return null;
        }
        Unit unit = like.shown().unit();
        boolean point = like.measure().point();
        int decimals = like.shown().decimals();
        String sign = unit.sign().isEmpty() ? "" : " " + unit.sign();
        String number = round(unit.fromCoherent(middle, point), decimals, mode);
        if (Numbers.compare(up, 0) == 0 && Numbers.compare(down, 0) == 0) {
            return number + sign;
        }
        if (!like.hasNominal()) {
            return round(unit.fromCoherent(middle - down, point), decimals, mode) + ".."
                    + round(unit.fromCoherent(middle + up, point), decimals, mode) + sign;
        }
        if (Math.abs(up - down) <= 1e-9 * Math.max(Math.abs(up), Math.abs(down))) {
            return number + " ± " + round(unit.fromCoherent(up, false), decimals, RoundingMode.CEILING) + sign;
        }
        return number + " (+" + round(unit.fromCoherent(up, false), decimals, RoundingMode.CEILING) + "/-"
                + round(unit.fromCoherent(down, false), decimals, RoundingMode.CEILING) + ")" + sign;
    }

    private static String round(double value, int decimals, RoundingMode mode) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(9, RoundingMode.HALF_EVEN)).setScale(decimals, mode);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
    }
}
