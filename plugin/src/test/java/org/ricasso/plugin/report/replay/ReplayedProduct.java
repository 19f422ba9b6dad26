package org.ricasso.plugin.report.replay;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.quantity.Measure;

/** A product of {@code house.json}, all its numbers computed again. */
final class ReplayedProduct {
    private final Vocabulary vocabulary;
    private final JsonNode house;
    private final JsonNode product;
    private final Replay replay;
    /** What each pass left, by its key. */
    private final Map<String, JsonNode> left = new HashMap<>();

    ReplayedProduct(Vocabulary vocabulary, JsonNode house, JsonNode product, Replay replay) {
        this.vocabulary = vocabulary;
        this.house = house;
        this.product = product;
        this.replay = replay;
        left.put("start", product.get("start"));
        for (JsonNode step : product.get("steps")) {
            left.put(step.get("number").asText(), step.get("leaves"));
            step.path("again").forEach(pass -> left.put(pass.get("pass").asText(), pass.get("leaves")));
        }
    }

    void check() {
        stepNumbers();
        product.get("axes").forEach(axis -> axis.get("places").forEach(place ->
                replay.check(place, replay.measured(Measure.LENGTH), null, false, places(null, null))));
        product.get("start").properties().forEach(e -> left(e.getKey(), e.getValue(), null, null));
        product.get("steps").forEach(this::step);
        product.get("outcomes").forEach(this::outcome);
        product.get("judgements").forEach(this::judgement);
    }

    /** Numbers of steps are those of steps that there are; 0 is none of them: the product, or before the first. */
    private void stepNumbers() {
        Set<Integer> known = new HashSet<>();
        for (JsonNode step : product.get("steps")) {
            assertThat(known.add(step.get("number").asInt())).as("one step %s", step.get("number")).isTrue();
            replay.numbers().told(step, "number");
        }
        for (JsonNode arrival : product.get("steps").findValues("arrival").stream().flatMap(JsonNode::valueStream).toList()) {
            stepNumber(arrival, "recordSinceStep", known, false);
        }
        product.get("judgements").forEach(judgement -> stepNumber(judgement, "step", known, true));
        for (JsonNode outcome : product.get("outcomes")) {
            stepNumber(outcome, "madeAtStep", known, true);
            outcome.get("measuredAtSteps").forEach(step -> assertThat(known).contains(step.asInt()));
            replay.numbers().told(outcome.get("measuredAtSteps"));
        }
    }

    private void stepNumber(JsonNode object, String member, Set<Integer> known, boolean none) {
        if (object.has(member)) {
            int number = object.get(member).asInt();
            assertThat(known.contains(number) || none && number == 0).as("step %s", number).isTrue();
            replay.numbers().told(object, member);
        }
    }

    /** What formulas read at a step; {@code between} holds in-between values. */
    private Replay.Places places(JsonNode step, JsonNode between) {
        return (as, read, computed) -> {
            String entry = read.path("entry").asText();
            if (read.has("setting")) {
                return replay.below(setting(step, read.get("setting").asText()), entry);
            }
            if (read.has("between")) {
                Value value = replay.values().read(between.get(read.get("between").asText()));
                return replay.below(new Replay.Given(value, replay.typeOf(value)), entry);
            }
            if (read.has("property")) {
                return replay.below(state(read.get("property").asText(), computed.path("left").get(as)), entry);
            }
            if (read.has("axis")) {
                JsonNode axis = product.get("axes").get(read.get("axis").asText());
                JsonNode place = axis.get("places").get(read.get("station").asText());
                Value distance = place != null ? replay.values().read(place)
                        : nothingOf(replay.values().read(axis.get("places").elements().next()));
                return new Replay.Given(distance, replay.measured(Measure.LENGTH));
            }
            return switch (read.get("of").asText()) {
                case "product", "self" -> replay.entry(product, entry);
                case "centre" -> replay.entry(replay.thing("centre", step.get("centre").asText()), entry);
                default -> attribute(step, entry);
            };
        };
    }

    private static Value nothingOf(Value length) {
        var quantity = ((Value.Num) length).quantity();
        return new Value.Num(org.ricasso.shared.quantity.Quantity.of(quantity.measure(), 0, quantity.shown().unit()));
    }

    private Replay.Given setting(JsonNode step, String name) {
        Operation operation = vocabulary.operation(step.get("operation").asText());
        EntryType type = operation.takes().get(operation.setting(name));
        JsonNode setting = step.get("settings").get(name);
        return new Replay.Given(setting == null ? new Value.Absent(name) : replay.values().read(setting), type.type());
    }

