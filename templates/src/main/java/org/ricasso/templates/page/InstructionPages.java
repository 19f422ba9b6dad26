package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.CheckedStep;

/** Makes the page of a step from the step after the walk. */
final class InstructionPages {
    private final Identity identity;
    private final CheckedProduct product;
    private final Sheets sheets;

    InstructionPages(Identity identity, CheckedProduct product, Sheets sheets) {
        this.identity = identity;
        this.product = product;
        this.sheets = sheets;
    }

    /** @param index the step's place in the route, from 0 */
    WorkInstruction page(int index) {
        CheckedStep step = product.steps().get(index);
        Thing centre = step.centre();
        return new WorkInstruction(identity, String.valueOf(step.number()), step.title(),
                step.purpose() == null ? "" : PlainText.typeset(step.purpose()), step.works(),
                centre == null ? "" : centre.name(),
                centre == null || centre.title().equals(centre.name()) ? "" : centre.title(),
                neighbour(index - 1), neighbour(index + 1), ValueText.time(step.setUp()),
                step.run() == null ? List.of() : List.of(ValueText.shown(step.run())),
                cautions(step), typed(centre, KnownEntries.WEAR), typed(centre, KnownEntries.EMERGENCY),
                typed(centre, KnownEntries.ASK), arrival(step), timeIn(step), settings(step), work(step),
                CheckPoints.of(step), timeOut(step), handOn(step, index, true), handOn(step, index, false), more(step),
                centreFacts(centre));
    }

    private List<StepLink> neighbour(int index) {
        List<CheckedStep> steps = product.steps();
        return index < 0 || index >= steps.size() ? List.of() : List.of(Sheets.link(steps.get(index), ""));
    }

    /** What somebody of the works wrote; a default is nobody's word and counts as nothing. */
    private static List<String> typed(Thing centre, String entry) {
        if (centre == null || !centre.places().containsKey(entry)) {
            return List.of();
        }
        return List.of(PlainText.typeset(ValueText.line(centre.at(entry))));
    }

    private static List<WorkInstruction.Caution> cautions(CheckedStep step) {
        Value value = step.attributes().get(KnownEntries.CAUTIONS);
        return value == null ? List.of() : each(value).stream().map(InstructionPages::caution).toList();
    }

    private static WorkInstruction.Caution caution(Value value) {
        if (!(value instanceof Value.Ref ref)) {
            return new WorkInstruction.Caution(ValueText.line(value), "", "", List.of());
        }
        Thing caution = ref.thing();
        String thing = text(caution, KnownEntries.THING);
        return new WorkInstruction.Caution(thing.isEmpty() ? caution.title() : Names.capital(thing),
                text(caution, KnownEntries.MOMENT), text(caution, KnownEntries.ACT),
                each(caution.at(KnownEntries.SIGNS)).stream().map(ValueText::line).map(Signs::of).toList());
    }

    private static String text(Thing thing, String entry) {
        Value value = thing.at(entry);
        return value instanceof Value.Absent ? "" : PlainText.typeset(ValueText.line(value));
    }

    private static List<Value> each(Value value) {
        if (value instanceof Value.Several several) {
            return several.values();
        }
        return value instanceof Value.Absent ? List.of() : List.of(value);
    }

    private static List<WorkInstruction.Arrival> arrival(CheckedStep step) {
        return step.arrival().stream()
                .filter(a -> !a.isDuty())
                .map(a -> new WorkInstruction.Arrival(Names.of(a.path(), step.works()), PlainText.typeset(a.condition()),
                        sentence(a.complaint())))
                .toList();
    }

    private List<WorkInstruction.Clock> timeIn(CheckedStep step) {
        return step.arrival().stream()
                .filter(CheckedStep.Arrival::isDuty)
                .map(a -> clock(a, sheets.step(a.since())))
                .toList();
    }

    /** Clocks of later steps that begin with this one. */
    private List<WorkInstruction.Clock> timeOut(CheckedStep step) {
        List<WorkInstruction.Clock> result = new ArrayList<>();
        for (CheckedStep later : product.steps()) {
            for (CheckedStep.Arrival arrival : later.arrival()) {
                if (arrival.isDuty() && arrival.since() == step.number()) {
                    result.add(clock(arrival, sheets.step(later.number())));
                }
            }
        }
        return result;
    }

