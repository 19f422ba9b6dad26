package org.ricasso.dsl.evaluate;

import java.util.List;
import org.ricasso.dsl.syntax.Expression.Operator;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Numbers;
import org.ricasso.shared.quantity.Quantity;

/** Three-valued comparisons over bands. {@code reach} says which band is judged. */
public final class Comparisons {
    private Comparisons() {}

    /** @throws IllegalArgumentException if two hardness values lie outside the table that joins their scales */
    public static Truth compare(Operator operator, Value a, Value b, boolean reach) {
        if (a instanceof Value.Along || b instanceof Value.Along) {
            return stations(a, b, (x, y) -> compare(operator, x, y, reach));
        }
        if (a instanceof Value.Num x && b instanceof Value.Num y) {
            return numbers(operator, x.quantity(), y.quantity(), reach);
        }
        if (operator == Operator.EQUALS) {
            return equal(a, b);
        }
        return a instanceof Value.Date x && b instanceof Value.Date y ? dates(operator, x.date().compareTo(y.date())) : Truth.UNKNOWN;
    }

    /** @param order of two dates, which ISO 8601 writes so that they stand in the order of their letters */
    private static Truth dates(Operator operator, int order) {
        return switch (operator) {
            case AT_MOST -> Truth.of(order <= 0);
            case AT_LEAST -> Truth.of(order >= 0);
            case LESS -> Truth.of(order < 0);
            case MORE -> Truth.of(order > 0);
            default -> Truth.UNKNOWN;
        };
    }

    private interface Check {
        Truth of(Value a, Value b);
    }

    private static Truth stations(Value a, Value b, Check check) {
        Truth[] result = {null};
        Alongs.combine(a, b, (x, y) -> {
            Truth here = check.of(new Value.Num(x), new Value.Num(y));
            result[0] = result[0] == null || result[0] == here ? here : mixed(result[0], here);
            return x;
        });
        return result[0];
    }

    private static Truth mixed(Truth a, Truth b) {
        return a == Truth.UNKNOWN || b == Truth.UNKNOWN ? Truth.UNKNOWN : Truth.SOME;
    }

    private static Truth numbers(Operator operator, Quantity x, Quantity y, boolean reach) {
        if (!x.measure().point() && !x.measure().dimension().equals(y.measure().dimension())) {
            throw new IllegalArgumentException("differences on two hardness scales cannot be compared");
        }
        Quantity converted = x.measure().point() && x.measure().dimension().isHardness()
                ? Arithmetic.onScaleOf(y, x) : y;
        Interval a = reach ? x.reach() : x.aim();
        Interval b = reach ? converted.reach() : converted.aim();
        return switch (operator) {
            case AT_MOST -> atMost(a, b);
            case AT_LEAST -> atMost(b, a);
            case LESS -> atMost(b, a).not();
            case MORE -> atMost(a, b).not();
            case EQUALS -> !a.overlaps(b) ? Truth.NONE : a.isSingle() && b.isSingle() ? Truth.ALL : Truth.SOME;
            default -> Truth.UNKNOWN;
        };
    }

    private static Truth atMost(Interval a, Interval b) {
        if (Numbers.compare(a.most(), b.least()) <= 0) {
            return Truth.ALL;
        }
        return Numbers.compare(a.least(), b.most()) > 0 ? Truth.NONE : Truth.SOME;
    }

    private static Truth equal(Value a, Value b) {
        Value left = plain(a);
        Value right = plain(b);
        if (left instanceof Value.Words x && right instanceof Value.Words y) {
            boolean shares = x.words().stream().anyMatch(y.words()::contains);
            return !shares ? Truth.NONE : x.words().size() == 1 && y.words().size() == 1 ? Truth.ALL : Truth.SOME;
        }
        if (left instanceof Value.Ref x && right instanceof Value.Ref y) {
            return Truth.of(x.thing().isSame(y.thing()));
        }
        return Truth.of(left.equals(right));
    }

    /** A condition's outcome as the word it would be where a yes-or-no is kept. */
    static Value plain(Value value) {
        if (value instanceof Value.Logic logic) {
            return switch (logic.truth()) {
                case ALL -> Value.Words.of("yes");
                case NONE -> Value.Words.of("no");
                default -> new Value.Words(List.of("no", "yes"));
            };
        }
        return value;
    }

    /** Whether {@code a} is what {@code condition} asks: one of the words or things, or inside the band. */
    public static Truth meets(Value a, Value condition, boolean reach) {
        if (condition instanceof Value.Several several) {
            Truth any = Truth.NONE;
            if (a instanceof Value.Words words) {
                long in = words.words().stream()
                        .filter(w -> several.values().contains(Value.Words.of(w))).count();
                return in == words.words().size() ? Truth.ALL : in == 0 ? Truth.NONE : Truth.SOME;
            }
            for (Value one : several.values()) {
                any = any.or(meets(a, one, reach));
            }
            return any;
        }
        if (a instanceof Value.Several several) {
            return several.values().stream().map(v -> meets(v, condition, reach)).reduce(Truth.ALL, Truth::and);
        }
        if (a instanceof Value.Along || condition instanceof Value.Along) {
            if (numeric(a) && numeric(condition)) {
                return stations(a, condition, (x, y) -> meets(x, y, reach));
            }
            return Truth.UNKNOWN;
        }
        if (a instanceof Value.Num x && condition instanceof Value.Num y) {
            return inside(x.quantity(), y.quantity(), reach);
        }
        if (a instanceof Value.Clock clock && condition instanceof Value.Num y) {
            return Numbers.compare(clock.atLeast(), y.quantity().aim().most()) > 0 ? Truth.NONE : Truth.UNKNOWN;
        }
        return equal(a, condition);
    }

    private static boolean numeric(Value value) {
        return value instanceof Value.Num || value instanceof Value.Along;
    }

    private static Truth inside(Quantity x, Quantity y, boolean reach) {
        Quantity limit = y.measure().dimension().isHardness() && y.measure().point() ? Arithmetic.onScaleOf(y, x) : y;
        Interval a = reach ? x.reach() : x.aim();
        // a limit is what is written, never what it could scatter to
        Interval b = limit.aim();
        return a.isInside(b) ? Truth.ALL : a.overlaps(b) ? Truth.SOME : Truth.NONE;
    }

    /** The truth of a condition: a comparison's outcome, or a yes-or-no. */
    public static Truth truth(Value value) {
        if (value instanceof Value.Logic logic) {
            return logic.truth();
        }
        if (value instanceof Value.Words words) {
            return words.words().size() > 1 ? Truth.SOME : Truth.of(words.words().get(0).equals("yes"));
        }
        return Truth.UNKNOWN;
    }
}
