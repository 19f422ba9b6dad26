package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.source.Span;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;

/** The leaves of checked expressions: what reads the frame. */
final class Nodes {
    private Nodes() {}

    /** A node that reads a place; in a rule's example what is bound to the place as written stands for it. */
    abstract static class Place extends Node {
        private final String key;

        Place(Span span, Type type, String key) {
            super(span, type);
            this.key = key;
        }

        String key() {
            return key;
        }

        @Override
        protected final Value compute(Frame frame) {
            if (frame.bound != null) {
                Value bound = frame.bound.get(key);
                if (bound != null) {
                    return bound;
                }
                if (isLeaf()) {
                    frame.missing.add(key);
                    return new Value.Unknown(key + " is not bound by the example", false);
                }
            }
            return read(frame);
        }

        /** Whether nothing below it could be bound instead. */
        boolean isLeaf() {
            return true;
        }

        abstract Value read(Frame frame);
    }

    static final class SettingUse extends Place {
        private final int index;

        SettingUse(Span span, Type type, int index, String key) {
            super(span, type, key);
            this.index = index;
        }

        @Override
        List<Input> places() {
            return List.of(new Input(oneLine(span()), new Input.Source.Setting(index), ""));
        }

        @Override
        Value read(Frame frame) {
            return frame.settings[index];
        }
    }

    /** A setting of any operation, in the examples of a rule for every step. */
    static final class AnySetting extends Place {
        AnySetting(Span span, Type type, String key) {
            super(span, type, key);
        }

        @Override
        Value read(Frame frame) {
            return new Value.Absent(key());
        }
    }

    static final class LetUse extends Node {
        private final int index;

        LetUse(Span span, Type type, int index) {
            super(span, type);
            this.index = index;
        }

        @Override
        List<Input> places() {
            return List.of(new Input(oneLine(span()), new Input.Source.Between(index), ""));
        }

        @Override
        protected Value compute(Frame frame) {
            return frame.lets[index];
        }
    }

    static final class PropertyUse extends Place {
        private final Property property;
        private final boolean after;

        PropertyUse(Span span, Property property, boolean after, String key) {
            super(span, property.type(), key);
            this.property = property;
            this.after = after;
        }

        @Override
        List<Input> places() {
            return List.of(new Input(oneLine(span()), new Input.Source.State(property, after), ""));
        }

        @Override
        Value read(Frame frame) {
            return (after ? frame.after : frame.before)[property.slot()];
        }
    }

    /** A root on its own: the product, the centre, or something of which only members are values. */
    static final class Root extends Place {
        Root(Span span, Type type, String key) {
            super(span, type, key);
        }

        @Override
        List<Input> places() {
            return List.of(new Input(oneLine(span()), new Input.Source.Root(key()), ""));
        }

        @Override
        boolean isLeaf() {
            return false;
        }

        @Override
        Value read(Frame frame) {
            if (!(type() instanceof Type.ThingOf)) {
                return new Value.Txt(type() == Type.Plain.OPERATION && frame.operation != null ? frame.operation : key());
            }
            org.ricasso.dsl.house.Thing thing = key().equals("centre") ? frame.centre : frame.product;
            return thing == null ? new Value.Absent(key()) : new Value.Ref(thing);
        }
    }

    /** The thing or the measurement that a kind's rule speaks of. */
    static final class Self extends Node {
        Self(Span span, String kind) {
            super(span, new Type.ThingOf(kind));
        }

        @Override
        List<Input> places() {
            return List.of(new Input("", new Input.Source.Root(""), ""));
        }

        @Override
        protected Value compute(Frame frame) {
            return frame.block != null ? frame.block
                    : frame.self == null ? new Value.Absent("") : new Value.Ref(frame.self);
        }
    }

    /** A further name of the scope. */
    static final class Given extends Place {
        Given(Span span, Type type, String key) {
            super(span, type, key);
        }

        @Override
        List<Input> places() {
            return List.of(new Input(key(), new Input.Source.Root(key()), ""));
        }

