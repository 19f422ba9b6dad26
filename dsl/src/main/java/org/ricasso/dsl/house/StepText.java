package org.ricasso.dsl.house;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Damage;
import org.ricasso.dsl.syntax.Declaration.RouteDeclaration;
import org.ricasso.dsl.syntax.ParseResult;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.syntax.RouteItem;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** A step as text: as it would be written once more, and read as a route is read. */
public final class StepText {
    private static final int LONGEST_LINE = 110;
    private static final String INDENT = "    ";

    private StepText() {}

    /**
     * A step as it is written, with what it takes over, under another number.
     *
     * @param all whether settings are written that could be left out as well
     * @param measures whether what it measures and watches is written, too
     */
    public static String of(RouteStep step, int number, boolean all, boolean measures) {
        List<String> items = new ArrayList<>();
        List<Integer> settings = new ArrayList<>();
        for (int i = 0; i < step.places().length; i++) {
            EntryType type = step.operation().takes().get(i);
            if (step.places()[i] != null && (all || type.byDefault() == null && !type.optional())) {
                settings.add(i);
            }
        }
        settings.stream().sorted(Comparator.comparing(i -> step.places()[i])).forEach(i -> items.add(
                step.operation().takes().get(i).name() + ":"
                        + (step.solve(i) == null ? value(step.places()[i].text()) : " " + Shows.show(step.settings()[i]))));
        if (measures) {
            step.watches().forEach(w -> items.add(of(step.operation().takes().get(w.setting()).name(), w.places())));
            step.measures().forEach(m -> items.add(of(m)));
        }
        return of(number, step.operation(), step.centre(), items);
    }

    /** A grid begins on a line of its own. */
    private static String value(String text) {
        return (text.startsWith("|") ? "\n" : " ") + text;
    }

    /** A step of these settings and measurements. */
    public static String of(int number, Operation operation, Thing centre, List<String> items) {
        String head = number + " " + operation.name() + (centre == null ? "" : " at " + centre.name());
        return items.isEmpty() ? head : head + " " + block(items, head.length());
    }

    /** A measurement as it is written, with what it takes over. */
    public static String of(RouteStep.Measure measure) {
        return of(measure.property().name(), measure.places());
    }

    private static String of(String name, Map<String, Span> places) {
        List<String> entries = places.entrySet().stream().sorted(Map.Entry.<String, Span>comparingByValue()
                .thenComparing(Map.Entry.comparingByKey())).map(e -> e.getKey() + ": " + e.getValue().text()).toList();
        return name + " " + block(entries, name.length());
    }

    private static String block(List<String> items, int before) {
        String line = "{ " + String.join("; ", items) + " }";
        if (before + line.length() < LONGEST_LINE && !line.contains("\n")) {
            return line;
        }
        StringBuilder lines = new StringBuilder("{\n");
        items.forEach(item -> lines.append((INDENT + item).replace("\n", "\n" + INDENT)).append('\n'));
        return lines.append('}').toString();
    }

    /** The step that a text writes in a product's route, or null where it would be a finding. */
    public static RouteStep read(Vocabulary vocabulary, Thing product, String text) {
        ParseResult parsed = Parser.parse(new SourceFile("remedy", "route remedy {\n" + text + "\n}\n", false));
        if (!parsed.diagnostics().isEmpty() || !(parsed.tree().declarations().get(0) instanceof RouteDeclaration route)
                || route.items().size() != 1 || !(route.items().get(0) instanceof RouteItem.Own own)) {
            return null;
        }
        Findings findings = new Findings();
        List<RouteStep> steps = new RouteReader(vocabulary, findings, product, Damage.of(List.of(parsed)), false)
                .read(List.of(new ResolvedStep(own.step(), null)), null);
        return findings.isEmpty() && steps.size() == 1 && steps.get(0).operation() != null ? steps.get(0) : null;
    }
}
