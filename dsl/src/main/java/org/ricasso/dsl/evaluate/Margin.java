package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Expression.Operator;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;
import org.ricasso.shared.quantity.Shown;
import org.ricasso.shared.quantity.Unit;

/**
 * How far a number keeps from its limit at the nearer end; negative where it goes beyond. Along an axis the least of all
 * stations.
 *
 * @param of the comparison whose margin it is, or null for a value inside its limit
 * @param aim the margin of the aim, coherent units
 * @param reach the margin of the reach, coherent units; not above that of the aim
 * @param unit the unit it is shown in
 * @param decimals the decimals it is shown with
 */
public record Margin(Span of, double aim, double reach, Unit unit, int decimals) {

    /** The margins of all comparisons of numbers that must hold for a condition to hold, as written from left to right. */
    public static List<Margin> of(Node condition, Frame frame) {
        List<Margin> result = new ArrayList<>();
        for (Comparison comparison : condition.comparisons()) {
            Margin margin = of(comparison, comparison.left().eval(frame), comparison.right().eval(frame));
            if (margin != null) {
                result.add(margin);
            }
        }
        return result;
    }

    /** The margin of what is found inside what is asked; null where nothing can be measured. */
    public static Margin inside(Value asked, Value found) {
        return least(null, Operator.IN, found, asked);
    }

    /** The margin between the two sides of a comparison; null where nothing can be measured. */
    public static Margin of(Comparison comparison, Value left, Value right) {
        return least(comparison.node().span(), comparison.operator(), left, right);
    }

    private static Margin least(Span span, Operator operator, Value left, Value right) {
        if (left instanceof Value.Num a && right instanceof Value.Num b) {
            return one(span, operator, a.quantity(), b.quantity());
        }
        if (!isNumber(left) || !isNumber(right)) {
            return null;
        }
        Margin[] least = {null};
        boolean[] all = {true};
        Alongs.combine(left, right, (a, b) -> {
            Margin here = one(span, operator, a, b);
            all[0] &= here != null;
            least[0] = here == null ? least[0] : least[0] == null ? here : new Margin(span,
                    Math.min(least[0].aim, here.aim), Math.min(least[0].reach, here.reach), here.unit, here.decimals);
            return a;
        });
        return all[0] ? least[0] : null;
    }

    private static boolean isNumber(Value value) {
        return value instanceof Value.Num || value instanceof Value.Along;
    }

    /** Seen on the scale of the left, as comparisons see it; in the unit of what it is compared with where that is the same. */
    private static Margin one(Span span, Operator operator, Quantity left, Quantity right) {
        Quantity limit = right;
        if (!left.measure().equals(right.measure())) {
            try {
                if (!left.measure().point() || !right.measure().point()) {
                    return null;
                }
                limit = Arithmetic.onScaleOf(right, left);
            } catch (IllegalArgumentException outsideTheHardnessTable) {
                return null;
            }
        }
        double aim = between(operator, left.aim(), limit.aim());
        double reach = between(operator, left.reach(), operator == Operator.IN ? limit.aim() : limit.reach());
        if (Double.isInfinite(aim) || Double.isNaN(aim) || Double.isInfinite(reach) || Double.isNaN(reach)) {
            return null;
        }
        Unit unit = limit.shown().unit();
        Unit amount = unit.offset() == 0 ? unit
                : Unit.of(limit.measure().dimension().toString(), limit.measure().dimension(), 1, 1);
        return new Margin(span, aim + 0.0, reach + 0.0, amount, Math.max(limit.shown().decimals(), amount.decimals()));
    }

    private static double between(Operator operator, Interval a, Interval b) {
        return switch (operator) {
            case AT_MOST, LESS -> b.least() - a.most();
            case AT_LEAST, MORE -> a.least() - b.most();
            default -> Math.min(a.least() - b.least(), b.most() - a.most());
        };
    }

    /** The comparison as written, on one line; empty for a value inside its limit. */
    public String text() {
        return of == null ? "" : Node.oneLine(of);
    }

    /** The margin of the aim in its unit, rounded down: a margin never looks larger than it is. */
    public String shownAim() {
        return shown(aim);
    }

    /** The margin of the reach in its unit, rounded down. */
    public String shownReach() {
        return shown(reach);
    }

    private String shown(double margin) {
        return QuantityFormat.down(new Quantity(new Measure(unit.dimension(), false), Interval.of(margin),
                Interval.of(margin), margin, new Shown(unit, decimals, null)), margin);
    }
}
