package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.Outcome;

/** Makes the spec sheet: all that is specified, and what became of it. */
final class SpecPages {
    private final Thing product;
    private final Sheets sheets;
    private final Map<String, Outcome> outcomes = new HashMap<>();

    private SpecPages(CheckedProduct checked, Sheets sheets) {
        this.product = checked.product();
        this.sheets = sheets;
        checked.outcomes().forEach(outcome -> outcomes.put(outcome.entry(), outcome));
    }

    static SpecSheet page(Identity identity, CheckedProduct checked, Sheets sheets, List<StepLink> steps,
            String notJudged) {
        SpecPages pages = new SpecPages(checked, sheets);
        return new SpecSheet(identity, summary(checked.outcomes()), meanings(checked.outcomes()), pages.sections(),
                steps, Sheets.RULES, notJudged);
    }

    private static String summary(List<Outcome> outcomes) {
        List<String> parts = new ArrayList<>();
        for (Outcome.Made made : Outcome.Made.values()) {
            long count = outcomes.stream().filter(o -> o.made() == made).count();
            if (count > 0) {
                parts.add(count + " " + word(made));
            }
        }
        return parts.isEmpty() ? "" : outcomes.size() + " characteristics: " + String.join(", ", parts);
    }

    private static List<String> meanings(List<Outcome> outcomes) {
        return java.util.Arrays.stream(Outcome.Made.values())
                .filter(made -> outcomes.stream().anyMatch(o -> o.made() == made))
                .map(SpecPages::meaning)
                .toList();
    }

    /** The entries that stand in no block come first, then each block; blocks inside a block are its groups. */
    private List<SpecSheet.Section> sections() {
        List<SpecSheet.Section> sections = new ArrayList<>();
        List<SpecSheet.Row> own = rows(product.entries(), "", KnownEntries.IN_THE_HEAD);
        if (!own.isEmpty()) {
            sections.add(SpecSheet.Section.of("General", List.of(new SpecSheet.Group("", own))));
        }
        product.entries().forEach((name, value) -> {
            if (value instanceof Value.Entries block) {
                List<SpecSheet.Group> groups = new ArrayList<>();
                collect(groups, "", block.entries(), name);
                if (!groups.isEmpty()) {
                    sections.add(SpecSheet.Section.of(Names.label(name), groups));
                }
            }
        });
        return sections;
    }

    private void collect(List<SpecSheet.Group> groups, String title, Map<String, Value> entries, String path) {
        List<SpecSheet.Row> rows = rows(entries, path + ".", Set.of());
        if (!rows.isEmpty()) {
            groups.add(new SpecSheet.Group(title, rows));
        }
        entries.forEach((name, value) -> {
            if (value instanceof Value.Entries block) {
                collect(groups, title.isEmpty() ? Names.label(name) : title + ", " + name.replace('-', ' '),
                        block.entries(), path + "." + name);
            }
        });
    }

    private List<SpecSheet.Row> rows(Map<String, Value> entries, String prefix, Set<String> without) {
        List<SpecSheet.Row> rows = new ArrayList<>();
        entries.forEach((name, value) -> {
            String path = prefix + name;
            if (value instanceof Value.Absent || value instanceof Value.Entries || without.contains(path)) {
                return;
            }
            Outcome outcome = outcomes.get(path);
            rows.add(new SpecSheet.Row(Names.label(name),
                    ValueText.shown(value, !product.places().containsKey(path)),
                    outcome == null ? List.of() : List.of(became(outcome))));
        });
        return rows;
    }

    private SpecSheet.Became became(Outcome outcome) {
        return new SpecSheet.Became(Names.capital(word(outcome.made())), ValueText.shown(outcome.found()),
                sheets.step(outcome.madeAt()), sheets.steps(outcome.measuredAt()),
                outcome.measuredAt().equals(List.of(outcome.madeAt())));
    }

    static String word(Outcome.Made made) {
        return switch (made) {
            case PROVED -> "proved";
            case AIMED -> "aimed";
            case MISSED -> "missed";
            case UNMADE -> "unmade";
        };
    }

    private static String meaning(Outcome.Made made) {
        return switch (made) {
            case PROVED -> "Proved: all that the route can leave is inside the limit.";
            case AIMED -> "Aimed: the aim is inside, the scatter reaches out, so measuring decides.";
            case MISSED -> "Missed: the aim is not inside.";
            case UNMADE -> "Unmade: no step makes it.";
        };
    }
}
