package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.rules.Verdict;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Measuring;
import org.ricasso.dsl.vocabulary.Reading;
import org.ricasso.dsl.vocabulary.Rule;

/**
 * Judges the rules for measurements at every block in which a step measures a property or watches a setting: whether what it
 * names suits the limit that the reading is held against.
 */
final class MeasurementRules {
    private static final int THINGS = 2;
    private static final int MARKS = 3;
    private final Walk walk;
    private final List<Rule> rules;

    MeasurementRules(Walk walk) {
        this.walk = walk;
        this.rules = walk.vocabulary.rulesFor(Rule.Subject.MEASUREMENT);
    }

    /**
     * A block of a step.
     *
     * @param step the step's index
     * @param setting the setting that is watched, or -1
     * @param path the entry of the product that states the limit, or null
     * @param measuring how a limit of its type is judged
     * @param limit what the reading is held against
     * @param entries the block's entries
     * @param span the name of what is measured
     * @param places where the entries are written
     * @param frames what rules see, for each value that is a limit
     */
    private record Measured(int step, int setting, String path, Measuring measuring, Value limit, Value.Entries entries, Span span,
            Map<String, Span> places, List<Frame> frames) {}

    void judge() {
        if (rules.isEmpty()) {
            return;
        }
        Map<Property, String> specified = Characteristics.specified(walk.vocabulary, walk.product);
        for (int i = 0; i < walk.steps.size(); i++) {
            RouteStep step = walk.steps.get(i);
            List<Measured> blocks = new ArrayList<>();
            for (RouteStep.Measure measure : step.measures()) {
                String path = measure.limit() == null ? specified.get(measure.property()) : null;
                Value limit = measure.limit() != null ? measure.limit()
                        : path == null ? new Value.Absent(Reading.LIMIT) : walk.product.at(path);
                blocks.add(block(i, -1, path, measure.property().type(), limit, measure.entries(), measure.span(), measure.places()));
            }
            for (RouteStep.Watch watch : step.watches()) {
                blocks.add(block(i, watch.setting(), null, step.operation().takes().get(watch.setting()).type(),
                        walk.settings[i][watch.setting()], watch.entries(), watch.span(), watch.places()));
            }
            for (int rule = 0; rule < rules.size(); rule++) {
                judge(rule, blocks, step.number());
            }
        }
    }

    private Measured block(int step, int setting, String path, Type measured, Value limit, Value.Entries written, Span span,
            Map<String, Span> places) {
        Measuring measuring = walk.vocabulary.measuring(measured);
        Value.Entries entries = walk.measurement(span, written);
        List<Frame> frames = Walk.isReported(limit) ? List.of()
                : limits(limit).stream().map(one -> frame(measuring.reading(), one, entries, span)).toList();
        return new Measured(step, setting, path, measuring, limit, entries, span, places, frames);
    }

    /** Judges a rule at all blocks of a step; the step's judgement is the worst of them. */
    private void judge(int index, List<Measured> blocks, int number) {
        Rule rule = rules.get(index);
        Judgement worst = null;
        for (Measured block : blocks) {
            Rule.Form form = block.measuring().forms().get(index);
            if (form == null) {
                continue;
            }
            for (Frame frame : block.frames()) {
                Verdict verdict = Verdict.of(rule, form, frame);
                worst = worse(worst, judgement(rule, verdict, number));
                if (verdict.outcome() == Verdict.Outcome.FAILS) {
                    walk.findings.add(finding(rule, form, block, frame, verdict));
                    break;
                }
            }
        }
        if (worst != null) {
            walk.judgements.add(worst);
        }
    }

    static Judgement worse(Judgement one, Judgement other) {
        return one == null || other != null && weight(other.verdict()) > weight(one.verdict()) ? other : one;
    }

    private static int weight(Judgement.Verdict verdict) {
        return switch (verdict) {
            case NOT_JUDGED -> 0;
            case HOLDS -> 1;
            case FAILS -> 2;
        };
    }