    private Replay.Given state(String path, JsonNode pass) {
        Type type = replay.property(path).type();
        if (pass == null) {
            return new Replay.Given(new Value.Unknown("no step says", false), type);
        }
        assertThat(left).as("the pass that left %s", path).containsKey(pass.asText());
        JsonNode value = left.get(pass.asText()).get(path);
        assertThat(value).as("%s left by %s", path, pass).isNotNull();
        return new Replay.Given(replay.values().read(value), type);
    }

    private Replay.Given attribute(JsonNode step, String name) {
        JsonNode value = house.get("operations").get(step.get("operation").asText()).get("attributes").get(name);
        return new Replay.Given(value == null ? new Value.Absent(name) : replay.values().read(value),
                vocabulary.entries("operation").get(name).type());
    }

    private void step(JsonNode step) {
        Operation operation = vocabulary.operation(step.get("operation").asText());
        step.get("settings").properties().forEach(e -> {
            if (e.getValue().has("computed")) {
                Type type = operation.takes().get(operation.setting(e.getKey())).type();
                replay.check(e.getValue(), type, null, false, places(step, null));
            }
        });
        for (JsonNode arrival : step.get("arrival")) {
            Type type = replay.property(arrival.get("property").asText()).type();
            boolean several = arrival.get("asked").has("list");
            Type asked = type == Type.Plain.CLOCK ? replay.measured(Measure.DURATION) : several ? new Type.ListOf(type) : type;
            replay.check(arrival.get("asked"), asked, null, false, places(step, null));
            JsonNode found = arrival.get("found");
            if (found.has("left")) {
                replay.sameAs(found, left.get(found.get("left").asText()).get(arrival.get("property").asText()));
            }
        }
        pass(step, step);
        step.path("again").forEach(pass -> pass(step, pass));
        step.get("time").forEach(time -> replay.check(time, null, null, false, places(step, step.get("between"))));
        step.path("watched").forEach(watched -> assertThat(step.get("settings").has(watched.get("setting").asText()))
                .as("the setting that is watched at %s", watched.get("written")).isTrue());
        for (JsonNode measured : step.get("measured")) {
            if (measured.get("limit").has("entry")) {
                replay.sameAs(measured.get("limit"), product.get("entries").get(measured.get("limit").get("entry").asText()));
            } else if (measured.get("limit").has("computed")) {
                replay.check(measured.get("limit"), replay.property(measured.get("property").asText()).type(), null, false,
                        places(step, null));
            }
        }
    }

    private void pass(JsonNode step, JsonNode pass) {
        JsonNode between = pass.path("between");
        between.forEach(let -> replay.check(let, null, null, false, places(step, between)));
        pass.get("leaves").properties().forEach(e -> left(e.getKey(), e.getValue(), step, between));
    }

    private void left(String path, JsonNode value, JsonNode step, JsonNode between) {
        if (value.has("computed")) {
            Type kept = replay.property(path).type();
            Type asked = kept == Type.Plain.CLOCK ? replay.measured(Measure.DURATION) : kept;
            replay.check(value, asked, kept, false, places(step, between));
        } else if (value.has("joins")) {
            replay.joined(value, left.get(value.get("joins").get(0).asText()).get(path),
                    left.get(value.get("joins").get(1).asText()).get(path));
        } else {
            replay.clock(value, left.get(value.get("runsOnFrom").asText()).get(path), step.get("time").get("run"));
        }
    }

    private void outcome(JsonNode outcome) {
        JsonNode asked = outcome.get("asked");
        replay.sameAs(asked, product.get("entries").get(asked.get("entry").asText()));
        JsonNode became = outcome.get("became");
        replay.sameAs(became, left.get(became.get("left").asText()).get(outcome.get("property").asText()));
        if (outcome.has("margin")) {
            replay.margin(outcome.get("margin"), "in", became, asked);
        }
    }

    private void judgement(JsonNode judgement) {
        JsonNode step = null;
        for (JsonNode one : product.get("steps")) {
            step = one.get("number").equals(judgement.get("step")) ? one : step;
        }
        JsonNode between = judgement.path("between");
        boolean reach = house.get("rules").get(judgement.get("rule").asText()).get("level").asText().equals("safety");
        for (JsonNode let : between) {
            replay.check(let, null, null, reach, places(step, between));
        }
        for (JsonNode compared : judgement.path("compared")) {
            for (String side : new String[] {"left", "right"}) {
                Type type = replay.typeOf(replay.values().read(compared.get(side)));
                replay.check(compared.get(side), type, null, reach, places(step, between));
            }
            replay.margin(compared.get("margin"), Distance.sign(compared.get("of").asText()), compared.get("left"),
                    compared.get("right"));
        }
    }
}
