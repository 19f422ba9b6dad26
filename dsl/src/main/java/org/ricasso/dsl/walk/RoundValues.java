package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.Unit;

/** Values worth trying for a setting: round ones in the unit it is written in, never finer than its written decimals. */
final class RoundValues {
    private static final int TRIES = 48;
    private static final int FINER = 10;

    private final Quantity current;
    private final Unit unit;
    private final boolean point;
    private final double least;
    private final double most;
    private final double step;

    /** @param within the setting's sensible range, or null */
    RoundValues(Quantity current, Quantity within) {
        this.current = current;
        this.unit = current.shown().unit();
        this.point = current.measure().point();
        Interval range = within != null && within.aim().isBounded() ? within.aim() : around();
        this.least = unit.fromCoherent(range.least(), point);
        this.most = unit.fromCoherent(range.most(), point);
        this.step = roundStep((most - least) / TRIES);
    }

    private Interval around() {
        double middle = current.aim().middle();
        double half = Math.abs(point ? middle - unit.offset() : middle) / 2;
        return Interval.of(middle).widened(half);
    }

    /** Over the whole range. */
    List<Double> coarse() {
        return between(least, most, step);
    }

    /** Between the neighbours of one of the coarse values; none where they were as fine as the setting is written. */
    List<Double> around(double value) {
        double finer = roundStep(step / FINER);
        double middle = unit.fromCoherent(value, point);
        return finer >= step ? List.of() : between(Math.max(least, middle - step), Math.min(most, middle + step), finer);
    }

    private List<Double> between(double from, double to, double by) {
        List<Double> result = new ArrayList<>();
        long first = (long) StrictMath.ceil(from / by - 1e-9);
        for (long i = first; i * by <= to + by * 1e-9; i++) {
            result.add(unit.toCoherent(i * by, point));
        }
        return result;
    }

    /** All values that can be written with the decimals of a setting, counted. */
    static final class Finest {
        private final Unit unit;
        private final boolean point;
        private final double step;

        Finest(Quantity current) {
            this.unit = current.shown().unit();
            this.point = current.measure().point();
            this.step = StrictMath.pow(10, -current.shown().decimals());
        }

        long count(double value) {
            return StrictMath.round(unit.fromCoherent(value, point) / step);
        }

        double value(long count) {
            return unit.toCoherent(count * step, point);
        }
    }

    /** 1, 2 or 5 times a power of ten, at least what the written decimals show. */
    private double roundStep(double about) {
        double finest = StrictMath.pow(10, -current.shown().decimals());
        double power = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(Math.max(about, finest))));
        for (double factor : new double[] {1, 2, 5, 10}) {
            if (factor * power >= about - 1e-12 && factor * power >= finest - 1e-12) {
                return factor * power;
            }
        }
        return 10 * power;
    }
}