    /** A step may have many blocks, so no margin of one of them stands for the step. */
    static Judgement judgement(Rule rule, Verdict verdict, int number) {
        return switch (verdict.outcome()) {
            case NOT_A_SUBJECT -> null;
            case HOLDS -> new Judgement(rule.name(), rule.title(), number, Judgement.Verdict.HOLDS, "", List.of());
            case NOT_JUDGED -> new Judgement(rule.name(), rule.title(), number, Judgement.Verdict.NOT_JUDGED,
                    verdict.detail(), List.of());
            case FAILS -> new Judgement(rule.name(), rule.title(), number, Judgement.Verdict.FAILS, verdict.detail(),
                    List.of(), verdict.said());
        };
    }

    /** What the readings are held against: along an axis the limit of each station. */
    private static List<Value> limits(Value limit) {
        return limit instanceof Value.Along along
                ? along.stations().stream().<Value>map(station -> new Value.Num(station.quantity())).toList()
                : List.of(limit);
    }

    private Frame frame(Reading reading, Value limit, Value.Entries entries, Span name) {
        Frame frame = new Frame();
        frame.product = walk.product;
        frame.block = entries;
        Map<String, Value> given = new HashMap<>();
        given.put(Reading.LIMIT, limit);
        given.put(Reading.PROPERTY, Value.Words.of(name.text()));
        if (reading != null && entries.entries().get(reading.entry()) instanceof Value.Ref ref) {
            given.put(Reading.READING, ref.thing().at(reading.block()));
        } else if (reading != null && Walk.isReported(entries.entries().get(reading.entry()))) {
            given.put(Reading.READING, entries.entries().get(reading.entry()));
        }
        frame.given = given;
        return frame;
    }

    private Finding finding(Rule rule, Rule.Form form, Measured block, Frame frame, Verdict verdict) {
        Span primary = primary(form, block);
        String text = verdict.truth() == Truth.UNKNOWN ? "cannot be judged, so it does not hold: " + verdict.detail()
                : verdict.detail();
        List<Mark> others = new ArrayList<>();
        if (!primary.equals(block.span())) {
            others.add(new Mark(block.span(), "read here"));
        }
        for (String path : form.reads().self) {
            Mark mark = mark(path, block);
            if (mark != null && others.size() < MARKS && !mark.span().equals(primary)
                    && others.stream().noneMatch(m -> m.span().equals(mark.span()))) {
                others.add(mark);
            }
        }
        List<Finding.Attempt> attempts = new ArrayList<>();
        if (verdict.truth() != Truth.UNKNOWN) {
            others(form, block).forEach(attempts::add);
            Finding.Attempt computed = computed(form.remedy(), block, frame);
            if (computed != null) {
                attempts.add(computed);
            }
        }
        return new Finding(rule.name(), rule.level().severity(), primary, text, others, List.of(rule.because()),
                rule.source().isEmpty() ? List.of() : List.of(rule.source()), attempts);
    }

    private Span primary(Rule.Form form, Measured block) {
        if (form.mark() != null && form.mark().entry() != null) {
            Mark mark = mark(form.mark().entry(), block);
            if (mark != null) {
                return mark.span();
            }
        }
        return block.span();
    }

    /** Where what a rule reads by a path is written, or null where it is not. */
    private Mark mark(String path, Measured block) {
        String first = path.contains(".") ? path.substring(0, path.indexOf('.')) : path;
        if (first.equals(Reading.LIMIT)) {
            return limit(block);
        }
        Reading reading = block.measuring().reading();
        boolean reads = first.equals(Reading.READING);
        String entry = reads && reading != null ? reading.entry() : first;
        if (block.entries().entries().get(entry) instanceof Value.Ref ref && path.contains(".")) {
            String rest = path.substring(path.indexOf('.') + 1);
            Thing.Place place = ref.thing().places().get(reads && reading != null ? reading.block() + "." + rest : rest);
            return place == null ? null : new Mark(place.value(), rest + " of " + ref.thing().name());
        }
        Span place = block.places().get(entry);
        return place == null ? null : new Mark(place, entry);
    }

