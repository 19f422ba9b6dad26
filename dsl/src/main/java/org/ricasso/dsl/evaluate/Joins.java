package org.ricasso.dsl.evaluate;

import java.util.List;
import java.util.TreeSet;

/** The join of what two ways leave: hull of numbers, union of words. */
public final class Joins {
    private Joins() {}

    public static Value join(Value a, Value b, Arithmetic arithmetic) {
        if (a.equals(b)) {
            return a;
        }
        if (a instanceof Value.Unknown || a instanceof Value.Absent) {
            return a;
        }
        if (b instanceof Value.Unknown || b instanceof Value.Absent) {
            return b;
        }
        if (a instanceof Value.Num x && b instanceof Value.Num y) {
            return new Value.Num(arithmetic.hull(x.quantity(), y.quantity()));
        }
        if (isNumeric(a) && isNumeric(b)) {
            return Alongs.combine(a, b, arithmetic::hull);
        }
        Value left = Comparisons.plain(a);
        Value right = Comparisons.plain(b);
        if (left instanceof Value.Words x && right instanceof Value.Words y) {
            TreeSet<String> words = new TreeSet<>(x.words());
            words.addAll(y.words());
            return new Value.Words(List.copyOf(words));
        }
        if (a instanceof Value.Clock x && b instanceof Value.Clock y) {
            return new Value.Clock(Math.min(x.atLeast(), y.atLeast()));
        }
        return new Value.Unknown("it may be " + Shows.show(a) + " or " + Shows.show(b), false);
    }

    private static boolean isNumeric(Value value) {
        return value instanceof Value.Num || value instanceof Value.Along;
    }
}
