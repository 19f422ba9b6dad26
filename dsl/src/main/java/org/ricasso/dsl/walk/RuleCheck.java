package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Margin;
import org.ricasso.dsl.evaluate.Reads;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.rules.Verdict;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Rule;

/** Judges rules at steps and on the product while a route is walked. */
final class RuleCheck {
    private static final int MARKS = 3;
    private final Walk walk;

    RuleCheck(Walk walk) {
        this.walk = walk;
    }

    void step(int index, Frame frame) {
        RouteStep step = walk.steps.get(index);
        Set<Integer> wrong = new HashSet<>();
        for (Rule.Judged judged : walk.vocabulary.rulesAt(step.operation())) {
            Rule.Form form = judged.form();
            if (judge(judged.rule(), form, frame, index) && judged.rule().level().severity() == Severity.ERROR) {
                form.reads().properties.stream().filter(slot -> isNumber(frame.after[slot])).forEach(wrong::add);
            }
        }
        // only now, so that several rules can speak of one value at one step
        wrong.forEach(slot -> walk.found[slot] = true);
    }

    private static boolean isNumber(Value value) {
        return value instanceof Value.Num || value instanceof Value.Along;
    }

    void product() {
        Frame frame = new Frame();
        frame.product = walk.product;
        frame.self = walk.product;
        frame.before = walk.first();
        frame.after = walk.last();
        for (Rule rule : walk.vocabulary.rulesFor(Rule.Subject.PRODUCT)) {
            judge(rule, rule.general(), frame, -1);
        }
    }

    /** @return whether there is a new finding */
    private boolean judge(Rule rule, Rule.Form form, Frame frame, int index) {
        Verdict verdict = Verdict.of(rule, form, frame);
        int number = index < 0 ? 0 : walk.steps.get(index).number();
        if (walk.passes != null && (verdict.outcome() == Verdict.Outcome.HOLDS || verdict.outcome() == Verdict.Outcome.FAILS)) {
            walk.passes.judged(rule, form, number, frame);
        }
        switch (verdict.outcome()) {
            case NOT_A_SUBJECT -> { }
            case HOLDS -> walk.judgements.add(new Judgement(rule.name(), rule.title(), number, Judgement.Verdict.HOLDS, "",
                    margins(rule, form, frame)));
            case NOT_JUDGED -> walk.judgements.add(new Judgement(rule.name(), rule.title(), number,
                    Judgement.Verdict.NOT_JUDGED, verdict.detail(), List.of()));
            case FAILS -> {
                walk.judgements.add(new Judgement(rule.name(), rule.title(), number, Judgement.Verdict.FAILS,
                        verdict.detail(), margins(rule, form, frame), verdict.said()));
                boolean follows = form.reads().properties.stream().anyMatch(slot -> walk.found[slot])
                        || form.asked().properties.stream().anyMatch(slot -> walk.found[slot]);
                (follows ? walk.suspects : walk.findings).add(finding(rule, form, frame, index, verdict));
                return !follows;
            }
        }
        return false;
    }

    private List<Margin> margins(Rule rule, Rule.Form form, Frame frame) {
        if (!walk.margins) {
            return List.of();
        }
        frame.reach = rule.level() == Rule.Level.SAFETY;
        List<Margin> margins = Margin.of(form.require(), frame);
        frame.reach = false;
        return margins;
    }

    private Finding finding(Rule rule, Rule.Form form, Frame frame, int index, Verdict verdict) {
        RouteStep step = index < 0 ? null : walk.steps.get(index);
        Span primary = primary(form, step);
        String text = switch (verdict.truth()) {
            case SOME -> "can fail: " + verdict.detail();
            case UNKNOWN -> "cannot be judged, so it does not hold: " + verdict.detail();
            default -> verdict.detail();
        };
        List<Mark> others = new ArrayList<>();
        others(form.reads(), step, frame, primary, others);
        List<Finding.Attempt> attempts = new ArrayList<>();
        if (form.remedy() != null && verdict.truth() != Truth.UNKNOWN) {
            Finding.Attempt attempt = Amendments.attempt(walk, form.remedy(), index, frame);
            if (attempt != null) {
                attempts.add(attempt);
            }
        }
        if (attempts.isEmpty() && verdict.truth() != Truth.UNKNOWN) {
            attempts.addAll(OtherThings.attempts(walk, rule, form, frame, index));
        }
        return new Finding(rule.name(), rule.level().severity(), primary, text, others, List.of(rule.because()),
                rule.source().isEmpty() ? List.of() : List.of(rule.source()), attempts).about(form.reads().properties, rule.level() == Rule.Level.SAFETY);
    }