    private Mark limit(Measured block) {
        Span span = block.setting() >= 0 ? walk.steps.get(block.step()).places()[block.setting()]
                : block.path() == null ? block.places().get(Reading.LIMIT)
                : walk.product.places().containsKey(block.path()) ? walk.product.places().get(block.path()).value() : null;
        return span == null ? null : new Mark(span, block.setting() >= 0 ? "set here"
                : block.path() == null ? "its limit" : Characteristics.name(block.path()) + " is asked for here");
    }

    /** The attempt of a rule's remedy, which may change the limit where a spec or a setting states it. */
    private Finding.Attempt computed(Rule.Remedy remedy, Measured block, Frame frame) {
        if (remedy == null || !Reading.LIMIT.equals(remedy.target().entry()) || block.setting() < 0 && block.path() == null) {
            return null;
        }
        frame.settings = walk.settings[block.step()];
        return Amendments.attempt(walk, new Rule.Remedy(new Rule.Mark(block.setting(), block.path()), remedy.change(),
                remedy.value(), remedy.span()), block.step(), frame);
    }

    /** Other things with which all rules hold; first those that the route reads the same with, then those that it reads with. */
    private Stream<Finding.Attempt> others(Rule.Form form, Measured block) {
        Reading reading = block.measuring().reading();
        Span place = reading == null ? null : block.places().get(reading.entry());
        if (place == null || !(block.entries().entries().get(reading.entry()) instanceof Value.Ref now)
                || form.reads().self.stream().noneMatch(path -> path.startsWith(Reading.READING)
                        || path.startsWith(reading.entry()))) {
            return Stream.empty();
        }
        List<RouteStep.Measure> measures = walk.steps.stream().flatMap(s -> s.measures().stream()).toList();
        Comparator<Thing> known = Comparator.<Thing, Boolean>comparing(thing -> measures.stream()
                .noneMatch(m -> m.property().name().equals(block.span().text()) && thing.name().equals(named(m.entries(), reading.entry()))))
                .thenComparing(thing -> measures.stream().noneMatch(m -> thing.name().equals(named(m.entries(), reading.entry()))));
        return walk.vocabulary.things(now.thing().kind()).stream().filter(thing -> thing != now.thing()).sorted(known)
                .map(thing -> instead(block, reading.entry(), thing)).filter(entries -> holds(block, entries)).limit(THINGS)
                .map(entries -> {
                    String name = named(entries, reading.entry());
                    return new Finding.Attempt.Instead(block.span(), entries, place, "read it with " + name, name);
                });
    }

    private static String named(Value.Entries entries, String entry) {
        return entries.entries().get(entry) instanceof Value.Ref ref ? ref.thing().name() : null;
    }

    private static Value.Entries instead(Measured block, String entry, Thing thing) {
        Map<String, Value> entries = new LinkedHashMap<>(block.entries().entries());
        entries.put(entry, new Value.Ref(thing));
        return new Value.Entries(entries);
    }

    /** Whether a block with other entries can be judged and breaks no rule. */
    private boolean holds(Measured block, Value.Entries entries) {
        boolean judged = false;
        for (int rule = 0; rule < rules.size(); rule++) {
            Rule.Form form = block.measuring().forms().get(rule);
            for (Value limit : form == null ? List.<Value>of() : limits(block.limit())) {
                Frame frame = frame(block.measuring().reading(), limit, entries, block.span());
                Verdict.Outcome outcome = Verdict.of(rules.get(rule), form, frame).outcome();
                if (outcome == Verdict.Outcome.FAILS) {
                    return false;
                }
                judged |= outcome == Verdict.Outcome.HOLDS
                        && form.reads().self.stream().anyMatch(path -> path.startsWith(Reading.READING));
            }
        }
        return judged;
    }
}
