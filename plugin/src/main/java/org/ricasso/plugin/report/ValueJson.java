package org.ricasso.plugin.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.source.Origin;
import org.ricasso.dsl.source.Span;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;
import org.ricasso.shared.quantity.Unit;

/** Values and places as {@code house.json} writes them. An end that is open is left out. */
final class ValueJson {
    private final JsonGenerator json;
    private final LinesPrinter lines;
    /** The units met, by sign; what is the same under one sign but for its decimals is one. */
    private final SortedMap<String, Unit> units = new TreeMap<>();

    ValueJson(JsonGenerator json, LinesPrinter lines) {
        this.json = json;
        this.lines = lines;
    }

    /** The members that say what a value is worth, for an object that says more of it. */
    void fields(Value value) throws IOException {
        if (value instanceof Value.Num num) {
            number("number", num.quantity());
        } else if (value instanceof Value.Along along) {
            json.writeArrayFieldStart("along");
            for (Value.Station station : along.stations()) {
                json.writeStartObject();
                json.writeStringField("at", station.label());
                json.writeNumberField("position", station.position());
                number("number", station.quantity());
                json.writeEndObject();
            }
            json.writeEndArray();
        } else if (value instanceof Value.Words words) {
            json.writeArrayFieldStart("words");
            for (String word : words.words()) {
                json.writeString(word);
            }
            json.writeEndArray();
        } else if (value instanceof Value.Ref ref) {
            json.writeObjectFieldStart("thing");
            json.writeStringField("kind", ref.thing().kind());
            json.writeStringField("name", ref.thing().name());
            json.writeEndObject();
        } else if (value instanceof Value.Several several) {
            json.writeArrayFieldStart("list");
            for (Value one : several.values()) {
                value(one);
            }
            json.writeEndArray();
        } else if (value instanceof Value.Rate rate) {
            json.writeObjectFieldStart("rate");
            if (rate.amount() != null) {
                number("amount", rate.amount());
            }
            json.writeStringField("each", rate.each());
            json.writeEndObject();
        } else if (value instanceof Value.Entries entries) {
            json.writeObjectFieldStart("block");
            for (Map.Entry<String, Value> entry : entries.entries().entrySet()) {
                json.writeFieldName(entry.getKey());
                value(entry.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof Value.Logic logic) {
            json.writeStringField("truth", logic.truth().name().toLowerCase(Locale.ROOT));
        } else if (value instanceof Value.Clock clock) {
            json.writeNumberField("atLeastSeconds", clock.atLeast());
        } else if (value instanceof Value.Unknown unknown) {
            json.writeStringField("unknown", unknown.reason());
        } else if (value instanceof Value.Absent) {
            json.writeBooleanField("notStated", true);
        } else {
            json.writeStringField(value instanceof Value.Date ? "date" : "text", Shows.show(value));
        }
    }

    private void value(Value value) throws IOException {
        json.writeStartObject();
        fields(value);
        json.writeEndObject();
    }

    private void number(String name, Quantity quantity) throws IOException {
        Unit unit = quantity.shown().unit();
        units.putIfAbsent(unit.sign(), unit);
        json.writeObjectFieldStart(name);
        json.writeStringField("shown", QuantityFormat.show(quantity));
        if (quantity.shown().written() != null) {
            json.writeBooleanField("asWritten", true);
        }
        json.writeStringField("unit", unit.sign());
        if (quantity.measure().point()) {
            json.writeBooleanField("point", true);
        }
        band("aim", quantity.aim());
        band("reach", quantity.reach());
        if (quantity.hasNominal()) {
            json.writeNumberField("nominal", quantity.nominal());
        }
        json.writeEndObject();
    }

    private void band(String name, Interval band) throws IOException {
        json.writeObjectFieldStart(name);
        if (!Double.isInfinite(band.least())) {
            json.writeNumberField("least", band.least());
        }
        if (!Double.isInfinite(band.most())) {
            json.writeNumberField("most", band.most());
        }
        json.writeEndObject();
    }

    /** Where something is written: file, line and column from 1; and whether a library or the tool brought the text. */
    void place(String name, Span span) throws IOException {
        json.writeFieldName(name);
        lines.beginLine();
        json.writeStartObject();
        json.writeStringField("file", span.file().name());
        json.writeNumberField("line", span.line());
        json.writeNumberField("column", span.column());
        if (span.file().shipped()) {
            json.writeBooleanField("shipped", true);
        }
        library(Origin.of(span));
        json.writeEndObject();
        lines.endLine();
    }

    /** The library that brought it, where one did. */
    void library(Origin origin) throws IOException {
        if (!origin.library().isEmpty()) {
            json.writeStringField("library", origin.library());
        }
    }

    /** The units of all numbers that were written. */
    void units() throws IOException {
        for (Map.Entry<String, Unit> entry : units.entrySet()) {
            Unit unit = entry.getValue();
            json.writeObjectFieldStart(entry.getKey());
            json.writeStringField("coherent", unit.dimension().toString());
            json.writeNumberField("factor", unit.factor());
            if (unit.offset() != 0) {
                json.writeNumberField("offset", unit.offset());
            }
            json.writeEndObject();
        }
    }
}
