package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Expression.Operator;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.Shown;

/** Operators, limits and choices. */
final class Operators {
    private final Checker checker;

    Operators(Checker checker) {
        this.checker = checker;
    }

    Node infix(Expression.Infix infix, Type expected) {
        return switch (infix.operator()) {
            case AND, OR -> new Joined(infix.span(), infix.operator(), checker.required(infix.left(), Type.Plain.LOGIC),
                    checker.required(infix.right(), Type.Plain.LOGIC));
            case PLUS, MINUS, TIMES, OVER -> arithmetic(infix);
            default -> comparison(infix);
        };
    }

    private Node comparison(Expression.Infix infix) {
        Node left;
        Node right;
        if (infix.left() instanceof Expression.NameUse && !(infix.right() instanceof Expression.NameUse)) {
            left = checker.node(infix.left(), null, false);
            right = checker.node(infix.right(), left.type(), false);
        } else {
            left = checker.node(infix.left(), null, false);
            right = checker.node(infix.right(), left.type(), false);
        }
        Type asked = infix.operator() == Operator.IN && right.type() instanceof Type.ListOf list ? list.element()
                : right.type();
        boolean fits = Type.fits(left.type(), asked) || Type.fits(asked, left.type());
        boolean ordered = Members.measureOf(left.type()) != null || left.type() == Type.Plain.CLOCK
                || left.type() == Type.Plain.DATE;
        if (!fits && !(left.type() == Type.Plain.CLOCK && isDuration(asked))) {
            checker.findings.error("wrong-type", infix.span(), Type.describe(left.type()) + " is compared with "
                    + Type.describe(asked));
            return Checker.fault(infix.span());
        }
        if (!ordered && left.type() != Type.Plain.ANY && infix.operator() != Operator.EQUALS
                && infix.operator() != Operator.IN) {
            checker.findings.error("wrong-type", infix.span(), Type.describe(left.type()) + " has no order");
            return Checker.fault(infix.span());
        }
        return new Compared(infix.span(), infix.operator(), left, right);
    }

    private static boolean isDuration(Type type) {
        return Measure.DURATION.equals(Members.measureOf(type));
    }

    private Node arithmetic(Expression.Infix infix) {
        Node left = checker.node(infix.left(), null, false);
        if (left.type() == Type.Plain.ANY) {
            return Checker.fault(infix.span());
        }
        Measure a = Members.measureOf(left.type());
        Node right;
        boolean sum = infix.operator() == Operator.PLUS || infix.operator() == Operator.MINUS;
        if (sum && a != null && infix.right() instanceof Expression.Literal literal && a.point()) {
            right = checker.literal(literal, null, checker.typeOf(a.difference()));
        } else {
            right = checker.node(infix.right(), null, false);
        }
        Measure b = Members.measureOf(right.type());
        if (left.type() == Type.Plain.ANY || right.type() == Type.Plain.ANY) {
            return Checker.fault(infix.span());
        }
        if (a == null || b == null) {
            checker.findings.error("wrong-type", infix.span(), "only numbers are calculated with; this is "
                    + Type.describe(a == null ? left.type() : right.type()));
            return Checker.fault(infix.span());
        }
        Measure result = result(infix, a, b);
        if (result == null) {
            return Checker.fault(infix.span());
        }
        Type type = checker.typeOf(result);
        Axis axis = left.type() instanceof Type.AlongAxis x ? x.axis()
                : right.type() instanceof Type.AlongAxis y ? y.axis() : null;
        return new Calculated(infix.span(), axis == null ? type : new Type.AlongAxis((Type.Measured) type, axis),
                infix.operator(), left, right, checker.lexicon.arithmetic());
    }

    private Measure result(Expression.Infix infix, Measure a, Measure b) {
        Operator operator = infix.operator();
        if (operator == Operator.TIMES || operator == Operator.OVER) {
            if (a.point() || b.point()) {
                checker.findings.error("point-multiplied", infix.span(),
                        "a point on a scale is neither multiplied nor divided; take a difference of two points");
                return null;
            }
            return new Measure(operator == Operator.TIMES ? a.dimension().times(b.dimension())
                    : a.dimension().dividedBy(b.dimension()), false);
        }
        if (!a.dimension().equals(b.dimension())) {
            checker.findings.error("wrong-dimension", infix.span(), Type.describe(checker.typeOf(a)) + " and "
                    + Type.describe(checker.typeOf(b)) + " have no " + (operator == Operator.PLUS ? "sum" : "difference"));
            return null;
        }
        if (operator == Operator.PLUS ? a.point() && b.point() : !a.point() && b.point()) {
            checker.findings.error("point-for-difference", infix.span(), operator == Operator.PLUS
                    ? "two points on a scale have no sum" : "a point cannot be taken from a difference");
            return null;
        }
        return new Measure(a.dimension(), operator == Operator.PLUS ? a.point() || b.point() : a.point() && !b.point());
    }

