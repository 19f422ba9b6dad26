package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.rules.Verdict;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Used;

/** Judges the rules for settings at every thing that a step names in one: whether it suits the step and the product. */
final class SettingRules {
    private static final int THINGS = 2;
    private final Walk walk;

    SettingRules(Walk walk) {
        this.walk = walk;
    }

    void judge() {
        for (int i = 0; i < walk.steps.size(); i++) {
            RouteStep step = walk.steps.get(i);
            if (step.operation() != null) {
                for (Rule rule : walk.vocabulary.settingRulesAt(step.operation())) {
                    judge(rule, step, i);
                }
            }
        }
    }

    /** Judges a rule at all settings of a step; the step's judgement is the worst of them. */
    private void judge(Rule rule, RouteStep step, int index) {
        Judgement worst = null;
        for (Map.Entry<Integer, Rule.Form> used : rule.used().get(step.operation()).entrySet()) {
            int setting = used.getKey();
            // a default comes from the product or the operation, and rules for these speak of it
            for (Thing thing : step.places()[setting] == null ? List.<Thing>of() : things(walk.settings[index][setting])) {
                Frame frame = frame(index, thing);
                Verdict verdict = Verdict.of(rule, used.getValue(), frame);
                worst = MeasurementRules.worse(worst, MeasurementRules.judgement(rule, verdict, step.number()));
                if (verdict.outcome() == Verdict.Outcome.FAILS) {
                    walk.findings.add(finding(rule, used.getValue(), index, setting, thing, verdict));
                }
            }
        }
        if (worst != null) {
            walk.judgements.add(worst);
        }
    }

    private static List<Thing> things(Value value) {
        List<Thing> result = new ArrayList<>();
        for (Value one : value instanceof Value.Several several ? several.values() : List.of(value)) {
            if (one instanceof Value.Ref ref) {
                result.add(ref.thing());
            }
        }
        return result;
    }

    private Frame frame(int index, Thing thing) {
        RouteStep step = walk.steps.get(index);
        Frame frame = new Frame();
        frame.product = walk.product;
        frame.centre = step.centre();
        frame.operation = step.operation().title();
        frame.settings = walk.settings[index];
        frame.before = walk.before[index];
        frame.after = walk.after[index];
        frame.given = Map.of(Used.SETTING, new Value.Ref(thing));
        return frame;
    }

    private Finding finding(Rule rule, Rule.Form form, int index, int setting, Thing thing, Verdict verdict) {
        Span primary = walk.steps.get(index).places()[setting];
        List<Mark> others = new ArrayList<>();
        for (String path : form.reads().self) {
            Thing.Place place = path.contains(".") ? thing.places().get(path.substring(path.indexOf('.') + 1)) : null;
            if (place != null) {
                others.add(new Mark(place.value(), path.substring(path.indexOf('.') + 1) + " of " + thing.name()));
            }
        }
        others.add(new Mark(walk.product.span(), "this is " + walk.product.name()));
        List<Finding.Attempt> attempts = verdict.truth() == Truth.UNKNOWN ? List.of() : others(index, setting, thing);
        return new Finding(rule.name(), rule.level().severity(), primary, verdict.truth() == Truth.UNKNOWN
                ? "cannot be judged, so it does not hold: " + verdict.detail() : verdict.detail(), others, List.of(rule.because()),
                rule.source().isEmpty() ? List.of() : List.of(rule.source()), attempts);
    }

    /** Other things of the kind with which all rules hold; none where the setting names several. */
    private List<Finding.Attempt> others(int index, int setting, Thing now) {
        return !(walk.settings[index][setting] instanceof Value.Ref) ? List.of()
                : walk.vocabulary.things(now.kind()).stream().filter(thing -> thing != now && holds(index, setting, thing)).limit(THINGS)
                        .<Finding.Attempt>map(thing -> new Finding.Attempt.Setting(index, setting, thing.name())).toList();
    }

    /** Whether a thing in its place can be judged and breaks no rule. */
    private boolean holds(int index, int setting, Thing thing) {
        boolean judged = false;
        for (Rule rule : walk.vocabulary.settingRulesAt(walk.steps.get(index).operation())) {
            Rule.Form form = rule.used().get(walk.steps.get(index).operation()).get(setting);
            if (form == null) {
                continue;
            }
            Verdict.Outcome outcome = Verdict.of(rule, form, frame(index, thing)).outcome();
            if (outcome == Verdict.Outcome.FAILS) {
                return false;
            }
            judged |= outcome == Verdict.Outcome.HOLDS;
        }
        return judged;
    }
}
