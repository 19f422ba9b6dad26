package org.ricasso.plugin.report.replay;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.Shown;
import org.ricasso.shared.quantity.Unit;

/** Values read back from {@code house.json}, and compared with others digit by digit. */
final class StoredValues {
    private final Vocabulary vocabulary;
    private final JsonNode units;

    StoredValues(Vocabulary vocabulary, JsonNode units) {
        this.vocabulary = vocabulary;
        this.units = units;
    }

    /** The value that an object says. */
    Value read(JsonNode node) {
        if (node.has("number")) {
            return new Value.Num(quantity(node.get("number")));
        }
        if (node.has("along")) {
            List<Value.Station> stations = new ArrayList<>();
            node.get("along").forEach(s -> stations.add(new Value.Station(s.get("at").asText(), s.get("position").asDouble(),
                    quantity(s.get("number")))));
            return new Value.Along(stations);
        }
        if (node.has("words")) {
            List<String> words = new ArrayList<>();
            node.get("words").forEach(w -> words.add(w.asText()));
            return new Value.Words(words);
        }
        if (node.has("thing")) {
            return new Value.Ref(vocabulary.thing(node.at("/thing/kind").asText(), node.at("/thing/name").asText()));
        }
        if (node.has("list")) {
            List<Value> values = new ArrayList<>();
            node.get("list").forEach(v -> values.add(read(v)));
            return new Value.Several(values);
        }
        if (node.has("rate")) {
            JsonNode rate = node.get("rate");
            return new Value.Rate(rate.has("amount") ? quantity(rate.get("amount")) : null, rate.get("each").asText());
        }
        if (node.has("block")) {
            Map<String, Value> entries = new LinkedHashMap<>();
            node.get("block").properties().forEach(e -> entries.put(e.getKey(), read(e.getValue())));
            return new Value.Entries(entries);
        }
        if (node.has("truth")) {
            return new Value.Logic(Truth.valueOf(node.get("truth").asText().toUpperCase(java.util.Locale.ROOT)));
        }
        if (node.has("atLeastSeconds")) {
            return new Value.Clock(node.get("atLeastSeconds").asDouble());
        }
        if (node.has("unknown")) {
            return new Value.Unknown(node.get("unknown").asText(), false);
        }
        if (node.has("notStated")) {
            return new Value.Absent("not stated");
        }
        return node.has("date") ? new Value.Date(node.get("date").asText()) : new Value.Txt(node.get("text").asText());
    }

    /** Compares what is said of units with what they are. */
    void units() {
        units.properties().forEach(entry -> {
            Unit unit = unit(entry.getKey());
            JsonNode stored = entry.getValue();
            if (stored.get("factor").asDouble() != unit.factor() || stored.path("offset").asDouble() != unit.offset()
                    || !stored.get("coherent").asText().equals(unit.dimension().toString())) {
                throw new AssertionError("the units of house.json say something else of " + entry.getKey());
            }
        });
    }

    private Unit unit(String sign) {
        return sign.isEmpty() ? Unit.NONE : vocabulary.units().find(sign).orElseThrow();
    }

    private Quantity quantity(JsonNode node) {
        String sign = node.get("unit").asText();
        if (!units.has(sign)) {
            throw new AssertionError("the units of house.json do not say what " + sign + " is");
        }
        Unit unit = unit(sign);
        Interval reach = band(node.get("reach"));
        return new Quantity(new Measure(unit.dimension(), node.path("point").asBoolean()), band(node.get("aim")), reach,
                node.path("nominal").asDouble(Double.NaN),
                new Shown(unit, unit.decimals(), node.has("asWritten") ? node.get("shown").asText() : null));
    }

    private static Interval band(JsonNode band) {
        return new Interval(band.path("least").asDouble(Double.NEGATIVE_INFINITY),
                band.path("most").asDouble(Double.POSITIVE_INFINITY));
    }

    /** Whether two values are worth the same; how a number would be shown is no part of it, its unit is. */
    static boolean same(Value a, Value b) {
        if (a instanceof Value.Num x && b instanceof Value.Num y) {
            return same(x.quantity(), y.quantity());
        }
        if (a instanceof Value.Along x && b instanceof Value.Along y) {
            boolean all = x.stations().size() == y.stations().size();
            for (int i = 0; all && i < x.stations().size(); i++) {
                all = x.stations().get(i).position() == y.stations().get(i).position()
                        && same(x.stations().get(i).quantity(), y.stations().get(i).quantity());
            }
            return all;
        }
        if (a instanceof Value.Rate x && b instanceof Value.Rate y) {
            return x.each().equals(y.each()) && (x.amount() == null ? y.amount() == null
                    : y.amount() != null && same(x.amount(), y.amount()));
        }
        if (a instanceof Value.Several x && b instanceof Value.Several y) {
            return x.values().size() == y.values().size() && java.util.stream.IntStream.range(0, x.values().size())
                    .allMatch(i -> same(x.values().get(i), y.values().get(i)));
        }
        if (a instanceof Value.Entries x && b instanceof Value.Entries y) {
            return x.entries().keySet().equals(y.entries().keySet())
                    && x.entries().keySet().stream().allMatch(k -> same(x.entries().get(k), y.entries().get(k)));
        }
        if (a instanceof Value.Ref x && b instanceof Value.Ref y) {
            return x.thing() == y.thing();
        }
        if (a instanceof Value.Unknown || a instanceof Value.Absent) {
            return a.getClass() == b.getClass();
        }
        return a.equals(b);
    }

    private static boolean same(Quantity a, Quantity b) {
        return a.measure().equals(b.measure()) && a.aim().equals(b.aim()) && a.reach().equals(b.reach())
                && Double.compare(a.nominal(), b.nominal()) == 0
                && a.shown().unit().sign().equals(b.shown().unit().sign());
    }
}
