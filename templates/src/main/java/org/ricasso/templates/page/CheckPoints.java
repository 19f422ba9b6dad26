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
    private final String works;
    private final Set<Thing> told = new HashSet<>();

    private CheckPoints(String works) {
        this.works = works;
    }

    static List<WorkInstruction.Check> of(CheckedStep step) {
        CheckPoints points = new CheckPoints(step.works());
        List<WorkInstruction.Check> checks = new ArrayList<>();
        step.measured().forEach(measured -> checks.add(points.check(measured)));
        return checks;
    }

    private WorkInstruction.Check check(CheckedStep.Measured measured) {
        Map<String, Value> rest = new LinkedHashMap<>(measured.entries());
        rest.keySet().removeAll(KnownEntries.MEASUREMENT_ELSEWHERE);
        List<Fact> facts = new ArrayList<>();
        for (Map.Entry<String, String> known : KnownEntries.MEASUREMENT) {
            Value value = rest.remove(known.getKey());
            if (value != null && !(value instanceof Value.Absent)) {
                facts.add(new Fact(known.getValue(), shown(value)));
            }
        }
        rest.forEach((name, value) -> {
            if (!(value instanceof Value.Absent)) {
                facts.add(new Fact(Names.label(name), shown(value)));
            }
        });
        return new WorkInstruction.Check(Names.of(measured.path(), works), ValueText.shown(measured.limit()),
                measured.characteristic(), facts);
    }

    /** A thing is told in full, so that nobody has to look a name up at the machine; what takes lines, once a page. */
    private Shown shown(Value value) {
        if (!(value instanceof Value.Ref ref) || !KnownEntries.OF_A_THING.containsKey(ref.thing().kind())) {
            Shown shown = ValueText.shown(value);
            return value instanceof Value.Txt text ? Shown.of(PlainText.typeset(text.text())) : shown;
        }
        Thing thing = ref.thing();
        KnownEntries.Said said = KnownEntries.OF_A_THING.get(thing.kind());
        if (!said.onOneLine() && !told.add(thing)) {
            return Shown.of(thing.title() + ", as above");
        }
        List<Shown.Line> lines = new ArrayList<>();
        List<String> behind = new ArrayList<>();
        for (Map.Entry<String, String> known : said.entries()) {
            String text = String.join(", ", said(thing.entries(), known.getKey()));
            if (text.isEmpty()) {
                continue;
            }
            if (said.onOneLine()) {
                behind.add(known.getValue() + " " + text);
            } else {
                lines.add(new Shown.Line(known.getValue(), text, "", ""));
            }
        }
        String more = behind.isEmpty() ? "" : "(" + String.join(", ", behind) + ")";
        lines.add(0, new Shown.Line("", thing.title(), more, ""));
        return new Shown(lines, false, false);
    }

    /** The entry, or the same entry in each block of the thing. */
    private static List<String> said(Map<String, Value> entries, String name) {
        Value own = entries.get(name);
        if (own != null) {
            return own instanceof Value.Absent ? List.of() : List.of(PlainText.typeset(ValueText.line(own)));
        }
        return entries.values().stream()
                .filter(Value.Entries.class::isInstance)
                .flatMap(block -> said(((Value.Entries) block).entries(), name).stream())
                .collect(Collectors.toList());
    }
}
