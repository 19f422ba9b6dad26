package org.ricasso.dsl.evaluate;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.Unit;

/** What stands behind a dot. */
final class Members {
    private static final Set<String> ENDS = Set.of("least", "most", "middle", "nominal", "width");
    private final Checker checker;

    Members(Checker checker) {
        this.checker = checker;
    }

    Node member(Expression.Member member, Type expected, boolean limits) {
        String name = member.name().text();
        boolean end = ENDS.contains(name);
        Node target = checker.node(member.target(), null, end && (name.equals("nominal") || name.equals("middle")));
        Type type = target.type();
        if (type instanceof Type.StateOf state) {
            return state(member, state);
        }
        if (type == Type.Plain.STEP) {
            return setting(member);
        }
        if (type == Type.Plain.OPERATION) {
            return attribute(member, expected);
        }
        if (type instanceof Type.ThingOf of) {
            Map<String, EntryType> entries = checker.lexicon.entries(of.kind());
            EntryType entry = entries.get(name);
            if (entry == null) {
                checker.findings.unknownName(member.name().span(), "entry of " + of.kind(), name, entries.keySet());
                return Checker.fault(member.span());
            }
            return entry(target, entry, member.span(), limits);
        }
        if (type instanceof Type.RowOf row) {
            Type column = row.columns().get(name);
            if (column == null) {
                checker.findings.unknownName(member.name().span(), "found column of " + row.table(), name,
                        row.columns().keySet());
                return Checker.fault(member.span());
            }
            return new Nodes.EntryUse(member.span(), column, target, name, member.span().text());
        }
        if (end && (type instanceof Type.Measured || type instanceof Type.AlongAxis)) {
            return end(member.span(), target, name);
        }
        if (type == Type.Plain.CLOCK && name.equals("least")) {
            return new LeastTime(member.span(), checker.typeOf(Measure.DURATION), target);
        }
        if (name.equals("closest") && type instanceof Type.ListOf list && list.element() instanceof Type.Measured of) {
            return new Closest(member.span(), checker.typeOf(of.measure().difference()), target, checker.lexicon.arithmetic());
        }
        if (type != Type.Plain.ANY) {
            checker.findings.error("no-such-member", member.name().span(),
                    Type.describe(type) + " has no " + name);
        }
        return Checker.fault(member.span());
    }

    private Node state(Expression.Member member, Type.StateOf state) {
        Name name = member.name();
        if (state.part() == null && checker.lexicon.parts().contains(name.text())) {
            return new Nodes.Root(member.span(), new Type.StateOf(state.after(), name.text()), member.span().text());
        }
        Property property = checker.lexicon.property(state.part(), name.text());
        if (property == null) {
            checker.findings.unknownName(name.span(), "property", name.text(), checker.lexicon.properties().stream()
                    .filter(p -> java.util.Objects.equals(p.part(), state.part())).map(Property::name).toList());
            return Checker.fault(member.span());
        }
        checker.reads.properties.add(property.slot());
        return new Nodes.PropertyUse(member.span(), property, state.after(), member.span().text());
    }

    private Node setting(Expression.Member member) {
        String key = member.span().text();
        Node setting = checker.setting(member.name(), member.span(), key);
        if (setting != null) {
            return setting;
        }
        Type type = checker.lexicon.anySetting(member.name().text());
        if (type == null) {
            checker.findings.error("unknown-name", member.name().span(),
                    "no operation takes a setting named " + member.name());
            return Checker.fault(member.span());
        }
        if (!checker.scope.anyStep()) {
            checker.doesNotApply();
        }
        return new Nodes.AnySetting(member.span(), type, key);
    }

