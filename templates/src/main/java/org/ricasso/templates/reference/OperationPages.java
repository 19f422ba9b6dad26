package org.ricasso.templates.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Declaration.Effect;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** A page for each operation, and their list. */
final class OperationPages {
    private static final int LONGEST_STEP = 40;
    private final House house;
    private final Vocabulary vocabulary;
    private final ReferenceRenderer.Pages pages;

    OperationPages(House house, ReferenceRenderer.Pages pages) {
        this.house = house;
        this.vocabulary = house.vocabulary();
        this.pages = pages;
    }

    void write() {
        for (Operation operation : vocabulary.operations()) {
            pages.page("operations/" + Index.file(operation.name()) + ".html", operation.title(), "Operation " + operation.name(),
                    sheet -> operation(sheet, operation));
        }
        pages.page("operations/index.html", "Operations", "What can be done to the piece", sheet -> {
            sheet.html.table("All operations", "Operation", "Title", "Purpose");
            for (Operation operation : vocabulary.operations()) {
                sheet.html.raw("<tr><th scope=\"row\">");
                sheet.link("operation", operation.name());
                sheet.html.raw("</th><td>").text(operation.title()).raw("</td><td>").text(operation.purpose()).raw("</td></tr>\n");
            }
            sheet.html.endTable();
        });
    }

    private void operation(Sheet sheet, Operation operation) {
        Declaration.OperationDeclaration text = vocabulary.operationText(operation.name());
        sheet.html.raw("<p class=\"purpose\">").text(operation.purpose()).raw("</p>\n").section("What it is", "s-is");
        sheet.facts();
        if (!operation.at().isEmpty()) {
            sheet.fact("Runs at", () -> sheet.value(new Value.Several(operation.at().stream().map(t -> (Value) new Value.Ref(t)).toList())));
        }
        sheet.fact("Works", () -> {
            if (operation.works() == null) {
                sheet.html.text("the whole piece");
            } else {
                sheet.link("part", operation.works(), vocabulary.partTitle(operation.works()));
            }
        });
        sheet.links("Joins", "part", List.copyOf(operation.joins()));
        sheet.links("Disturbs", "property", paths(operation.disturbs()));
        sheet.links("Measures", "property", paths(operation.measures()));
        operation.attributes().forEach((name, value) -> {
            if (!(value instanceof Value.Absent) && !(value instanceof Value.Words words && words.words().equals(List.of("no")))) {
                sheet.fact(
                        name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1).replace('-', ' '), () -> sheet.value(value));
            }
        });
        for (Declaration.ValueEntry entry : text.time()) {
            sheet.fact("Time, " + entry.name().text(), entry.value().span());
        }
        sheet.from(operation.span(), vocabulary.replaced("operation", operation.name())).endFacts();
        sheet.html.endSection();
        if (!operation.takes().isEmpty()) {
            sheet.html.section("Takes", "s-takes");
            sheet.entries("Settings of a step", "takes.", operation.takes());
            sheet.html.endSection();
        }
        needsAndLeaves(sheet, operation, text);
        if (!text.instruct().isEmpty()) {
            sheet.html.section("Work", "s-work").raw("<ol>\n");
            text.instruct().forEach(line -> sheet.html.raw("<li>").text(line.written()).raw("</li>\n"));
            sheet.html.raw("</ol>\n").endSection();
        }
        List<String> rules = vocabulary.rulesAt(operation).stream().map(judged -> judged.rule().name()).toList();
        if (!rules.isEmpty()) {
            sheet.html.section("Rules", "s-rules");
            sheet.facts().links("Judged at it", "rule", rules).endFacts();
            sheet.html.endSection();
        }
        sheet.html.section("In a route", "s-example");
        example(sheet, operation);
        sheet.html.endSection();
    }

    private void needsAndLeaves(Sheet sheet, Operation operation, Declaration.OperationDeclaration text) {
        if (!operation.needs().isEmpty()) {
            sheet.html.section("Needs", "s-needs").table("The piece as it arrives", "Property", "Is", "Otherwise");
            operation.needs().forEach(need -> {
                sheet.html.raw("<tr><th scope=\"row\">");
                sheet.link("property", need.property().path());
                sheet.html.raw("</th><td>");
                sheet.code(need.condition().span());
                sheet.html.raw("</td><td>").text(need.complaint()).raw("</td></tr>\n");
            });
            sheet.html.endTable().endSection();
        }
        if (!text.leaves().isEmpty()) {
            sheet.html.section("Leaves", "s-leaves").table("The piece as it is handed on; all reads the state before", "Property", "Becomes");
            for (Effect effect : text.leaves()) {
                sheet.html.raw("<tr><th scope=\"row\">");
                if (effect instanceof Effect.Let let) {
                    sheet.html.text("let ").code(let.name().text()).raw("</th><td>");
                    sheet.code(let.value().span());
                } else if (effect instanceof Effect.Leave leave) {
                    var property = vocabulary.propertyFor(operation.works(), leave.path().text());
                    sheet.link("property", property == null ? "" : property.path(), leave.path().text());
                    sheet.html.raw("</th><td>");
                    sheet.code(leave.value().span());
                }
                sheet.html.raw("</td></tr>\n");
            }
            sheet.html.endTable().endSection();
        }
    }

    private List<String> paths(Set<Integer> slots) {
        return slots.stream().sorted().map(s -> vocabulary.properties().get(s).path()).toList();
    }

    /** A step of the house that runs it; else the form of a step. */
    private void example(Sheet sheet, Operation operation) {
        for (Map.Entry<Thing, org.ricasso.dsl.house.Route> route : house.routes().entrySet()) {
            for (RouteStep step : route.getValue().all()) {
                if (step.operation() == operation) {
                    sheet.html.paragraph("A step of " + route.getKey().title() + ":");
                    sheet.block(written(step.numbered()));
                    return;
                }
            }
        }
        List<String> settings = new ArrayList<>();
        operation.takes().stream().filter(t -> !t.optional() && t.byDefault() == null).forEach(t -> settings.add(t.name() + ": …"));
        sheet.html.paragraph("No route of this house runs it. A step of it has this form:");
        sheet.block("100 " + operation.name() + (operation.at().isEmpty() ? "" : " at …")
                + (settings.isEmpty() ? "" : " { " + String.join("; ", settings) + " }"));
    }

    /** The lines of a step up to the brace that closes it, without their common indentation. */
    private static String written(Span head) {
        SourceFile file = head.file();
        StringBuilder result = new StringBuilder();
        int open = 0;
        int line = head.line();
        do {
            String text = file.lineText(line);
            result.append(text).append('\n');
            open += (int) (text.chars().filter(c -> c == '{').count() - text.chars().filter(c -> c == '}').count());
            line++;
        } while (open > 0 && line <= file.lineCount() && line < head.line() + LONGEST_STEP);
        return result.toString().stripIndent();
    }
}
