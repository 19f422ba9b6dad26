package org.ricasso.dsl.evaluate;

import org.ricasso.shared.quantity.Base;
import org.ricasso.shared.quantity.Dimension;
import org.ricasso.shared.quantity.HardnessScales;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.Shown;
import org.ricasso.shared.quantity.Unit;
import org.ricasso.shared.quantity.UnitTable;

/** Plain interval arithmetic on quantities: aim and reach side by side, points kept apart from differences. */
public final class Arithmetic {
    private final UnitTable units;

    public Arithmetic(UnitTable units) {
        this.units = units;
    }

    public Quantity plus(Quantity a, Quantity b) {
        boolean point = a.measure().point() || b.measure().point();
        Measure measure = new Measure(a.measure().dimension(), point);
        Shown shown = shown(measure, a.measure().point() || !b.measure().point() ? a : b);
        return new Quantity(measure, a.aim().plus(b.aim()), a.reach().plus(b.reach()), a.nominal() + b.nominal(), shown);
    }

    public Quantity minus(Quantity a, Quantity b) {
        boolean point = a.measure().point() && !b.measure().point();
        Measure measure = new Measure(a.measure().dimension(), point);
        return new Quantity(measure, a.aim().minus(b.aim()), a.reach().minus(b.reach()), a.nominal() - b.nominal(),
                shown(measure, a));
    }

    public Quantity times(Quantity a, Quantity b) {
        return product(a, b, a.measure().dimension().times(b.measure().dimension()), a.aim().times(b.aim()),
                a.reach().times(b.reach()), a.nominal() * b.nominal());
    }

    /** @throws ArithmeticException if the divisor's band holds zero */
    public Quantity over(Quantity a, Quantity b) {
        return product(a, b, a.measure().dimension().dividedBy(b.measure().dimension()), a.aim().dividedBy(b.aim()),
                a.reach().dividedBy(b.reach()), a.nominal() / b.nominal());
    }

    private Quantity product(Quantity a, Quantity b, Dimension dimension, Interval aim, Interval reach, double nominal) {
        Measure measure = new Measure(dimension, false);
        Shown shown;
        if (b.measure().dimension().isNumber()) {
            shown = shown(measure, a);
        } else if (a.measure().dimension().isNumber() && dimension.equals(b.measure().dimension())) {
            shown = shown(measure, b);
        } else {
            shown = Shown.in(units.shownFor(dimension));
        }
        return new Quantity(measure, aim, reach, nominal, shown);
    }

    public Quantity negated(Quantity a) {
        return new Quantity(a.measure(), a.aim().negated(), a.reach().negated(), -a.nominal(), a.shown().computed());
    }

    public Quantity min(Quantity a, Quantity b) {
        return new Quantity(a.measure(), a.aim().min(b.aim()), a.reach().min(b.reach()),
                Math.min(a.nominal(), b.nominal()), a.shown().computed());
    }

    public Quantity max(Quantity a, Quantity b) {
        return new Quantity(a.measure(), a.aim().max(b.aim()), a.reach().max(b.reach()),
                Math.max(a.nominal(), b.nominal()), a.shown().computed());
    }

    public Quantity absolute(Quantity a) {
        return new Quantity(a.measure(), a.aim().absolute(), a.reach().absolute(), Math.abs(a.nominal()),
                a.shown().computed());
    }

    /** The reach widened by {@code ± by}. */
    public Quantity scatter(Quantity a, Quantity by) {
        return new Quantity(a.measure(), a.aim(), a.reach().widened(Math.max(0, by.reach().most())), a.nominal(),
                a.shown().computed());
    }

    /** The reach covers the middle of the aim {@code ± by}. */
    public Quantity setTo(Quantity a, Quantity by) {
        Interval capability = Interval.of(a.aim().middle()).widened(Math.max(0, by.reach().most()));
        return new Quantity(a.measure(), a.aim(), a.reach().hull(capability), a.nominal(), a.shown().computed());
    }

    public Quantity hull(Quantity a, Quantity b) {
        double nominal = a.nominal() == b.nominal() ? a.nominal() : Double.NaN;
        return new Quantity(a.measure(), a.aim().hull(b.aim()), a.reach().hull(b.reach()), nominal,
                a.shown().computed());
    }

    /** A single number taken from both bands, such as their least: each end keeps its own band. */
    public Quantity end(Quantity a, double ofAim, double ofReach) {
        return new Quantity(a.measure(), Interval.of(ofAim), Interval.between(ofAim, ofReach), ofAim,
                a.shown().computed());
    }

    /** A single exact number in the unit of {@code a}, as a difference where {@code a} is a point. */
    public Quantity difference(Quantity a, Interval aim, Interval reach) {
        Measure measure = a.measure().difference();
        return new Quantity(measure, aim, reach, aim.isSingle() ? aim.least() : Double.NaN, shown(measure, a));
    }

    /** Straight between two values: {@code share} 0 is {@code a}, 1 is {@code b}. */
    public static Quantity between(Quantity a, Quantity b, double share) {
        return new Quantity(a.measure(), between(a.aim(), b.aim(), share), between(a.reach(), b.reach(), share),
                a.nominal() + (b.nominal() - a.nominal()) * share, a.shown().computed());
    }

    private static Interval between(Interval a, Interval b, double share) {
        return Interval.between(mix(a.least(), b.least(), share), mix(a.most(), b.most(), share));
    }

    private static double mix(double a, double b, double share) {
        return a == b ? a : a + (b - a) * share;
    }

    /**
     * The quantity on the hardness scale of another; itself where the scale is the same.
     *
     * @throws IllegalArgumentException outside the published table
     */
    public static Quantity onScaleOf(Quantity a, Quantity like) {
        Dimension to = like.measure().dimension();
        if (a.measure().dimension().equals(to)) {
            return a;
        }
        Base from = scale(a.measure().dimension());
        Base target = scale(to);
        return new Quantity(new Measure(to, true), HardnessScales.convert(a.aim(), from, target),
                HardnessScales.convert(a.reach(), from, target),
                a.hasNominal() ? HardnessScales.convert(a.nominal(), from, target) : Double.NaN,
                Shown.in(like.shown().unit()));
    }

    private static Base scale(Dimension dimension) {
        for (Base base : new Base[] {Base.ROCKWELL_C, Base.VICKERS, Base.BRINELL}) {
            if (dimension.equals(Dimension.of(base))) {
                return base;
            }
        }
        throw new IllegalArgumentException("not a hardness");
    }

    private static Shown shown(Measure measure, Quantity like) {
        Unit unit = like.shown().unit();
        if (!measure.point() && unit.offset() != 0) {
            // a difference of °C is shown in K
            return Shown.in(Unit.of(measure.dimension().toString(), measure.dimension(), 1, 1));
        }
        return like.shown().computed();
    }
}
