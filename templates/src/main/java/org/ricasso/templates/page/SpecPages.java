package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.walk.Brought;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.Outcome;

/** Makes the spec sheet: all that is specified, and what became of it. */
final class SpecPages {
    private final Thing product;
    private final Sheets sheets;
    private final Tongue tongue;
    private final Map<String, Outcome> outcomes = new HashMap<>();

    private SpecPages(CheckedProduct checked, Sheets sheets, Tongue tongue) {
        this.tongue = tongue;
        this.product = checked.product();
        this.sheets = sheets;
        checked.outcomes().forEach(outcome -> outcomes.put(outcome.entry(), outcome));
    }

    static SpecSheet page(Identity identity, CheckedProduct checked, Sheets sheets, List<StepLink> steps,
            String notJudged, Tongue tongue) {
        SpecPages pages = new SpecPages(checked, sheets, tongue);
        return new SpecSheet(identity, pages.summary(checked.outcomes()), pages.meanings(checked.outcomes()), pages.sections(),
                steps, Sheets.RULES, Sheets.CARD, Sheets.COVERAGE, notJudged, pages.brought());
    }

    private List<Knowledge> brought() {
        List<Thing> named = new ArrayList<>();
        product.entries().values().forEach(value -> things(value, named));
        return named.stream().distinct().flatMap(thing -> Brought.of(thing).stream())
                .map(brought -> Knowledge.of(brought, tongue)).toList();
    }

    private static void things(Value value, List<Thing> into) {
        if (value instanceof Value.Ref ref) {
            into.add(ref.thing());
        } else if (value instanceof Value.Several several) {
            several.values().forEach(one -> things(one, into));
        } else if (value instanceof Value.Entries block) {
            block.entries().values().forEach(one -> things(one, into));
        }
    }

    private String summary(List<Outcome> outcomes) {
        List<String> parts = new ArrayList<>();
        for (Outcome.Made made : Outcome.Made.values()) {
            long count = outcomes.stream().filter(o -> o.made() == made).count();
            if (count > 0) {
                parts.add(count + " " + word(made, tongue));
            }
        }
        return parts.isEmpty() ? "" : tongue.say(outcomes.size() == 1 ? "spec.summary-1" : "spec.summary",
                "count", String.valueOf(outcomes.size()), "outcomes", String.join(", ", parts));
    }

    private List<String> meanings(List<Outcome> outcomes) {
        return java.util.Arrays.stream(Outcome.Made.values())
                .filter(made -> outcomes.stream().anyMatch(o -> o.made() == made))
                .map(made -> tongue.say(key(made) + "-means"))
                .toList();
    }

    /** The entries that stand in no block come first, then each block; blocks inside a block are its groups. */
    private List<SpecSheet.Section> sections() {
        List<SpecSheet.Section> sections = new ArrayList<>();
        List<SpecSheet.Row> own = rows(product.entries(), "", Tongue.entriesOf(product), KnownEntries.IN_THE_HEAD);
        if (!own.isEmpty()) {
            sections.add(SpecSheet.Section.of(tongue.say("spec.general"), List.of(new SpecSheet.Group("", own))));
        }
        product.entries().forEach((name, value) -> {
            if (value instanceof Value.Entries block) {
                List<SpecSheet.Group> groups = new ArrayList<>();
                Where where = Tongue.entriesOf(product).in(name);
                collect(groups, "", block.entries(), name, tongue.block(where));
                if (!groups.isEmpty()) {
                    sections.add(SpecSheet.Section.of(tongue.label(where), groups));
                }
            }
        });
        return sections;
    }

    private void collect(List<SpecSheet.Group> groups, String title, Map<String, Value> entries, String path,
            Where where) {
        List<SpecSheet.Row> rows = rows(entries, path + ".", where, Set.of());
        if (!rows.isEmpty()) {
            groups.add(new SpecSheet.Group(title, rows));
        }
        entries.forEach((name, value) -> {
            if (value instanceof Value.Entries block) {
                collect(groups, title.isEmpty() ? tongue.label(where.in(name)) : title + ", " + tongue.name(where.in(name)),
                        block.entries(), path + "." + name, tongue.block(where.in(name)));
            }
        });
    }

    private List<SpecSheet.Row> rows(Map<String, Value> entries, String prefix, Where where, Set<String> without) {
        List<SpecSheet.Row> rows = new ArrayList<>();
        entries.forEach((name, value) -> {
            String path = prefix + name;
            if (value instanceof Value.Absent || value instanceof Value.Entries || without.contains(path)) {
                return;
            }
            Outcome outcome = outcomes.get(path);
            rows.add(new SpecSheet.Row(tongue.label(where.in(name)),
                    tongue.values().shown(value, where.in(name), !product.places().containsKey(path)),
                    outcome == null ? List.of() : List.of(became(outcome))));
        });
        return rows;
    }

    private SpecSheet.Became became(Outcome outcome) {
        return new SpecSheet.Became(Names.capital(word(outcome.made(), tongue)),
                tongue.values().shown(outcome.found(), Tongue.property(product, outcome.path())),
                sheets.step(outcome.madeAt()), sheets.steps(outcome.measuredAt()),
                outcome.measuredAt().equals(List.of(outcome.madeAt())));
    }

    static String word(Outcome.Made made, Tongue tongue) {
        return tongue.say(key(made));
    }

    private static String key(Outcome.Made made) {
        return "outcome." + switch (made) {
            case PROVED -> "proved";
            case AIMED -> "aimed";
            case MISSED -> "missed";
            case UNMADE -> "unmade";
        };
    }
}
