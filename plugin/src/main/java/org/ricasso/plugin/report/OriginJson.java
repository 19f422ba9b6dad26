package org.ricasso.plugin.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ricasso.dsl.evaluate.Derivation;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Input;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.dsl.walk.Computed;
import org.ricasso.dsl.walk.Written;

/** Where values come from as {@code house.json} writes it: written, by default, computed, or the same as elsewhere. */
final class OriginJson {
    private final JsonGenerator json;
    private final ValueJson values;
    private final Vocabulary vocabulary;
    private final SortedMap<String, Formula> formulas = new TreeMap<>();

    /** An expression of the vocabulary, with the names of the operation's settings and in-between values. */
    private record Formula(Node node, Names names) {}

    /** What the indexes in an expression's inputs are called. */
    interface Names {
        String setting(int index);

        String between(int index);
    }

    /** The names in an operation; null where there is none. */
    static Names names(Operation operation) {
        return new Names() {
            @Override
            public String setting(int index) {
                return operation.takes().get(index).name();
            }

            @Override
            public String between(int index) {
                return operation.letNames().get(index);
            }
        };
    }

    OriginJson(JsonGenerator json, ValueJson values, Vocabulary vocabulary) {
        this.json = json;
        this.values = values;
        this.vocabulary = vocabulary;
    }

    /** A value that is written, here or where it is taken over from. */
    void written(Value value, Span place, Span takenOver, EntryType type, Thing product) throws IOException {
        values.fields(value);
        values.place("written", place);
        if (takenOver != null) {
            values.place("takenOver", takenOver);
        }
        Computed computed = type == null ? null : Written.of(vocabulary, value, place, type.type(), product);
        if (computed != null) {
            json.writeObjectFieldStart("computed");
            expression(computed.node(), null);
            found(computed);
            json.writeEndObject();
        }
    }

    /** A value of an entry that is not written; the vocabulary's default, or nothing. */
    void unwritten(Value value, String kind, EntryType type, Thing product) throws IOException {
        values.fields(value);
        if (type != null && type.byDefault() != null) {
            values.place("default", type.span());
            Frame frame = new Frame();
            frame.product = product;
            computed(Computed.of("kind " + kind + " default " + type.name(), type.byDefault(), frame), null);
        }
    }

    /** How a value came about that a formula gives. */
    void computed(Computed computed, Names names) throws IOException {
        formulas.computeIfAbsent(computed.name(), name -> new Formula(computed.node(), names));
        json.writeObjectFieldStart("computed");
        json.writeStringField("formula", computed.name());
        if (!computed.left().isEmpty()) {
            json.writeObjectFieldStart("left");
            for (Map.Entry<String, String> left : computed.left().entrySet()) {
                json.writeStringField(left.getKey(), left.getValue());
            }
            json.writeEndObject();
        }
        found(computed);
        json.writeEndObject();
    }

    private void found(Computed computed) throws IOException {
        if (computed.found().isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("found");
        for (Derivation found : computed.found()) {
            json.writeStartObject();
            json.writeStringField("of", found.text());
            json.writeObjectFieldStart("is");
            values.fields(found.value());
            json.writeEndObject();
            json.writeStringField("source", found.source());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** All formulas that were named, in the order of their names. */
    void formulas(LinesPrinter lines) throws IOException {
        for (Map.Entry<String, Formula> entry : formulas.entrySet()) {
            json.writeFieldName(entry.getKey());
            lines.beginLine();
            json.writeStartObject();
            expression(entry.getValue().node(), entry.getValue().names());
            values.place("written", entry.getValue().node().span());
            json.writeEndObject();
            lines.endLine();
        }
    }

    private void expression(Node node, Names names) throws IOException {
        json.writeStringField("of", node.text());
        if (node.inputs().isEmpty()) {
            return;
        }
        json.writeObjectFieldStart("reads");
        for (Input input : node.inputs()) {
            json.writeObjectFieldStart(input.as());
            input(input, names);
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void input(Input input, Names names) throws IOException {
        Input.Source from = input.from();
        if (from instanceof Input.Source.Setting setting) {
            json.writeStringField("setting", names.setting(setting.index()));
        } else if (from instanceof Input.Source.Between between) {
            json.writeStringField("between", names.between(between.index()));
        } else if (from instanceof Input.Source.State state) {
            json.writeStringField("property", state.property().path());
        } else if (from instanceof Input.Source.Station station) {
            json.writeStringField("axis", station.axis().name());
            json.writeStringField("station", station.name());
        } else if (from instanceof Input.Source.Root root) {
            json.writeStringField("of", root.name().isEmpty() ? "self" : root.name().equals(vocabulary.productKind()) ? "product"
                    : root.name());
        }
        if (!input.entry().isEmpty()) {
            json.writeStringField("entry", input.entry());
        }
    }
}