    private Node attribute(Expression.Member member, Type expected) {
        String name = member.name().text();
        Map<String, EntryType> attributes = checker.lexicon.entries("operation");
        EntryType entry = attributes == null ? null : attributes.get(name);
        if (entry == null) {
            checker.findings.unknownName(member.name().span(), "attribute of operations", name,
                    attributes == null ? List.of() : attributes.keySet());
            return Checker.fault(member.span());
        }
        Value value = checker.scope.attributes() == null ? new Value.Absent(member.span().text())
                : checker.scope.attributes().getOrDefault(name, new Value.Absent(member.span().text()));
        return new Attribute(member.span(), entry.type(), name, value);
    }

    private static final class Attribute extends Nodes.Place {
        private final String name;
        private final Value value;

        Attribute(Span span, Type type, String name, Value value) {
            super(span, type, span.text());
            this.name = name;
            this.value = value;
        }

        @Override
        List<Input> places() {
            return List.of(new Input(oneLine(span()), new Input.Source.Root("operation"), name));
        }

        @Override
        Value read(Frame frame) {
            return value;
        }
    }

    /** An entry of a thing, with the places it stands for noted and the spec kept from proving itself. */
    Node entry(Node target, EntryType entry, Span span, boolean limits) {
        if (entry.madeAs() != null && !checker.scope.limits() && !limits) {
            checker.findings.error("spec-proves-itself", span, entry.name()
                    + " is what the route must make: here only its .nominal or .middle may be read, not its limits");
            return Checker.fault(span);
        }
        String key = span.text();
        String path = pathFrom(target, entry.name());
        if (path != null) {
            int dot = path.indexOf('.');
            String root = path.substring(0, dot);
            String rest = path.substring(dot + 1);
            java.util.Set<String> paths = root.equals("centre") ? checker.reads.centre
                    : root.equals(checker.lexicon.productKind()) || root.isEmpty()
                            && java.util.Objects.equals(checker.scope.self(), checker.lexicon.productKind()) ? checker.reads.product
                    : root.isEmpty() ? checker.reads.self : null;
            if (paths != null) {
                // the whole path is what is read, not each step on the way
                paths.remove(rest.contains(".") ? rest.substring(0, rest.lastIndexOf('.')) : "");
                paths.add(rest);
            }
        }
        Type type = entry.type();
        return new PathUse(span, type, target, entry.name(), key, path);
    }

    private static String pathFrom(Node target, String entry) {
        if (target instanceof Nodes.Root root) {
            return root.key() + "." + entry;
        }
        if (target instanceof Nodes.Self) {
            return "." + entry;
        }
        if (target instanceof Nodes.Given given) {
            return "." + given.key() + "." + entry;
        }
        return target instanceof PathUse use && use.path != null ? use.path + "." + entry : null;
    }

    /** An entry that knows its whole path from a root. */
    private static final class PathUse extends Nodes.Place {
        private final Nodes.EntryUse use;
        private final String path;

        PathUse(Span span, Type type, Node target, String entry, String key, String path) {
            super(span, type, key);
            this.use = new Nodes.EntryUse(span, type, target, entry, key);
            this.path = path;
        }

        @Override
        List<Input> places() {
            return use.places();
        }

        @Override
        boolean isLeaf() {
            return false;
        }

        @Override
        Value read(Frame frame) {
            return use.read(frame);
        }
    }

    private Node end(Span span, Node target, String name) {
        Type element = target.type() instanceof Type.AlongAxis along ? along.element() : target.type();
        Type.Measured measured = (Type.Measured) element;
        Type type = name.equals("width") ? checker.typeOf(measured.measure().difference())
                : target.type() instanceof Type.AlongAxis && !name.equals("least") && !name.equals("most")
                        ? target.type() : measured;
        Arithmetic arithmetic = checker.lexicon.arithmetic();
        Function<Quantity, Quantity> take = switch (name) {
            case "least" -> q -> arithmetic.end(q, q.aim().least(), q.reach().least());
            case "most" -> q -> arithmetic.end(q, q.aim().most(), q.reach().most());
            case "middle" -> q -> arithmetic.end(q, q.aim().middle(), q.aim().middle());
            case "nominal" -> q -> arithmetic.end(q, q.nominal(), q.nominal());
            default -> q -> arithmetic.difference(q, Interval.of(q.aim().width()),
                    Interval.between(q.aim().width(), q.reach().width()));
        };
        return new End(span, type, target, name, take, arithmetic);
    }