    Node prefix(Expression.Prefix prefix) {
        if (prefix.operator() == Operator.NOT) {
            return new Negated(prefix.span(), checker.required(prefix.operand(), Type.Plain.LOGIC));
        }
        Node operand = checker.node(prefix.operand(), null, false);
        Measure measure = Members.measureOf(operand.type());
        if (measure == null || measure.point()) {
            if (operand.type() != Type.Plain.ANY) {
                checker.findings.error("wrong-type", prefix.span(), "only an amount has an opposite");
            }
            return Checker.fault(prefix.span());
        }
        return new Opposite(prefix.span(), operand, checker.lexicon.arithmetic());
    }

    Node limit(Expression.Limit limit, Type expected) {
        Type asked = expected instanceof Type.AlongAxis along ? along.element()
                : expected == Type.Plain.CLOCK ? checker.typeOf(Measure.DURATION) : expected;
        Node bound = checker.required(limit.bound(), asked);
        if (bound.type() != Type.Plain.ANY && Members.measureOf(bound.type()) == null) {
            checker.findings.error("wrong-type", limit.span(), "only a number limits");
            return Checker.fault(limit.span());
        }
        return new Limited(limit.span(), bound.type(), bound, limit.upper());
    }

    Node choice(Expression.Choice choice, Type expected) {
        Node condition = checker.required(choice.condition(), Type.Plain.LOGIC);
        Node then = expected == null ? checker.node(choice.then(), null, false) : checker.required(choice.then(), expected);
        Type asked = expected != null ? expected : then.type();
        Node otherwise = checker.required(choice.otherwise(), asked);
        return new Chosen(choice.span(), expected != null && expected != Type.Plain.ANY ? expected : then.type(),
                condition, then, otherwise, checker.lexicon.arithmetic());
    }

    /** Notes what keeps a value from being known; the value if one of the two is not. */
    static Value blocked(Frame frame, Value a, Value b) {
        for (Value value : new Value[] {a, b}) {
            if (value instanceof Value.Absent absent) {
                frame.absent = absent.path();
                return value;
            }
        }
        for (Value value : new Value[] {a, b}) {
            if (value instanceof Value.Unknown unknown) {
                note(frame, unknown);
                return value;
            }
        }
        return null;
    }

    /** Notes why a value is unknown: a fault that has been reported, or a new reason, once. */
    private static void note(Frame frame, Value.Unknown unknown) {
        if (unknown.reported()) {
            frame.reported = true;
        } else if (frame.refusals.stream().noneMatch(r -> r.reason().equals(unknown.reason()))) {
            frame.refusals.add(new Frame.Refusal(unknown.reason(), new Reads(), ""));
        }
    }

    private static final class Joined extends Node {
        private final Operator operator;
        private final Node left;
        private final Node right;

        Joined(Span span, Operator operator, Node left, Node right) {
            super(span, Type.Plain.LOGIC);
            this.operator = operator;
            this.left = left;
            this.right = right;
        }

        @Override
        List<Node> parts() {
            return List.of(left, right);
        }

        @Override
        protected Value compute(Frame frame) {
            Truth a = truth(frame, left.eval(frame));
            if (a == (operator == Operator.AND ? Truth.NONE : Truth.ALL)) {
                return new Value.Logic(a);
            }
            Truth b = truth(frame, right.eval(frame));
            return new Value.Logic(operator == Operator.AND ? a.and(b) : a.or(b));
        }

        @Override
        public List<Comparison> comparisons() {
            if (operator != Operator.AND) {
                return List.of();
            }
            List<Comparison> result = new ArrayList<>(left.comparisons());
            result.addAll(right.comparisons());
            return result;
        }
    }

    static Truth truth(Frame frame, Value value) {
        blocked(frame, value, value);
        return Comparisons.truth(value);
    }

    private static final class Negated extends Node {
        private final Node operand;

        Negated(Span span, Node operand) {
            super(span, Type.Plain.LOGIC);
            this.operand = operand;
        }

        @Override
        List<Node> parts() {
            return List.of(operand);
        }

        @Override
        protected Value compute(Frame frame) {
            return new Value.Logic(truth(frame, operand.eval(frame)).not());
        }
    }

    private static final class Compared extends Node {
        private final Operator operator;
        private final Node left;
        private final Node right;

        Compared(Span span, Operator operator, Node left, Node right) {
            super(span, Type.Plain.LOGIC);
            this.operator = operator;
            this.left = left;
            this.right = right;
        }

        @Override
        List<Node> parts() {
            return List.of(left, right);
        }

        @Override
        protected Value compute(Frame frame) {
            Value a = left.eval(frame);
            Value b = right.eval(frame);
            if (blocked(frame, a, b) != null) {
                return new Value.Logic(Truth.UNKNOWN);
            }
            try {
                return new Value.Logic(operator == Operator.IN ? Comparisons.meets(a, b, frame.reach)
                        : Comparisons.compare(operator, clock(a), clock(b), frame.reach));
            } catch (IllegalArgumentException refused) {
                frame.refusals.add(new Frame.Refusal(refused.getMessage(), new Reads(), ""));
                return new Value.Logic(Truth.UNKNOWN);
            }
        }

