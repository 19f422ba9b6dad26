package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.walk.CheckedStep;

/** What a step measures, in the order in which an inspector asks. */
final class CheckPoints {
    private final Thing product;
    private final String works;
    private final Tongue tongue;
    private final Set<Thing> told = new HashSet<>();

    private CheckPoints(Thing product, String works, Tongue tongue) {
        this.product = product;
        this.works = works;
        this.tongue = tongue;
    }

    static List<WorkInstruction.Check> of(Thing product, CheckedStep step, Tongue tongue) {
        CheckPoints points = new CheckPoints(product, step.works(), tongue);
        List<WorkInstruction.Check> checks = new ArrayList<>();
        step.watched().forEach(watched -> checks.add(points.check(step, watched)));
        step.measured().forEach(measured -> checks.add(points.check(measured)));
        return checks;
    }

    private WorkInstruction.Check check(CheckedStep.Measured measured) {
        return new WorkInstruction.Check(tongue.property(product, measured.path(), works),
                tongue.values().shown(measured.limit(), Tongue.property(product, measured.path())),
                measured.characteristic() ? "" : tongue.say("instruction.for-process"), facts(measured.entries()));
    }

    private WorkInstruction.Check check(CheckedStep step, CheckedStep.Watched watched) {
        Where setting = Tongue.settingsOf(product, step).in(watched.setting());
        return new WorkInstruction.Check(tongue.label(setting), tongue.values().shown(watched.limit(), setting),
                tongue.say("instruction.watched"), facts(watched.entries()));
    }

    private List<Fact> facts(Map<String, Value> all) {
        Map<String, Value> rest = new LinkedHashMap<>(all);
        rest.keySet().removeAll(KnownEntries.MEASUREMENT_ELSEWHERE);
        Where entries = Tongue.entriesOf("measurement", Tongue.ownerOf(product));
        List<Fact> facts = new ArrayList<>();
        for (String known : KnownEntries.MEASUREMENT) {
            Value value = rest.remove(known);
            if (value != null && !(value instanceof Value.Absent)) {
                facts.add(new Fact(tongue.say("measurement." + known), shown(value, entries.in(known))));
            }
        }
        rest.forEach((name, value) -> {
            if (!(value instanceof Value.Absent)) {
                facts.add(new Fact(tongue.label(entries.in(name)), shown(value, entries.in(name))));
            }
        });
        return facts;
    }

    /** A thing is told in full, so that nobody has to look a name up at the machine; what takes lines, once a page. */
    private Shown shown(Value value, Where where) {
        if (!(value instanceof Value.Ref ref) || !KnownEntries.OF_A_THING.containsKey(ref.thing().kind())) {
            return value instanceof Value.Txt ? Shown.of(tongue.values().typeset(value, where))
                    : tongue.values().shown(value, where);
        }
        Thing thing = ref.thing();
        KnownEntries.Said said = KnownEntries.OF_A_THING.get(thing.kind());
        if (!said.onOneLine() && !told.add(thing)) {
            return Shown.of(tongue.say("values.above", "title", tongue.title(thing)));
        }
        List<Shown.Line> lines = new ArrayList<>();
        List<String> behind = new ArrayList<>();
        for (String known : said.entries()) {
            String text = String.join(", ", said(thing.entries(), known, Tongue.entriesOf(thing)));
            if (text.isEmpty()) {
                continue;
            }
            String key = "of-" + thing.kind() + "." + known;
            if (said.onOneLine()) {
                behind.add(tongue.say(key, "value", text));
            } else {
                lines.add(new Shown.Line(tongue.say(key), text, "", ""));
            }
        }
        String more = behind.isEmpty() ? "" : "(" + String.join(", ", behind) + ")";
        lines.add(0, new Shown.Line("", tongue.title(thing), more, ""));
        return new Shown(lines, false, false);
    }

    /** The entry, or the same entry in each block of the thing. */
    private List<String> said(Map<String, Value> entries, String name, Where where) {
        Value own = entries.get(name);
        if (own != null) {
            return own instanceof Value.Absent ? List.of() : List.of(tongue.values().typeset(own, where.in(name)));
        }
        return entries.entrySet().stream()
                .filter(e -> e.getValue() instanceof Value.Entries)
                .flatMap(e -> said(((Value.Entries) e.getValue()).entries(), name, tongue.block(where.in(e.getKey()))).stream())
                .collect(Collectors.toList());
    }
}