    /** {@code .least} of a clock: what the steps since then take at least. */
    private static final class LeastTime extends Node {
        private final Node clock;

        LeastTime(Span span, Type type, Node clock) {
            super(span, type);
            this.clock = clock;
        }

        @Override
        List<Node> parts() {
            return List.of(clock);
        }

        @Override
        protected Value compute(Frame frame) {
            return clock.eval(frame) instanceof Value.Clock running ? new Value.Num(Quantity.band(Measure.DURATION,
                    Interval.of(running.atLeast()), Unit.of("s", Measure.DURATION.dimension(), 1, 0))) : clock.eval(frame);
        }
    }

    /** {@code .closest} of a list of numbers: how far the two that are nearest to each other are apart. */
    private static final class Closest extends Node {
        private final Node list;
        private final Arithmetic arithmetic;

        Closest(Span span, Type type, Node list, Arithmetic arithmetic) {
            super(span, type);
            this.list = list;
            this.arithmetic = arithmetic;
        }

        @Override
        List<Node> parts() {
            return List.of(list);
        }

        @Override
        protected Value compute(Frame frame) {
            Value value = list.eval(frame);
            if (value instanceof Value.Num) {
                return new Value.Unknown("one value alone is near to none", false);
            }
            if (!(value instanceof Value.Several several)) {
                return value;
            }
            Quantity closest = null;
            for (int i = 0; i < several.values().size(); i++) {
                for (Value other : several.values().subList(0, i)) {
                    if (!(several.values().get(i) instanceof Value.Num x) || !(other instanceof Value.Num y)) {
                        return new Value.Unknown("nothing says", true);
                    }
                    Quantity apart = arithmetic.absolute(arithmetic.minus(x.quantity(), y.quantity()));
                    closest = closest == null ? apart : arithmetic.min(closest, apart);
                }
            }
            return closest == null ? new Value.Unknown("one value alone is near to none", false) : new Value.Num(closest);
        }
    }

    /** {@code .least} and its like. */
    private static final class End extends Node {
        private final Node target;
        private final String name;
        private final Function<Quantity, Quantity> take;
        private final Arithmetic arithmetic;

        End(Span span, Type type, Node target, String name, Function<Quantity, Quantity> take, Arithmetic arithmetic) {
            super(span, type);
            this.target = target;
            this.name = name;
            this.take = take;
            this.arithmetic = arithmetic;
        }

        @Override
        List<Node> parts() {
            return List.of(target);
        }

        @Override
        protected Value compute(Frame frame) {
            Value value = target.eval(frame);
            if (value instanceof Value.Along along) {
                if (type() instanceof Type.AlongAxis) {
                    for (Value.Station station : along.stations()) {
                        if (none(station.quantity())) {
                            return missing();
                        }
                    }
                    return Alongs.map(along, take::apply);
                }
                return new Value.Num(take.apply(Alongs.hull(along, arithmetic)));
            }
            if (!(value instanceof Value.Num num)) {
                return value;
            }
            return none(num.quantity()) ? missing() : new Value.Num(take.apply(num.quantity()));
        }

        private Value missing() {
            return new Value.Unknown("a value without a " + name + " was asked for it", false);
        }

        private boolean none(Quantity quantity) {
            return switch (name) {
                case "nominal" -> !quantity.hasNominal();
                case "least" -> Double.isInfinite(quantity.aim().least());
                case "most" -> Double.isInfinite(quantity.aim().most());
                default -> !quantity.aim().isBounded();
            };
        }
    }

    /** The type of a measure for a fixed dimension, for calls. */
    static Measure measureOf(Type type) {
        return type instanceof Type.Measured measured ? measured.measure()
                : type instanceof Type.AlongAxis along ? along.element().measure() : null;
    }
}
