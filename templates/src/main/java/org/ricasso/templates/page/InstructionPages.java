package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.CheckedStep;

/** Makes the page of a step from the step after the walk. */
final class InstructionPages {
    private static final Pattern BLANK = Pattern.compile("[\\u00A0\\u202F]");
    private final Identity identity;
    private final CheckedProduct product;
    private final Sheets sheets;
    private final Tongue tongue;
    private final ValueText values;
    private final Arrivals arrivals;

    InstructionPages(Identity identity, CheckedProduct product, Sheets sheets, Tongue tongue) {
        this.identity = identity;
        this.product = product;
        this.sheets = sheets;
        this.tongue = tongue;
        this.values = tongue.values();
        this.arrivals = new Arrivals(product, sheets, tongue);
    }

    /** @param index the step's place in the route, from 0 */
    WorkInstruction page(int index) {
        CheckedStep step = product.steps().get(index);
        Thing centre = step.centre();
        Where.Owner operation = Sheets.operation(step);
        return new WorkInstruction(identity, String.valueOf(step.number()), tongue.text(operation, step.title()),
                tongue.typeset(operation, step.purpose()), step.works(),
                centre == null ? "" : centre.name(),
                centre == null || centre.title().equals(centre.name()) ? "" : tongue.title(centre),
                neighbour(index - 1), neighbour(index + 1), values.time(step.setUp()),
                step.run() == null ? List.of() : List.of(values.shown(step.run(), entries(step))),
                cautions(step), typed(centre, KnownEntries.WEAR), typed(centre, KnownEntries.EMERGENCY),
                typed(centre, KnownEntries.ASK), arrivals.of(step), arrivals.timeIn(step), ready(step), settings(step), work(step),
                CheckPoints.of(product.product(), step, tongue), arrivals.timeOut(step), handOn(step, index, true),
                handOn(step, index, false), more(step), centreFacts(centre),
                step.brought().stream().map(brought -> Knowledge.of(brought, tongue)).toList());
    }

    private List<StepLink> neighbour(int index) {
        List<CheckedStep> steps = product.steps();
        return index < 0 || index >= steps.size() ? List.of() : List.of(Sheets.link(steps.get(index), "", tongue));
    }

    /** The attributes of a step's operation. */
    private static Where entries(CheckedStep step) {
        return Tongue.entriesOf("operation", Sheets.operation(step));
    }

    /** What somebody of the works wrote; a default is nobody's word and counts as nothing. */
    private List<String> typed(Thing centre, String entry) {
        if (centre == null || !centre.places().containsKey(entry)) {
            return List.of();
        }
        return List.of(values.typeset(centre.at(entry), Tongue.entriesOf(centre).in(entry)));
    }

    private List<WorkInstruction.Caution> cautions(CheckedStep step) {
        Value value = step.attributes().get(KnownEntries.CAUTIONS);
        return value == null ? List.of() : each(value).stream().map(v -> caution(v, step)).toList();
    }

    private WorkInstruction.Caution caution(Value value, CheckedStep step) {
        if (!(value instanceof Value.Ref ref)) {
            return new WorkInstruction.Caution(values.line(value, entries(step).in(KnownEntries.CAUTIONS)), "", "", List.of());
        }
        Thing caution = ref.thing();
        String thing = text(caution, KnownEntries.THING);
        return new WorkInstruction.Caution(thing.isEmpty() ? tongue.title(caution) : Names.capital(thing),
                text(caution, KnownEntries.MOMENT), text(caution, KnownEntries.ACT),
                each(caution.at(KnownEntries.SIGNS)).stream()
                        .map(sign -> Signs.of(Marks.clean(Shows.show(sign)), tongue.page())).toList());
    }

    private String text(Thing thing, String entry) {
        Value value = thing.at(entry);
        return value instanceof Value.Absent ? "" : values.typeset(value, Tongue.entriesOf(thing).in(entry));
    }

    private static List<Value> each(Value value) {
        if (value instanceof Value.Several several) {
            return several.values();
        }
        return value instanceof Value.Absent ? List.of() : List.of(value);
    }

    private List<Fact> settings(CheckedStep step) {
        return step.settings().stream()
                .filter(s -> !(s.value() instanceof Value.Absent))
                .map(s -> new Fact(tongue.label(setting(step, s.name())),
                        values.shown(s.value(), setting(step, s.name()), s.byDefault())))
                .toList();
    }

    /** Things that the settings name and the operation's own tooling on one list, what is used up on another. */
    private List<Fact> ready(CheckedStep step) {
        if (!step.attributes().containsKey(KnownEntries.TOOLING)) {
            return List.of();
        }
        List<Shown.Line> tools = new ArrayList<>();
        step.settings().forEach(s -> each(s.value()).stream().filter(Value.Ref.class::isInstance)
                .forEach(v -> tools.addAll(values.shown(v, setting(step, s.name())).lines())));
        tools.addAll(titles(step, KnownEntries.TOOLING));
        return Stream.of(new Fact(tongue.say("instruction.tooling"), new Shown(tools, false, false)),
                new Fact(tongue.say("instruction.consumables"), new Shown(titles(step, KnownEntries.CONSUMABLES), false, false)))
                .filter(fact -> !fact.value().lines().isEmpty()).toList();
    }