        @Override
        boolean isLeaf() {
            return !(type() instanceof Type.ThingOf);
        }

        @Override
        Value read(Frame frame) {
            return frame.given.getOrDefault(key(), new Value.Absent(key()));
        }
    }

    /** An entry of a thing, a block or a row. */
    static final class EntryUse extends Place {
        private final Node target;
        private final String entry;

        EntryUse(Span span, Type type, Node target, String entry, String key) {
            super(span, type, key);
            this.target = target;
            this.entry = entry;
        }

        @Override
        List<Input> places() {
            List<Input> of = target.places();
            return target.type() instanceof Type.RowOf || of.size() != 1 || !(target instanceof Place) && !(target instanceof Self)
                    && !(target instanceof LetUse) ? of : List.of(of.get(0).down(oneLine(span()), entry));
        }

        @Override
        boolean isLeaf() {
            // below it a thing or block may be bound: knife.blade.steel for knife.blade.steel.tempering
            return false;
        }

        @Override
        Value read(Frame frame) {
            Value from = target instanceof Self && frame.bound != null ? new Value.Absent(key()) : from(frame);
            if (frame.bound != null && (from instanceof Value.Absent || from instanceof Value.Unknown)) {
                // the whole path is what the example has to bind, not each step on the way
                if (target instanceof Place inner) {
                    frame.missing.remove(inner.key());
                }
                frame.missing.add(key());
                return new Value.Unknown(key() + " is not bound by the example", false);
            }
            if (from instanceof Value.Ref ref) {
                Value value = ref.thing().at(entry);
                return value instanceof Value.Absent
                        ? new Value.Absent(entry + " of " + ref.thing().kind() + " " + ref.thing().name()) : value;
            }
            if (from instanceof Value.Entries entries) {
                Value value = entries.entries().get(entry);
                return value == null ? new Value.Absent(key()) : value;
            }
            return from;
        }

        /** The thing, block or row. The way to a place is no part of a derivation, a row's look-up is. */
        private Value from(Frame frame) {
            if (target.type() instanceof Type.RowOf) {
                return target.eval(frame);
            }
            Trace trace = frame.trace;
            frame.trace = null;
            Value value = target.eval(frame);
            frame.trace = trace;
            return value;
        }
    }

    static final class StationName extends Node {
        private final Axis axis;
        private final String station;
        private final Lexicon lexicon;

        StationName(Span span, Type type, Axis axis, String station, Lexicon lexicon) {
            super(span, type);
            this.axis = axis;
            this.station = station;
            this.lexicon = lexicon;
        }

        @Override
        List<Input> places() {
            return List.of(new Input(oneLine(span()), new Input.Source.Station(axis, station), ""));
        }

        @Override
        protected Value compute(Frame frame) {
            double position = lexicon.station(axis, station, frame.product);
            return Double.isNaN(position) ? new Value.Unknown("the length of the axis is not known", false)
                    : new Value.Num(Quantity.of(Measure.LENGTH, position,
                            lexicon.units().shownFor(Measure.LENGTH.dimension())));
        }
    }

    static final class Listed extends Node {
        private final List<Node> elements;

        Listed(Span span, Type type, List<Node> elements) {
            super(span, type);
            this.elements = List.copyOf(elements);
        }

        @Override
        List<Node> parts() {
            return elements;
        }

        @Override
        protected Value compute(Frame frame) {
            List<Value> values = new ArrayList<>(elements.size());
            for (Node element : elements) {
                values.add(element.eval(frame));
            }
            return new Value.Several(values);
        }
    }

    static final class Rated extends Node {
        private final Node amount;
        private final String each;

        Rated(Span span, Node amount, String each) {
            super(span, Type.Plain.RATE);
            this.amount = amount;
            this.each = each;
        }

        @Override
        List<Node> parts() {
            return List.of(amount);
        }

        @Override
        protected Value compute(Frame frame) {
            Value value = amount.eval(frame);
            return value instanceof Value.Num num ? new Value.Rate(num.quantity(), each) : value;
        }
    }
}
