package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BinaryOperator;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Expression.Operator;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;
import org.ricasso.shared.quantity.Shown;

/** The nodes of calls. */
final class Functions {
    private Functions() {}

    /** A fold over numbers, station by station where they vary. */
    static final class Numeric extends Node {
        private final List<Node> arguments;
        private final BinaryOperator<Quantity> fold;

        Numeric(Span span, Type type, List<Node> arguments, BinaryOperator<Quantity> fold) {
            super(span, type);
            this.arguments = List.copyOf(arguments);
            this.fold = fold;
        }

        @Override
        List<Node> parts() {
            return arguments;
        }

        @Override
        protected Value compute(Frame frame) {
            Value result = arguments.get(0).eval(frame);
            for (Node argument : arguments.subList(1, arguments.size())) {
                Value next = argument.eval(frame);
                Value blocked = Operators.blocked(frame, result, next);
                if (blocked != null) {
                    return blocked;
                }
                result = result instanceof Value.Num x && next instanceof Value.Num y
                        ? new Value.Num(fold.apply(x.quantity(), y.quantity())) : Alongs.combine(result, next, fold);
            }
            return result;
        }
    }

    static final class Known extends Node {
        private final Node argument;

        Known(Span span, Node argument) {
            super(span, Type.Plain.LOGIC);
            this.argument = argument;
        }

        @Override
        List<Node> parts() {
            return List.of(argument);
        }

        @Override
        protected Value compute(Frame frame) {
            if (frame.bound == null) {
                Value value = argument.eval(frame);
                if (value instanceof Value.Unknown unknown && unknown.reported()) {
                    frame.reported = true;
                    return new Value.Logic(Truth.UNKNOWN);
                }
                return known(value);
            }
            // in an example, what is not bound is not there: that is what is asked
            Set<String> missing = Set.copyOf(frame.missing);
            Value value = argument.eval(frame);
            frame.missing.retainAll(missing);
            String inner = argument.span().text() + ".";
            return frame.bound.keySet().stream().anyMatch(k -> k.startsWith(inner)) ? new Value.Logic(Truth.ALL)
                    : known(value);
        }

        private static Value known(Value value) {
            return new Value.Logic(Truth.of(!(value instanceof Value.Unknown) && !(value instanceof Value.Absent)));
        }
    }

    /** {@code overlaps}, {@code inside}, {@code one-of}. */
    static final class Relation extends Node {
        private final String name;
        private final Node first;
        private final Node second;

        Relation(Span span, String name, Node first, Node second) {
            super(span, Type.Plain.LOGIC);
            this.name = name;
            this.first = first;
            this.second = second;
        }

        @Override
        List<Node> parts() {
            return List.of(first, second);
        }

        @Override
        protected Value compute(Frame frame) {
            Value a = first.eval(frame);
            Value b = second.eval(frame);
            if (Operators.blocked(frame, a, b) != null) {
                return new Value.Logic(Truth.UNKNOWN);
            }
            try {
                return new Value.Logic(switch (name) {
                    case "one-of" -> a instanceof Value.Several several
                            ? Comparisons.meets(b, several, frame.reach) : Comparisons.meets(b, a, frame.reach);
                    case "inside" -> Comparisons.meets(a, b, frame.reach);
                    default -> overlaps(a, b, frame.reach);
                });
            } catch (IllegalArgumentException refused) {
                frame.refusals.add(new Frame.Refusal(refused.getMessage(), new Reads(), ""));
                return new Value.Logic(Truth.UNKNOWN);
            }
        }

        @Override
        public List<Comparison> comparisons() {
            return name.equals("inside") && Comparison.isNumber(first.type()) && Comparison.isNumber(second.type())
                    ? List.of(new Comparison(this, Operator.IN, first, second)) : List.of();
        }

        private static Truth overlaps(Value a, Value b, boolean reach) {
            if (a instanceof Value.Num x && b instanceof Value.Num y) {
                Quantity other = x.quantity().measure().dimension().isHardness()
                        && x.quantity().measure().point() ? Arithmetic.onScaleOf(y.quantity(), x.quantity()) : y.quantity();
                return Truth.of(reach ? x.quantity().reach().overlaps(other.reach())
                        : x.quantity().aim().overlaps(other.aim()));
            }
            return Truth.of(Comparisons.meets(a, b, reach) != Truth.NONE);
        }
    }

    /** {@code .between(a, b)} and {@code .at(a)}. */
    static final class AlongAxis extends Node {
        private final Node target;
        private final List<Node> stations;
        private final Arithmetic arithmetic;

        AlongAxis(Span span, Type type, Node target, List<Node> stations, Arithmetic arithmetic) {
            super(span, type);
            this.target = target;
            this.stations = List.copyOf(stations);
            this.arithmetic = arithmetic;
        }

        @Override
        List<Node> parts() {
            List<Node> result = new ArrayList<>(stations);
            result.add(0, target);
            return result;
        }

        @Override
        protected Value compute(Frame frame) {
            Value value = target.eval(frame);
            Value from = stations.get(0).eval(frame);
            Value to = stations.get(stations.size() - 1).eval(frame);
            Value blocked = Operators.blocked(frame, value, from);
            blocked = blocked != null ? blocked : Operators.blocked(frame, to, to);
            if (blocked != null) {
                return blocked;
            }
            Interval a = ((Value.Num) from).quantity().aim();
            Interval b = ((Value.Num) to).quantity().aim();
            return new Value.Num(Alongs.between(value, Math.min(a.least(), b.least()), Math.max(a.most(), b.most()),
                    arithmetic));
        }
    }

