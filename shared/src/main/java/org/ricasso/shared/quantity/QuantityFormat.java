package org.ricasso.shared.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Quantities as text: the digits as written, or computed values rounded outward so that a band never looks tighter. */
public final class QuantityFormat {
    private static final int MOST_DECIMALS = 18;
    private static final MathContext NINE_DIGITS = new MathContext(9, RoundingMode.HALF_EVEN);

    private QuantityFormat() {}

    /** As written, else the aim: {@code 180 ± 5 °C}, {@code 56.2..57.1 HRC}, {@code max 0.4 µm}, {@code 2.4 mm}. */
    public static String show(Quantity quantity) {
        return quantity.shown().written() != null ? quantity.shown().written() : aim(quantity);
    }

    /** The aim as a computed value. */
    public static String aim(Quantity quantity) {
        return band(quantity, quantity.aim());
    }

    /** The reach as a computed value. */
    public static String reach(Quantity quantity) {
        return band(quantity, quantity.reach());
    }

    /** One coherent number in the quantity's unit, rounded to its decimals. */
    public static String number(Quantity quantity, double coherent) {
        int decimals = decimals(quantity, Interval.of(coherent));
        return withUnit(round(quantity, coherent, decimals, RoundingMode.HALF_EVEN), quantity.shown().unit());
    }

    /** One coherent number in the quantity's unit, rounded down: what is to spare never looks more than it is. */
    public static String down(Quantity quantity, double coherent) {
        return withUnit(round(quantity, coherent, decimals(quantity, Interval.of(coherent)), RoundingMode.FLOOR),
                quantity.shown().unit());
    }

    /** Some band of the quantity's measure, in its unit. */
    public static String band(Quantity quantity, Interval band) {
        Unit unit = quantity.shown().unit();
        int decimals = decimals(quantity, band);
        if (band.isSingle()) {
            return withUnit(round(quantity, band.least(), decimals, RoundingMode.HALF_EVEN), unit);
        }
        if (band.most() == Double.POSITIVE_INFINITY) {
            return band.least() == Double.NEGATIVE_INFINITY ? withUnit("any", unit)
                    : withUnit("min " + round(quantity, band.least(), decimals, RoundingMode.FLOOR), unit);
        }
        if (band.least() == Double.NEGATIVE_INFINITY) {
            return withUnit("max " + round(quantity, band.most(), decimals, RoundingMode.CEILING), unit);
        }
        String least = round(quantity, band.least(), decimals, RoundingMode.FLOOR);
        String most = round(quantity, band.most(), decimals, RoundingMode.CEILING);
        return withUnit(least.equals(most) ? least : least + ".." + most, unit);
    }

    /** The unit's decimals, and more where they would leave the larger end less than two digits: 0.0004 mm, not 0.0. */
    private static int decimals(Quantity quantity, Interval band) {
        int decimals = quantity.shown().decimals();
        Unit unit = quantity.shown().unit();
        double size = Math.max(finite(band.least()), finite(band.most())) / unit.factor();
        if (quantity.measure().point() || size == 0) {
            return decimals;
        }
        // the place of the first digit that is not nought: 0 for 0.5, 3 for 0.0005
        BigDecimal rounded = new BigDecimal(size).round(NINE_DIGITS);
        int first = rounded.scale() - rounded.precision();
        return size >= 1 ? decimals : Math.max(decimals, Math.min(first + 2, MOST_DECIMALS));
    }

    private static double finite(double end) {
        return Double.isInfinite(end) || Numbers.compare(end, 0) == 0 ? 0 : Math.abs(end);
    }

    private static String round(Quantity quantity, double coherent, int decimals, RoundingMode mode) {
        if (Double.isInfinite(coherent)) {
            return coherent > 0 ? "∞" : "-∞";
        }
        double value = quantity.shown().unit().fromCoherent(coherent, quantity.measure().point());
        // to nearest first: neither 0.30000000000000004 nor the 5E-14 °C that an offset leaves of 0 °C is rounded up
        BigDecimal near = new BigDecimal(value).round(NINE_DIGITS).setScale(decimals + 6, RoundingMode.HALF_EVEN);
        BigDecimal result = near.setScale(decimals, mode);
        if (result.signum() == 0) {
            result = result.abs();
        }
        return trimmed(result);
    }

    /** No trailing zeros beyond one decimal: 2.80 is kept as 2.8, 56.0 as 56.0. */
    private static String trimmed(BigDecimal value) {
        if (value.scale() <= 1) {
            return value.toPlainString();
        }
        BigDecimal stripped = value.stripTrailingZeros();
        return (stripped.scale() < 1 ? stripped.setScale(1) : stripped).toPlainString();
    }

    private static String withUnit(String number, Unit unit) {
        return unit.sign().isEmpty() ? number : number + " " + unit.sign();
    }
}
