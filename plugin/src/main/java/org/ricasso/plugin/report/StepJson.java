package org.ricasso.plugin.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Solve;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.dsl.walk.Account;
import org.ricasso.dsl.walk.CheckedStep;
import org.ricasso.dsl.walk.Computed;

/** What {@code house.json} says of a step. */
final class StepJson {
    private final JsonGenerator json;
    private final LinesPrinter lines;
    private final ValueJson values;
    private final OriginJson origins;
    private final Vocabulary vocabulary;

    StepJson(JsonGenerator json, LinesPrinter lines, ValueJson values, OriginJson origins, Vocabulary vocabulary) {
        this.json = json;
        this.lines = lines;
        this.values = values;
        this.origins = origins;
        this.vocabulary = vocabulary;
    }

    /**
     * Writes a step.
     *
     * @param passes the passes through it; the first is the one that pages show
     * @param entries the product's entry that is to become a property, by the property's path
     */
    void step(CheckedStep step, List<Account.Pass> passes, Thing product, Map<String, String> entries) throws IOException {
        Account.Pass first = passes.get(0);
        RouteStep written = first.step();
        OriginJson.Names names = OriginJson.names(written.operation());
        json.writeStartObject();
        json.writeNumberField("number", step.number());
        json.writeStringField("operation", step.operation());
        if (step.centre() != null) {
            json.writeStringField("centre", step.centre().name());
        }
        values.place("written", step.span());
        if (written.takenAt() != null) {
            values.place("takenOver", written.takenAt());
        }
        json.writeObjectFieldStart("settings");
        for (CheckedStep.Setting setting : step.settings()) {
            setting(setting, written, first, product, names);
        }
        json.writeEndObject();
        json.writeArrayFieldStart("arrival");
        for (int i = 0; i < step.arrival().size(); i++) {
            arrival(step.arrival().get(i), first.asked().get(i), names);
        }
        json.writeEndArray();
        between(first, names);
        json.writeObjectFieldStart("leaves");
        for (Account.Left left : first.leaves()) {
            left(left, names);
        }
        json.writeEndObject();
        json.writeArrayFieldStart("handOver");
        lines.beginLine();
        for (CheckedStep.HandOver handOver : step.handOver()) {
            json.writeString(handOver.path());
        }
        json.writeEndArray();
        lines.endLine();
        json.writeObjectFieldStart("time");
        time("setUp", first.setUp(), names);
        time("run", first.run(), names);
        json.writeEndObject();
        json.writeArrayFieldStart("measured");
        for (int i = 0; i < step.measured().size(); i++) {
            measured(step.measured().get(i), written.measures().get(i), written, product,
                    entries.get(step.measured().get(i).path()));
        }
        json.writeEndArray();
        if (!written.watches().isEmpty()) {
            json.writeArrayFieldStart("watched");
            for (RouteStep.Watch watch : written.watches()) {
                watched(watch, written, product);
            }
            json.writeEndArray();
        }
        if (passes.size() > 1) {
            json.writeArrayFieldStart("again");
            for (Account.Pass pass : passes.subList(1, passes.size())) {
                again(pass, names);
            }
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    private void setting(CheckedStep.Setting setting, RouteStep written, Account.Pass pass, Thing product,
            OriginJson.Names names) throws IOException {
        json.writeFieldName(setting.name());
        lines.beginLine();
        json.writeStartObject();
        int index = written.operation().setting(setting.name());
        EntryType type = written.operation().takes().get(index);
        Span place = written.places()[index];
        Solve solve = written.solve(index);
        if (solve != null && solve.locked() != null) {
            // the number stands in the lock; the route asks for it
            origins.written(setting.value(), solve.locked(), null, type, product);
            values.place("solves", place);
            if (written.takenAt(place) != null) {
                values.place("takenOver", written.takenAt(place));
            }
        } else if (place != null) {
            origins.written(setting.value(), place, written.takenAt(place), type, product);
        } else {
            values.fields(setting.value());
            Computed byDefault = pass.defaults().get(setting.name());
            // none where the setting is missing, which is a finding
            if (byDefault != null) {
                values.place("default", type.span());
                origins.computed(byDefault, names);
            }
        }
        json.writeEndObject();
        lines.endLine();
    }

    private void arrival(CheckedStep.Arrival arrival, Account.Asked asked, OriginJson.Names names) throws IOException {
        json.writeStartObject();
        lines.beginLine();
        json.writeStringField("property", arrival.path());
        json.writeFieldName("asked");
        computed(asked.condition(), names);
        json.writeStringField("else", arrival.complaint());
        if (arrival.isDuty()) {
            json.writeNumberField("recordSinceStep", arrival.since());
        }
        json.writeObjectFieldStart("found");
        values.fields(arrival.found());
        if (asked.left() != null) {
            json.writeStringField("left", asked.left());
        }
        json.writeEndObject();
        json.writeEndObject();
        lines.endLine();
    }

    private void between(Account.Pass pass, OriginJson.Names names) throws IOException {
        if (pass.between().isEmpty()) {
            return;
        }
        json.writeObjectFieldStart("between");
        for (Map.Entry<String, Computed> between : pass.between().entrySet()) {
            json.writeFieldName(between.getKey());
            lines.beginLine();
            computed(between.getValue(), names);
            lines.endLine();
        }
        json.writeEndObject();
    }

    /** A property as a member of what a pass, or the beginning, leaves. */
    void left(Account.Left left, OriginJson.Names names) throws IOException {
        json.writeFieldName(left.property().path());
        lines.beginLine();
        json.writeStartObject();
        values.fields(left.value());
        if (left.computed() != null) {
            origins.computed(left.computed(), names);
        } else if (left.value() instanceof Value.Clock && left.from().size() == 1) {
            if (left.from().get(0) != null) {
                json.writeStringField("runsOnFrom", left.from().get(0));
            }
        } else {
            json.writeArrayFieldStart("joins");
            for (String pass : left.from()) {
                if (pass == null) {
                    json.writeNull();
                } else {
                    json.writeString(pass);
                }
            }
            json.writeEndArray();
        }
        json.writeEndObject();
        lines.endLine();
    }

    /** A value that a formula gives, as an object. */
    void computed(Computed computed, OriginJson.Names names) throws IOException {
        json.writeStartObject();
        values.fields(computed.value());
        origins.computed(computed, names);
        json.writeEndObject();
    }

    private void time(String name, Computed time, OriginJson.Names names) throws IOException {
        if (time != null) {
            json.writeFieldName(name);
            lines.beginLine();
            computed(time, names);
            lines.endLine();
        }
    }

    private void measured(CheckedStep.Measured measured, RouteStep.Measure measure, RouteStep written, Thing product,
            String entry) throws IOException {
        json.writeStartObject();
        lines.beginLine();
        json.writeStringField("property", measured.path());
        json.writeBooleanField("characteristic", measured.characteristic());
        values.place("written", measure.span());
        json.writeObjectFieldStart("limit");
        Span limit = measure.places().get("limit");
        if (limit != null) {
            origins.written(measured.limit(), limit, written.takenAt(limit),
                    EntryType.plain("limit", measure.property().type(), null, limit), product);
        } else {
            values.fields(measured.limit());
            if (measured.characteristic() && entry != null) {
                json.writeStringField("entry", entry);
            }
        }
        json.writeEndObject();
        how(measured.entries(), measure.places(), written, product);
        json.writeEndObject();
        lines.endLine();
    }

    /** Its limit is the setting, which stands among the settings. */
    private void watched(RouteStep.Watch watch, RouteStep written, Thing product) throws IOException {
        json.writeStartObject();
        lines.beginLine();
        json.writeStringField("setting", written.operation().takes().get(watch.setting()).name());
        values.place("written", watch.span());
        how(watch.entries().entries(), watch.places(), written, product);
        json.writeEndObject();
        lines.endLine();
    }

    /** Gauge, sample and the rest, each with the place where it is written. */
    private void how(Map<String, Value> entries, Map<String, Span> places, RouteStep written, Thing product) throws IOException {
        json.writeObjectFieldStart("how");
        for (Map.Entry<String, Value> how : entries.entrySet()) {
            json.writeObjectFieldStart(how.getKey());
            EntryType type = vocabulary.entries("measurement").get(how.getKey());
            Span place = places.get(how.getKey());
            if (place != null) {
                origins.written(how.getValue(), place, written.takenAt(place), type, product);
            } else {
                origins.unwritten(how.getValue(), "measurement", type, null);
            }
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void again(Account.Pass pass, OriginJson.Names names) throws IOException {
        json.writeStartObject();
        json.writeStringField("pass", pass.key());
        if (pass.joined()) {
            json.writeBooleanField("joined", true);
        }
        between(pass, names);
        json.writeObjectFieldStart("leaves");
        for (Account.Left left : pass.leaves()) {
            left(left, names);
        }
        json.writeEndObject();
        json.writeEndObject();
    }
}