    static final class LookUp extends Node {
        private final Table table;
        private final List<Node> arguments;
        private final List<Reads> reads;
        private final Arithmetic arithmetic;

        LookUp(Span span, Table table, List<Node> arguments, List<Reads> reads, Arithmetic arithmetic) {
            super(span, table.rowType());
            this.table = table;
            this.arguments = List.copyOf(arguments);
            this.reads = List.copyOf(reads);
            this.arithmetic = arithmetic;
        }

        @Override
        List<Node> parts() {
            return arguments;
        }

        @Override
        protected Value compute(Frame frame) {
            Table.Answer answer = ask(frame);
            if (frame.uses != null && answer != null) {
                answer.used().forEach(row -> frame.uses.rows.put(row, table));
            }
            return answer == null ? blockedBy(frame) : answer.found() != null ? answer.found() : refused(frame, answer);
        }

        private Table.Answer ask(Frame frame) {
            Value[] asked = new Value[arguments.size()];
            for (int i = 0; i < asked.length; i++) {
                asked[i] = arguments.get(i).eval(frame);
                if (asked[i] instanceof Value.Along along) {
                    asked[i] = new Value.Num(Alongs.hull(along, arithmetic));
                }
                if (asked[i] instanceof Value.Unknown || asked[i] instanceof Value.Absent) {
                    return null;
                }
            }
            return table.lookUp(asked, arithmetic);
        }

        private Value blockedBy(Frame frame) {
            for (Node argument : arguments) {
                Value value = argument.eval(frame);
                Value blocked = Operators.blocked(frame, value, value);
                if (blocked != null) {
                    return blocked;
                }
            }
            return new Value.Unknown("nothing says", false);
        }

        private Value refused(Frame frame, Table.Answer answer) {
            frame.refusals.add(new Frame.Refusal(answer.refusal(), reads.get(answer.refusedKey()), table.source()));
            return new Value.Unknown(answer.refusal(), false);
        }

        @Override
        protected String source(Frame frame, Value value) {
            Trace trace = frame.trace;
            frame.trace = null;
            Table.Answer answer = ask(frame);
            frame.trace = trace;
            if (answer == null || answer.found() == null) {
                return "";
            }
            return table.cite(answer.used());
        }
    }

    static final class Engineering extends Node {
        private final Calculation calculation;
        private final List<Node> arguments;
        private final List<Reads> reads;
        private final Lexicon lexicon;

        Engineering(Span span, Type type, Calculation calculation, List<Node> arguments, List<Reads> reads,
                Lexicon lexicon) {
            super(span, type);
            this.calculation = calculation;
            this.arguments = List.copyOf(arguments);
            this.reads = List.copyOf(reads);
            this.lexicon = lexicon;
        }

        @Override
        List<Node> parts() {
            return arguments;
        }

        @Override
        protected Value compute(Frame frame) {
            Interval[] aim = new Interval[arguments.size()];
            Interval[] reach = new Interval[arguments.size()];
            for (int i = 0; i < aim.length; i++) {
                Value value = arguments.get(i).eval(frame);
                Value blocked = Operators.blocked(frame, value, value);
                if (blocked != null) {
                    return blocked;
                }
                Quantity quantity = value instanceof Value.Along along ? Alongs.hull(along, lexicon.arithmetic())
                        : ((Value.Num) value).quantity();
                Calculation.Argument argument = calculation.arguments().get(i);
                if (argument.measure().dimension().isHardness() && argument.measure().point()) {
                    try {
                        quantity = Arithmetic.onScaleOf(quantity, Quantity.of(argument.measure(), 0,
                                lexicon.units().shownFor(argument.measure().dimension())));
                    } catch (IllegalArgumentException outside) {
                        return refuse(frame, i, outside.getMessage());
                    }
                }
                Interval range = new Interval(argument.least(), argument.most());
                if (!quantity.reach().isInside(range)) {
                    return refuse(frame, i, calculation.name() + " holds for " + argument.name() + " "
                            + QuantityFormat.band(quantity, range) + ", asked for " + QuantityFormat.reach(quantity));
                }
                aim[i] = quantity.aim();
                reach[i] = quantity.reach();
            }
            if (frame.uses != null) {
                frame.uses.calculations.add(calculation);
            }
            try {
                Interval narrow = calculation.over(aim);
                Interval wide = calculation.over(reach).hull(narrow);
                double nominal = narrow.isSingle() ? narrow.least() : Double.NaN;
                return new Value.Num(new Quantity(calculation.result(), narrow, wide, nominal,
                        Shown.in(lexicon.units().shownFor(calculation.result().dimension()))));
            } catch (IllegalArgumentException | ArithmeticException refused) {
                return refuse(frame, 0, calculation.name() + ": " + refused.getMessage());
            }
        }

        private Value refuse(Frame frame, int argument, String why) {
            frame.refusals.add(new Frame.Refusal(why, reads.get(argument), calculation.cited()));
            return new Value.Unknown(why, false);
        }

        @Override
        protected String source(Frame frame, Value value) {
            return calculation.cited();
        }
    }
}