    private static WorkInstruction.Clock clock(CheckedStep.Arrival duty, List<StepLink> other) {
        return new WorkInstruction.Clock(Names.label(duty.name()), PlainText.typeset(duty.condition()), other,
                sentence(duty.complaint()));
    }

    /** A reason as a sentence of its own. */
    private static String sentence(String text) {
        return text == null || text.isBlank() ? "" : PlainText.typeset(Names.capital(text.strip()))
                + (text.strip().matches("(?s).*[.!?]") ? "" : ".");
    }

    private static List<Fact> settings(CheckedStep step) {
        return step.settings().stream()
                .filter(s -> !(s.value() instanceof Value.Absent))
                .map(s -> new Fact(Names.label(s.name()), ValueText.shown(s.value(), s.byDefault())))
                .toList();
    }

    /** The lines of the work, with the values of settings set off, so that a glance finds them. */
    private static List<WorkInstruction.Work> work(CheckedStep step) {
        Set<String> values = step.settings().stream()
                .map(s -> PlainText.typeset(ValueText.line(s.value())))
                // a number with its unit: a bare 1 would be found everywhere
                .filter(v -> v.indexOf('\u00A0') > 0 && v.chars().anyMatch(Character::isDigit))
                .collect(Collectors.toSet());
        Pattern pattern = values.isEmpty() ? null : Pattern.compile("(?<![\\p{L}\\p{N}])(?:"
                + values.stream()
                        .sorted(java.util.Comparator.comparingInt(String::length).reversed()
                                .thenComparing(java.util.Comparator.naturalOrder()))
                        .map(v -> v.replace(' ', '\u00A0'))
                        .map(Pattern::quote)
                        .collect(Collectors.joining("|"))
                + ")(?![\\p{L}\\p{N}])");
        return step.instruct().stream().map(line -> runs(PlainText.typeset(line), pattern)).toList();
    }

    private static WorkInstruction.Work runs(String line, Pattern values) {
        List<WorkInstruction.Run> runs = new ArrayList<>();
        int done = 0;
        if (values != null) {
            // the same length as the line, so that places agree
            Matcher matcher = values.matcher(line.replace(' ', '\u00A0'));
            while (matcher.find()) {
                if (matcher.start() > done) {
                    runs.add(new WorkInstruction.Run(line.substring(done, matcher.start()), false));
                }
                runs.add(new WorkInstruction.Run(matcher.group(), true));
                done = matcher.end();
            }
        }
        if (done < line.length()) {
            runs.add(new WorkInstruction.Run(line.substring(done), false));
        }
        return new WorkInstruction.Work(runs);
    }

    /** What the step changed: that which the next step looks at, or else the rest. */
    private List<Fact> handOn(CheckedStep step, int index, boolean asked) {
        Set<String> next = index + 1 == product.steps().size() ? Set.of()
                : product.steps().get(index + 1).arrival().stream().map(CheckedStep.Arrival::path)
                        .collect(Collectors.toSet());
        return step.handOver().stream()
                .filter(h -> !(h.value() instanceof Value.Clock))
                .filter(h -> next.contains(h.path()) == asked)
                .map(h -> new Fact(Names.of(h.path(), step.works()), ValueText.shown(h.value())))
                .toList();
    }

    private static List<Fact> more(CheckedStep step) {
        Map<String, Value> rest = new LinkedHashMap<>(step.attributes());
        rest.keySet().removeAll(KnownEntries.FOR_THE_RULES);
        rest.remove(KnownEntries.CAUTIONS);
        return facts(rest);
    }

    private static List<Fact> centreFacts(Thing centre) {
        if (centre == null) {
            return List.of();
        }
        Map<String, Value> rest = new LinkedHashMap<>(centre.entries());
        rest.keySet().removeAll(KnownEntries.CENTRE_ELSEWHERE);
        return facts(rest);
    }

    private static List<Fact> facts(Map<String, Value> values) {
        return values.entrySet().stream()
                .filter(e -> !(e.getValue() instanceof Value.Absent))
                .map(e -> new Fact(Names.label(e.getKey()), ValueText.shown(e.getValue())))
                .toList();
    }
}
