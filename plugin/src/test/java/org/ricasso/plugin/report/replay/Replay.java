package org.ricasso.plugin.report.replay;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.evaluate.Checker;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Joins;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.Settle;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.plugin.report.HouseReport;
import org.ricasso.shared.quantity.Measure;

/**
 * Computes every number of {@code house.json} again from what stands in {@code house.json}.
 *
 * <p>Nothing of the walk is used, only the stored text of each formula, the stored values that it says it reads, the
 * vocabulary's types, tables and units, and the calculations. A formula's places are written as names, the names are given
 * the stored values, and the expression is evaluated: it sees nothing else. What comes out must be the stored value, to the
 * last digit, and so must be the answers of tables and calculations on the way.
 */
final class Replay {
    private final Vocabulary vocabulary;
    private final JsonNode house;
    private final StoredValues values;
    /** Numbers that have been computed again, or are said to be the same as one that has. */
    private final Numbers numbers = new Numbers();
    private final Distance distance;

    Replay(Vocabulary vocabulary, JsonNode house) {
        this.vocabulary = vocabulary;
        this.house = house;
        this.values = new StoredValues(vocabulary, house.get("units"));
        this.distance = new Distance(house.get("units"));
    }

    Numbers numbers() {
        return numbers;
    }

    StoredValues values() {
        return values;
    }

    /** A place's stored value and its type. */
    record Given(Value value, Type type) {}

    /** What the places of a formula are worth where it is used. */
    interface Places {
        Given at(String as, JsonNode read, JsonNode computed);
    }

    /** Computes the value of an object again and compares; {@code expected} is the type that is asked for, or null. */
    void check(JsonNode object, Type expected, Type kept, boolean reach, Places places) {
        JsonNode computed = object.get("computed");
        JsonNode formula = computed.has("formula") ? house.get("formulas").get(computed.get("formula").asText()) : computed;
        List<String> as = new ArrayList<>();
        List<Given> given = new ArrayList<>();
        formula.path("reads").properties().forEach(read -> {
            as.add(read.getKey());
            given.add(places.at(read.getKey(), read.getValue(), computed));
        });
        Value stored = values.read(object);
        String what = formula.get("of").asText() + " in " + computed.path("formula").asText();
        Value again = evaluate(what, formula.get("of").asText(), as, given, expected, reach);
        if (kept != null) {
            again = kept == Type.Plain.CLOCK && again instanceof Value.Num num
                    ? new Value.Clock(num.quantity().aim().least()) : Settle.as(kept, again, vocabulary.arithmetic());
            again = again instanceof Value.Absent ? new Value.Unknown("", false) : again;
        }
        same(what, stored, again);
        for (JsonNode found : computed.path("found")) {
            String of = found.get("of").asText();
            same(of, values.read(found.get("is")), evaluate(of, of, as, given, null, reach));
            assertThat(found.get("source").asText()).isNotBlank();
            numbers.told(found.get("is"));
        }
        numbers.told(object);
    }

