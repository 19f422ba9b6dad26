package org.ricasso.plugin.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.ricasso.dsl.evaluate.Axis;
import org.ricasso.dsl.evaluate.Margin;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.walk.Account;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.CheckedStep;
import org.ricasso.dsl.walk.Computed;
import org.ricasso.dsl.walk.Judgement;
import org.ricasso.dsl.walk.Outcome;
import org.ricasso.dsl.walk.Walked;

/** What {@code house.json} says of a product's route: the beginning, its steps, what became of it, what rules said. */
final class ProductJson {
    private final JsonGenerator json;
    private final LinesPrinter lines;
    private final ValueJson values;
    private final OriginJson origins;
    private final House house;
    private final StepJson steps;

    ProductJson(JsonGenerator json, LinesPrinter lines, ValueJson values, OriginJson origins, House house) {
        this.json = json;
        this.lines = lines;
        this.values = values;
        this.origins = origins;
        this.house = house;
        this.steps = new StepJson(json, lines, values, origins, house.vocabulary());
    }

    /** Writes the members of the product's object that speak of its route. */
    void product(CheckedProduct checked) throws IOException {
        Thing product = checked.product();
        Account account = Walked.account(house, product);
        List<RouteStep> route = house.routes().getOrDefault(product, Route.NONE).all();
        json.writeObjectFieldStart("axes");
        for (Axis axis : house.vocabulary().axes()) {
            json.writeObjectFieldStart(axis.name());
            json.writeStringField("start", axis.start());
            json.writeObjectFieldStart("places");
            for (Map.Entry<String, Computed> place : account.axes().get(axis.name()).entrySet()) {
                json.writeFieldName(place.getKey());
                lines.beginLine();
                steps.computed(place.getValue(), null);
                lines.endLine();
            }
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeObjectFieldStart("start");
        for (Account.Left left : account.start()) {
            steps.left(left, null);
        }
        json.writeEndObject();
        json.writeArrayFieldStart("steps");
        Map<String, String> entries = new HashMap<>();
        checked.outcomes().forEach(outcome -> entries.put(outcome.path(), outcome.entry()));
        Map<Integer, List<Account.Pass>> passes = new TreeMap<>();
        account.passes().forEach(pass -> passes.computeIfAbsent(pass.index(), i -> new ArrayList<>()).add(pass));
        for (CheckedStep step : checked.steps()) {
            int index = passes.entrySet().stream().filter(e -> e.getValue().get(0).step().head().equals(step.span()))
                    .findFirst().orElseThrow().getKey();
            steps.step(step, passes.remove(index), product, entries);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("outcomes");
        for (Outcome outcome : checked.outcomes()) {
            outcome(outcome, account);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("judgements");
        Iterator<Account.Judged> judged = account.judged().iterator();
        for (Judgement judgement : checked.judgements()) {
            Operation operation = route.stream().filter(r -> r.number() == judgement.step() && r.operation() != null)
                    .map(RouteStep::operation).findFirst().orElse(null);
            judgement(judgement, judgement.margins().isEmpty() ? null : judged.next(), operation);
        }
        json.writeEndArray();
    }

    private void outcome(Outcome outcome, Account account) throws IOException {
        json.writeStartObject();
        lines.beginLine();
        json.writeStringField("entry", outcome.entry());
        json.writeStringField("property", outcome.path());
        json.writeStringField("made", word(outcome.made()));
        json.writeNumberField("madeAtStep", outcome.madeAt());
        json.writeArrayFieldStart("measuredAtSteps");
        for (int step : outcome.measuredAt()) {
            json.writeNumber(step);
        }
        json.writeEndArray();
        json.writeObjectFieldStart("asked");
        values.fields(outcome.asked());
        json.writeStringField("entry", outcome.entry());
        json.writeEndObject();
        json.writeObjectFieldStart("became");
        values.fields(outcome.found());
        String left = account.end().get(outcome.path());
        if (left != null) {
            json.writeStringField("left", left);
        }
        json.writeEndObject();
        Margin margin = Margin.inside(outcome.asked(), outcome.found());
        if (margin != null) {
            margin(margin);
        }
        json.writeEndObject();
        lines.endLine();
    }

    private void judgement(Judgement judgement, Account.Judged judged, Operation operation) throws IOException {
        json.writeStartObject();
        lines.beginLine();
        json.writeStringField("rule", judgement.rule());
        json.writeNumberField("step", judgement.step());
        json.writeStringField("verdict", word(judgement.verdict()));
        if (!judgement.detail().isEmpty()) {
            json.writeStringField("detail", judgement.detail());
        }
        if (judged != null) {
            Rule rule = house.vocabulary().rule(judgement.rule());
            OriginJson.Names names = names(rule, operation);
            if (!judged.between().isEmpty()) {
                json.writeObjectFieldStart("between");
                for (Map.Entry<String, Computed> between : judged.between().entrySet()) {
                    json.writeFieldName(between.getKey());
                    steps.computed(between.getValue(), names);
                }
                json.writeEndObject();
            }
            json.writeArrayFieldStart("compared");
            for (Account.Sides sides : judged.sides()) {
                json.writeStartObject();
                json.writeStringField("of", sides.margin().text());
                json.writeFieldName("left");
                steps.computed(sides.left(), names);
                json.writeFieldName("right");
                steps.computed(sides.right(), names);
                margin(sides.margin());
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        json.writeEndObject();
        lines.endLine();
    }

    private static OriginJson.Names names(Rule rule, Operation operation) {
        return new OriginJson.Names() {
            @Override
            public String setting(int index) {
                return operation.takes().get(index).name();
            }

            @Override
            public String between(int index) {
                return rule.syntax().lets().get(index).name().text();
            }
        };
    }

    private void margin(Margin margin) throws IOException {
        json.writeObjectFieldStart("margin");
        json.writeNumberField("aim", margin.aim());
        json.writeNumberField("reach", margin.reach());
        json.writeStringField("shown", margin.shownAim());
        json.writeStringField("shownReach", margin.shownReach());
        json.writeEndObject();
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
