package org.ricasso.templates.reference;

import java.util.Locale;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** A page for each rule with its examples, and their list. */
final class RulePages {
    private final Vocabulary vocabulary;
    private final ReferenceRenderer.Pages pages;

    RulePages(Vocabulary vocabulary, ReferenceRenderer.Pages pages) {
        this.vocabulary = vocabulary;
        this.pages = pages;
    }

    void write() {
        for (Rule rule : vocabulary.rules()) {
            pages.page("rules/" + Index.file(rule.name()) + ".html", rule.title(), "Rule " + rule.name(), sheet -> rule(sheet, rule));
        }
        pages.page("rules/index.html", "Rules", "What every route and product is held to", sheet -> {
            sheet.html.table("All rules", "Rule", "Title", "For", "Level");
            for (Rule rule : vocabulary.rules()) {
                sheet.html.raw("<tr><th scope=\"row\">");
                sheet.link("rule", rule.name());
                sheet.html.raw("</th><td>").text(rule.title()).raw("</td><td>");
                subject(sheet, rule);
                sheet.html.raw("</td><td>").text(level(rule)).raw("</td></tr>\n");
            }
            sheet.html.endTable();
        });
    }

    private static String level(Rule rule) {
        return rule.level().name().toLowerCase(Locale.ROOT);
    }

    private static void subject(Sheet sheet, Rule rule) {
        switch (rule.subject()) {
            case OPERATION -> sheet.link("operation", rule.subjectName());
            case KIND, PRODUCT, MEASUREMENT -> sheet.link("kind", rule.subjectName());
            case STEP -> sheet.html.text("every step");
        }
    }

    private void rule(Sheet sheet, Rule rule) {
        Declaration.RuleDeclaration text = rule.syntax();
        sheet.html.raw("<p class=\"purpose\">").text(rule.because()).raw("</p>\n").section("Rule", "s-rule");
        sheet.facts().fact("For", () -> subject(sheet, rule)).fact("Level", level(rule)
                + (rule.level() == Rule.Level.SAFETY ? "; judged with all scatter" : ""));
        for (Declaration.ValueEntry entry : text.entries()) {
            String name = entry.name().text();
            if (name.equals("require")) {
                text.lets().forEach(let -> sheet.fact("let " + let.name().text(), let.value().span()));
            }
            switch (name) {
                case "when", "require", "mark" -> sheet.fact(name, entry.value().span());
                case "say" -> sheet.fact("Says", entry.value() instanceof Expression.TextLiteral say ? say.text().written() : "");
                default -> { }
            }
        }
        text.remedy().forEach(entry -> sheet.fact("Remedy, " + entry.name().text(), entry.value().span()));
        sheet.fact("Because", rule.because()).fact("Source", rule.source());
        sheet.from(text.head().name().span(), vocabulary.replaced("rule", rule.name())).endFacts();
        sheet.html.endSection();
        for (Declaration.Example example : text.examples()) {
            sheet.html.section("Example that " + example.outcome().text(), "example-" + text.examples().indexOf(example))
                    .table("What the example binds", "Path", "Value");
            example.bindings().forEach(bound -> {
                sheet.html.raw("<tr><th scope=\"row\">");
                sheet.code(bound.path().text());
                sheet.html.raw("</th><td>");
                sheet.code(bound.value().span());
                sheet.html.raw("</td></tr>\n");
            });
            sheet.html.endTable().endSection();
        }
    }
}