    private Value evaluate(String what, String text, List<String> as, List<Given> given, Type expected, boolean reach) {
        Expression expression = Substitution.of(text, as);
        List<Scope.Let> lets = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            lets.add(new Scope.Let(Substitution.name(i), given.get(i).type()));
        }
        Findings findings = new Findings();
        Scope scope = new Scope(List.of(), lets, null, false, null, Set.of(), Map.of(), true, false);
        Checker.Checked checked = new Checker(vocabulary, scope, findings).check(expression, expected);
        assertThat(findings.all()).as("%s, written %s", what, expression.span().text()).isEmpty();
        Frame frame = new Frame();
        frame.reach = reach;
        frame.lets = given.stream().map(Given::value).toArray(Value[]::new);
        return checked.node().eval(frame);
    }

    /** Says that two objects hold the same value, of which the other one is told elsewhere. */
    void sameAs(JsonNode object, JsonNode other) {
        same("the same", values.read(object), values.read(other));
        numbers.told(object);
    }

    private static void same(String what, Value stored, Value again) {
        assertThat(StoredValues.same(stored, again)).as("%s:%n stored %s%n again  %s", what, stored, again).isTrue();
    }

    /** What a clock shows that ran on from an earlier pass. */
    void clock(JsonNode object, JsonNode before, JsonNode run) {
        double least = 0;
        if (run != null) {
            Value time = values.read(run);
            least = time instanceof Value.Rate rate && rate.amount() != null ? rate.amount().aim().least()
                    : time instanceof Value.Num num ? num.quantity().aim().least() : 0;
        }
        same("a clock", values.read(object), new Value.Clock(before.get("atLeastSeconds").asDouble() + least));
        numbers.told(object);
    }

    /** What the ways out of a loop leave together. */
    void joined(JsonNode object, JsonNode one, JsonNode other) {
        same("joined", values.read(object), Joins.join(values.read(one), values.read(other), vocabulary.arithmetic()));
        numbers.told(object);
    }

    /** What the house says of itself and of units. */
    void head() {
        assertThat(house.get("version").asInt()).isEqualTo(HouseReport.VERSION);
        numbers.told(house, "version");
        values.units();
        house.get("units").forEach(numbers::told);
    }

    /** How far one stored value keeps from another. */
    void margin(JsonNode margin, String sign, JsonNode left, JsonNode right) {
        distance.check(margin, sign, left, right);
        numbers.told(margin);
    }

    /** A stored value by the path of an entry of a thing, and its type; absent where a block on the way is not stated. */
    Given entry(JsonNode thing, String path) {
        EntryType type = vocabulary.entryType(thing.get("kind").asText(), path);
        for (String at = path; !at.isEmpty(); at = at.substring(0, Math.max(0, at.lastIndexOf('.')))) {
            JsonNode entry = thing.get("entries").get(at);
            if (entry != null) {
                Value value = values.read(entry);
                return value instanceof Value.Ref ref && !at.equals(path)
                        ? entry(thing(ref.thing().kind(), ref.thing().name()), path.substring(at.length() + 1))
                        : new Given(value, type.type());
            }
        }
        Map<String, Value> block = new HashMap<>();
        thing.get("entries").properties().forEach(e -> {
            if (e.getKey().startsWith(path + ".")) {
                block.put(e.getKey().substring(path.length() + 1), values.read(e.getValue()));
            }
        });
        return new Given(block.isEmpty() ? new Value.Absent(path) : new Value.Entries(block), type.type());
    }

    /** An entry further down from a value that is a thing. */
    Given below(Given given, String path) {
        if (path.isEmpty()) {
            return given;
        }
        if (given.value() instanceof Value.Ref ref) {
            return entry(thing(ref.thing().kind(), ref.thing().name()), path);
        }
        Type type = given.type() instanceof Type.ThingOf of ? vocabulary.entryType(of.kind(), path).type() : Type.Plain.ANY;
        return new Given(given.value(), type);
    }

    JsonNode thing(String kind, String name) {
        for (String list : List.of("things", "products")) {
            for (JsonNode thing : house.get(list)) {
                if (thing.get("kind").asText().equals(kind) && thing.get("name").asText().equals(name)) {
                    return thing;
                }
            }
        }
        throw new AssertionError("house.json has no " + kind + " " + name);
    }

    Property property(String path) {
        return vocabulary.properties().stream().filter(p -> p.path().equals(path)).findFirst().orElseThrow();
    }

    /** A type that goes with a value of which no declaration says one. */
    Type typeOf(Value value) {
        if (value instanceof Value.Num num) {
            return measured(num.quantity().measure());
        }
        if (value instanceof Value.Along along) {
            return new Type.AlongAxis(measured(along.stations().get(0).quantity().measure()),
                    vocabulary.axes().iterator().next());
        }
        if (value instanceof Value.Words words) {
            return Set.of("yes", "no").containsAll(words.words()) ? Type.YES_NO : new Type.WordsOf(words.words());
        }
        if (value instanceof Value.Ref ref) {
            return new Type.ThingOf(ref.thing().kind());
        }
        if (value instanceof Value.Several several) {
            return new Type.ListOf(typeOf(several.values().get(0)));
        }
        if (value instanceof Value.Logic) {
            return Type.Plain.LOGIC;
        }
        return value instanceof Value.Txt ? Type.Plain.TEXT : value instanceof Value.Rate ? Type.Plain.RATE
                : value instanceof Value.Clock ? Type.Plain.CLOCK : Type.Plain.ANY;
    }

    Type.Measured measured(Measure measure) {
        return new Type.Measured(measure, vocabulary.nameOf(measure));
    }
}
