package org.ricasso.plugin.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.evaluate.Derivation;
import org.ricasso.dsl.evaluate.Margin;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.CheckedStep;
import org.ricasso.dsl.walk.Judgement;
import org.ricasso.dsl.walk.Outcome;
import org.ricasso.dsl.walk.Walked;

/**
 * The resolved house as JSON, for other programs: products with every entry, step, outcome and judgement, and all things.
 * Each number has its bands in coherent units and as shown, and where it is written or how it came about. The form is
 * published as {@code house.schema.json}; the same house gives the same bytes.
 */
public final class HouseReport {
    /** The version of the form; it changes when a reader has to. */
    public static final int VERSION = 1;
    private final Ricasso ricasso;
    private final House house;

    public HouseReport(Ricasso ricasso) {
        this.ricasso = ricasso;
        this.house = ricasso.house();
    }

    /** The schema of the form (JSON Schema 2020-12), UTF-8. */
    public static byte[] schema() throws IOException {
        try (InputStream in = HouseReport.class.getResourceAsStream("house.schema.json")) {
            return in.readAllBytes();
        }
    }

    /** The house, UTF-8 with line feeds. */
    public byte[] bytes() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            DefaultIndenter indent = new DefaultIndenter("  ", "\n");
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
            ValueJson values = new ValueJson(json);
            json.writeStartObject();
            json.writeStringField("form", "ricasso-house");
            json.writeNumberField("version", VERSION);
            json.writeArrayFieldStart("products");
            for (CheckedProduct product : ricasso.checked().products()) {
                product(json, values, product);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("things");
            for (Thing thing : ricasso.checked().things()) {
                if (!house.routes().containsKey(thing)) {
                    json.writeStartObject();
                    thing(json, values, thing);
                    json.writeEndObject();
                }
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        out.write('\n');
        return out.toByteArray();
    }

    private static void thing(JsonGenerator json, ValueJson values, Thing thing) throws IOException {
        json.writeStringField("kind", thing.kind());
        json.writeStringField("name", thing.name());
        json.writeStringField("title", thing.title());
        values.place("written", thing.span());
        if (thing.replaced() != null) {
            values.place("replaces", thing.replaced());
        }
        json.writeObjectFieldStart("entries");
        entries(json, values, thing, thing.entries(), "");
        json.writeEndObject();
    }

    /** Entries by dotted path, blocks opened. */
    private static void entries(JsonGenerator json, ValueJson values, Thing thing, Map<String, Value> entries, String prefix)
            throws IOException {
        for (Map.Entry<String, Value> entry : entries.entrySet()) {
            String path = prefix + entry.getKey();
            if (entry.getValue() instanceof Value.Entries block) {
                entries(json, values, thing, block.entries(), path + ".");
                continue;
            }
            json.writeObjectFieldStart(path);
            values.fields(entry.getValue());
            Thing.Place place = thing.places().get(path);
            if (place == null) {
                json.writeBooleanField("byDefault", true);
            } else {
                values.place("written", place.value());
                if (place.inheritedAt() != null) {
                    values.place("takenOver", place.inheritedAt());
                }
            }
            json.writeEndObject();
        }
    }

    private void product(JsonGenerator json, ValueJson values, CheckedProduct checked) throws IOException {
        json.writeStartObject();
        thing(json, values, checked.product());
        json.writeArrayFieldStart("steps");
        List<RouteStep> route = house.routes().getOrDefault(checked.product(), Route.NONE).all();
        for (CheckedStep step : checked.steps()) {
            step(json, values, step, route.stream().filter(r -> r.number() == step.number() && r.operation() != null)
                    .findFirst().orElse(null));
        }
        json.writeEndArray();
        Walked walked = Walked.of(house, checked.product());
        json.writeArrayFieldStart("outcomes");
        for (Outcome outcome : checked.outcomes()) {
            outcome(json, values, outcome, walked);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("judgements");
        for (Judgement judgement : checked.judgements()) {
            json.writeStartObject();
            json.writeStringField("rule", judgement.rule());
            json.writeNumberField("step", judgement.step());
            json.writeStringField("verdict", word(judgement.verdict()));
            if (!judgement.detail().isEmpty()) {
                json.writeStringField("detail", judgement.detail());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void step(JsonGenerator json, ValueJson values, CheckedStep step, RouteStep written) throws IOException {
        json.writeStartObject();
        json.writeNumberField("number", step.number());
        json.writeStringField("operation", step.operation());
        json.writeStringField("title", step.title());
        values.place("written", step.span());
        if (written != null && written.takenAt() != null) {
            values.place("takenOver", written.takenAt());
        }
        if (step.centre() != null) {
            json.writeStringField("centre", step.centre().name());
        }
        json.writeObjectFieldStart("settings");
        for (CheckedStep.Setting setting : step.settings()) {
            json.writeObjectFieldStart(setting.name());
            values.fields(setting.value());
            int index = written == null ? -1 : written.operation().setting(setting.name());
            Span place = index < 0 ? null : written.places()[index];
            if (place == null) {
                json.writeBooleanField("byDefault", true);
            } else {
                values.place("written", place);
                if (written.takenAt(place) != null) {
                    values.place("takenOver", written.takenAt(place));
                }
            }
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeArrayFieldStart("arrival");
        for (CheckedStep.Arrival arrival : step.arrival()) {
            json.writeStartObject();
            json.writeStringField("property", arrival.path());
            json.writeStringField("asked", arrival.condition());
            if (arrival.isDuty()) {
                json.writeNumberField("recordSinceStep", arrival.since());
            }
            json.writeFieldName("found");
            values.value(arrival.found());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("measured");
        for (CheckedStep.Measured measured : step.measured()) {
            json.writeStartObject();
            json.writeStringField("property", measured.path());
            json.writeBooleanField("characteristic", measured.characteristic());
            json.writeFieldName("limit");
            values.value(measured.limit());
            json.writeFieldName("how");
            values.value(new Value.Entries(measured.entries()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("leaves");
        for (CheckedStep.HandOver left : step.handOver()) {
            json.writeStartObject();
            json.writeStringField("property", left.path());
            json.writeFieldName("value");
            values.value(left.value());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void outcome(JsonGenerator json, ValueJson values, Outcome outcome, Walked walked) throws IOException {
        json.writeStartObject();
        json.writeStringField("entry", outcome.entry());
        json.writeStringField("property", outcome.path());
        json.writeStringField("made", word(outcome.made()));
        json.writeNumberField("madeAtStep", outcome.madeAt());
        json.writeArrayFieldStart("measuredAtSteps");
        for (int step : outcome.measuredAt()) {
            json.writeNumber(step);
        }
        json.writeEndArray();
        json.writeFieldName("asked");
        values.value(outcome.asked());
        json.writeFieldName("found");
        values.value(outcome.found());
        Margin margin = Margin.inside(outcome.asked(), outcome.found());
        if (margin != null) {
            json.writeObjectFieldStart("margin");
            json.writeNumberField("aim", margin.aim());
            json.writeNumberField("reach", margin.reach());
            json.writeStringField("shown", margin.shownReach());
            json.writeEndObject();
        }
        Property property = house.vocabulary().propertyFor(null, outcome.path());
        Derivation why = property == null ? null : walked.why(property.slot());
        if (why != null) {
            values.derivation("derivation", why);
        }
        json.writeEndObject();
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
