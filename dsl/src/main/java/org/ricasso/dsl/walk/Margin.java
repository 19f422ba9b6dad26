package org.ricasso.dsl.walk;

import org.ricasso.dsl.evaluate.Value;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;
import org.ricasso.shared.quantity.Shown;
import org.ricasso.shared.quantity.Unit;

/**
 * How far what a route leaves is inside the limit at the nearer end, in coherent units; negative where it sticks out.
 *
 * @param aim of the aim
 * @param reach of the reach
 * @param shown the reach's margin in the limit's unit
 */
public record Margin(double aim, double reach, String shown) {

    /** The margin of a number inside a limit on the same scale; at the worst station along an axis; else null. */
    public static Margin of(Value asked, Value found) {
        if (asked instanceof Value.Num limit && found instanceof Value.Num value) {
            return of(limit.quantity(), value.quantity());
        }
        if (asked instanceof Value.Along limits && found instanceof Value.Along values) {
            Margin worst = null;
            for (Value.Station limit : limits.stations()) {
                for (Value.Station value : values.stations()) {
                    if (value.position() == limit.position()) {
                        Margin here = of(limit.quantity(), value.quantity());
                        worst = worst == null || here != null && here.reach < worst.reach ? here : worst;
                    }
                }
            }
            return worst;
        }
        return null;
    }

    private static Margin of(Quantity limit, Quantity value) {
        if (!limit.measure().equals(value.measure()) || limit.aim().equals(Interval.EVERYTHING)) {
            return null;
        }
        double aim = inside(value.aim(), limit.aim());
        double reach = inside(value.reach(), limit.aim());
        Unit unit = limit.shown().unit();
        Unit amount = unit.offset() == 0 ? unit : Unit.of(limit.measure().dimension().toString(),
                limit.measure().dimension(), 1, 1);
        Quantity shown = new Quantity(new Measure(limit.measure().dimension(), false), Interval.of(reach),
                Interval.of(reach), reach, new Shown(amount, Math.max(limit.shown().decimals(), amount.decimals()), null));
        return new Margin(aim, reach, QuantityFormat.aim(shown));
    }

    private static double inside(Interval value, Interval limit) {
        return Math.min(value.least() - limit.least(), limit.most() - value.most());
    }
}