        @Override
        public List<Comparison> comparisons() {
            return operator == Operator.EQUALS || !Comparison.isNumber(left.type()) || !Comparison.isNumber(right.type())
                    ? List.of() : List.of(new Comparison(this, operator, left, right));
        }

        private static Value clock(Value value) {
            return value instanceof Value.Clock clock
                    ? new Value.Num(Quantity.band(Measure.DURATION,
                            new Interval(clock.atLeast(), Double.POSITIVE_INFINITY),
                            org.ricasso.shared.quantity.Unit.of("s", Measure.DURATION.dimension(), 1, 0)))
                    : value;
        }
    }

    private static final class Calculated extends Node {
        private final Operator operator;
        private final Node left;
        private final Node right;
        private final Arithmetic arithmetic;

        Calculated(Span span, Type type, Operator operator, Node left, Node right, Arithmetic arithmetic) {
            super(span, type);
            this.operator = operator;
            this.left = left;
            this.right = right;
            this.arithmetic = arithmetic;
        }

        @Override
        List<Node> parts() {
            return List.of(left, right);
        }

        @Override
        protected Value compute(Frame frame) {
            Value a = left.eval(frame);
            Value b = right.eval(frame);
            Value blocked = blocked(frame, a, b);
            if (blocked != null) {
                return blocked;
            }
            try {
                return a instanceof Value.Num x && b instanceof Value.Num y
                        ? new Value.Num(one(x.quantity(), y.quantity())) : Alongs.combine(a, b, this::one);
            } catch (ArithmeticException impossible) {
                frame.refusals.add(new Frame.Refusal(impossible.getMessage(), new Reads(), ""));
                return new Value.Unknown(impossible.getMessage(), false);
            }
        }

        private Quantity one(Quantity x, Quantity y) {
            return switch (operator) {
                case PLUS -> arithmetic.plus(x, y);
                case MINUS -> arithmetic.minus(x, y);
                case TIMES -> arithmetic.times(x, y);
                default -> arithmetic.over(x, y);
            };
        }
    }

    private static final class Opposite extends Node {
        private final Node operand;
        private final Arithmetic arithmetic;

        Opposite(Span span, Node operand, Arithmetic arithmetic) {
            super(span, operand.type());
            this.operand = operand;
            this.arithmetic = arithmetic;
        }

        @Override
        List<Node> parts() {
            return List.of(operand);
        }

        @Override
        protected Value compute(Frame frame) {
            Value value = operand.eval(frame);
            if (value instanceof Value.Num num) {
                return new Value.Num(arithmetic.negated(num.quantity()));
            }
            return value instanceof Value.Along along ? Alongs.map(along, arithmetic::negated) : value;
        }
    }

    private static final class Limited extends Node {
        private final Node bound;
        private final boolean upper;

        Limited(Span span, Type type, Node bound, boolean upper) {
            super(span, type);
            this.bound = bound;
            this.upper = upper;
        }

        @Override
        List<Node> parts() {
            return List.of(bound);
        }

        @Override
        protected Value compute(Frame frame) {
            Value value = bound.eval(frame);
            if (value instanceof Value.Num num) {
                return new Value.Num(open(num.quantity()));
            }
            return value instanceof Value.Along along ? Alongs.map(along, this::open) : value;
        }

        /** At most the least that the bound can be, at least the most: a limit with a band of its own judges safely. */
        private Quantity open(Quantity bound) {
            String written = bound.shown().written();
            Shown shown = new Shown(bound.shown().unit(), bound.shown().decimals(),
                    written == null ? null : (upper ? "max " : "min ") + written);
            return upper
                    ? new Quantity(bound.measure(), new Interval(Double.NEGATIVE_INFINITY, bound.aim().least()),
                            new Interval(Double.NEGATIVE_INFINITY, bound.aim().least()), Double.NaN, shown)
                    : new Quantity(bound.measure(), new Interval(bound.aim().most(), Double.POSITIVE_INFINITY),
                            new Interval(bound.aim().most(), Double.POSITIVE_INFINITY), Double.NaN, shown);
        }
    }

    private static final class Chosen extends Node {
        private final Node condition;
        private final Node then;
        private final Node otherwise;
        private final Arithmetic arithmetic;

        Chosen(Span span, Type type, Node condition, Node then, Node otherwise, Arithmetic arithmetic) {
            super(span, type);
            this.condition = condition;
            this.then = then;
            this.otherwise = otherwise;
            this.arithmetic = arithmetic;
        }

        @Override
        List<Node> parts() {
            return List.of(condition, then, otherwise);
        }

        @Override
        protected Value compute(Frame frame) {
            Value asked = condition.eval(frame);
            return switch (truth(frame, asked)) {
                case ALL -> then.eval(frame);
                case NONE -> otherwise.eval(frame);
                case SOME -> Joins.join(then.eval(frame), otherwise.eval(frame), arithmetic);
                case UNKNOWN -> asked instanceof Value.Absent || asked instanceof Value.Unknown ? asked
                        : new Value.Unknown("nothing says whether " + condition.span().text(), false);
            };
        }
    }
}