    private Span primary(Rule.Form form, RouteStep step) {
        Rule.Mark mark = form.mark() != null ? form.mark() : form.remedy() != null ? form.remedy().target() : null;
        if (mark != null) {
            if (mark.setting() >= 0 && step != null && step.places()[mark.setting()] != null) {
                return step.places()[mark.setting()];
            }
            Thing.Place place = mark.entry() == null ? null : walk.product.places().get(mark.entry());
            if (place != null) {
                return place.value();
            }
        }
        if (step == null) {
            for (String path : form.reads().product) {
                Thing.Place place = walk.product.places().get(path);
                if (place != null) {
                    return place.value();
                }
            }
            // the step that left what is read so
            return form.reads().properties.stream().map(slot -> walk.lastChange[slot]).filter(change -> change >= 0)
                    .map(change -> walk.steps.get(change).span()).findFirst().orElse(walk.product.span());
        }
        for (int setting : form.reads().settings) {
            if (step.places()[setting] != null) {
                return step.places()[setting];
            }
        }
        return step.span();
    }

    private void others(Reads reads, RouteStep step, Frame frame, Span primary, List<Mark> others) {
        for (int slot : reads.properties) {
            walk.leftBy(slot, step == null ? primary : step.span()).ifPresent(m -> add(others, m, primary));
        }
        for (String path : reads.product) {
            Thing.Place place = walk.product.places().get(path);
            if (place != null) {
                add(others, new Mark(place.value(), Characteristics.name(path) + " is asked for here"), primary);
            } else {
                ofNamed(path).ifPresent(m -> add(others, m, primary));
            }
        }
        if (step != null) {
            for (int setting : reads.settings) {
                if (step.places()[setting] != null) {
                    add(others, new Mark(step.places()[setting], step.operation().takes().get(setting).name()), primary);
                }
            }
        }
        if (frame.centre != null) {
            for (String path : reads.centre) {
                Thing.Place place = frame.centre.places().get(path);
                if (place != null) {
                    add(others, new Mark(place.value(), path + " of " + frame.centre.name()), primary);
                }
            }
        }
    }

    /** What a thing of the works says that the product names: the entry of the thing where the path goes through one. */
    private Optional<Mark> ofNamed(String path) {
        for (int dot = path.indexOf('.'); dot >= 0; dot = path.indexOf('.', dot + 1)) {
            if (walk.product.at(path.substring(0, dot)) instanceof Value.Ref ref && !ref.thing().shipped()) {
                String entry = path.substring(dot + 1);
                Thing.Place place = ref.thing().places().get(entry);
                return place == null ? Optional.empty() : Optional.of(new Mark(place.value(), entry + " of " + ref.thing().name()));
            }
        }
        return Optional.empty();
    }

    private static void add(List<Mark> others, Mark mark, Span primary) {
        if (others.size() < MARKS && !mark.span().equals(primary)
                && others.stream().noneMatch(m -> m.span().equals(mark.span()))) {
            others.add(mark);
        }
    }

    /** Rules of kinds, judged once for the house on each thing of the kind. */
    static void things(org.ricasso.dsl.vocabulary.Vocabulary vocabulary, List<Finding> findings) {
        for (Rule rule : vocabulary.rulesFor(Rule.Subject.KIND)) {
            for (Thing thing : vocabulary.things(rule.subjectName())) {
                Frame frame = new Frame();
                frame.self = thing;
                Verdict verdict = Verdict.of(rule, rule.general(), frame);
                if (verdict.outcome() == Verdict.Outcome.FAILS) {
                    Span primary = rule.general().reads().self.stream().map(thing.places()::get)
                            .filter(java.util.Objects::nonNull).map(Thing.Place::value).findFirst().orElse(thing.span());
                    findings.add(new Finding(rule.name(), rule.level().severity(), primary,
                            Shows.show(new Value.Ref(thing)) + ": " + verdict.detail(), List.of(),
                            List.of(rule.because()), rule.source().isEmpty() ? List.of() : List.of(rule.source()),
                            List.of()));
                }
            }
        }
    }
}