    private List<Shown.Line> titles(CheckedStep step, String attribute) {
        return each(attribute(step, attribute)).stream().filter(Value.Ref.class::isInstance)
                .map(v -> new Shown.Line("", tongue.title(((Value.Ref) v).thing()), "", "")).toList();
    }

    private static Value attribute(CheckedStep step, String name) {
        return step.attributes().getOrDefault(name, new Value.Absent(name));
    }

    private Where setting(CheckedStep step, String name) {
        return takes(step).in(name);
    }

    private Where takes(CheckedStep step) {
        return Tongue.settingsOf(product.product(), step);
    }

    /** The lines of the work, with the values of settings set off, so that a glance finds them. */
    private List<WorkInstruction.Work> work(CheckedStep step) {
        Pattern own = values(step, tongue);
        Pattern source = tongue.isSource() ? own : values(step, tongue.source());
        return step.work().stream().map(line -> {
            String text = tongue.filled(Sheets.operation(step), line, takes(step));
            return Marks.has(text) && text.charAt(0) == Marks.BORROWED
                    ? new WorkInstruction.Work(runs(Marks.plain(text), source).stream()
                            .map(run -> new WorkInstruction.Run(Marks.borrowed(run.text()), run.value())).toList())
                    : new WorkInstruction.Work(runs(text, own));
        }).toList();
    }

    private Pattern values(CheckedStep step, Tongue in) {
        Set<String> values = step.settings().stream()
                .map(s -> in.values().typeset(s.value(), setting(step, s.name())))
                // a number with its unit: a bare 1 would be found everywhere
                .filter(v -> BLANK.matcher(v).find() && v.chars().anyMatch(Character::isDigit))
                .collect(Collectors.toSet());
        return values.isEmpty() ? null : Pattern.compile("(?<![\\p{L}\\p{N}])(?:"
                + values.stream()
                        .sorted(java.util.Comparator.comparingInt(String::length).reversed()
                                .thenComparing(java.util.Comparator.naturalOrder()))
                        .map(InstructionPages::bound)
                        .map(Pattern::quote)
                        .collect(Collectors.joining("|"))
                + ")(?![\\p{L}\\p{N}])");
    }

    /** One kind of blank, since a text may have another than a number; as long as the text. */
    private static String bound(String text) {
        return text.replace(' ', '\u00A0').replace('\u202F', '\u00A0');
    }

    private static List<WorkInstruction.Run> runs(String line, Pattern values) {
        List<WorkInstruction.Run> runs = new ArrayList<>();
        int done = 0;
        if (values != null) {
            // the same length as the line, so that places agree
            Matcher matcher = values.matcher(bound(line));
            while (matcher.find()) {
                if (matcher.start() > done) {
                    runs.add(new WorkInstruction.Run(line.substring(done, matcher.start()), false));
                }
                runs.add(new WorkInstruction.Run(line.substring(matcher.start(), matcher.end()).replace(' ', '\u00A0'), true));
                done = matcher.end();
            }
        }
        if (done < line.length()) {
            runs.add(new WorkInstruction.Run(line.substring(done), false));
        }
        return runs;
    }

    /** What the step changed: that which the next step looks at, or else the rest. */
    private List<Fact> handOn(CheckedStep step, int index, boolean asked) {
        Set<String> next = index + 1 == product.steps().size() ? Set.of()
                : product.steps().get(index + 1).arrival().stream().map(CheckedStep.Arrival::path)
                        .collect(Collectors.toSet());
        return step.handOver().stream()
                .filter(h -> !(h.value() instanceof Value.Clock))
                .filter(h -> next.contains(h.path()) == asked)
                .map(h -> new Fact(tongue.property(product.product(), h.path(), step.works()),
                        values.shown(h.value(), Tongue.property(product.product(), h.path()))))
                .toList();
    }

    private List<Fact> more(CheckedStep step) {
        Map<String, Value> rest = new LinkedHashMap<>(step.attributes());
        rest.keySet().removeAll(KnownEntries.FOR_THE_RULES);
        rest.keySet().removeAll(Set.of(KnownEntries.CAUTIONS, KnownEntries.TOOLING, KnownEntries.CONSUMABLES));
        return facts(rest, entries(step));
    }

    private List<Fact> centreFacts(Thing centre) {
        if (centre == null) {
            return List.of();
        }
        Map<String, Value> rest = new LinkedHashMap<>(centre.entries());
        rest.keySet().removeAll(KnownEntries.CENTRE_ELSEWHERE);
        return facts(rest, Tongue.entriesOf(centre));
    }

    private List<Fact> facts(Map<String, Value> entries, Where where) {
        return entries.entrySet().stream()
                .filter(e -> !(e.getValue() instanceof Value.Absent))
                .map(e -> new Fact(tongue.label(where.in(e.getKey())), values.shown(e.getValue(), where.in(e.getKey()))))
                .toList();
    }
}
