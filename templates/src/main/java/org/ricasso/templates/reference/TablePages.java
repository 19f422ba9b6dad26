package org.ricasso.templates.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ricasso.dsl.evaluate.Table;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;

/** Pages of tables with their rows, and of calculations. */
final class TablePages {
    private final Vocabulary vocabulary;
    private final ReferenceRenderer.Pages pages;

    TablePages(Vocabulary vocabulary, ReferenceRenderer.Pages pages) {
        this.vocabulary = vocabulary;
        this.pages = pages;
    }

    void write() {
        for (String name : vocabulary.tableNames()) {
            Table table = vocabulary.table(name);
            pages.page("tables/" + Index.file(name) + ".html", table.title(), "Table " + name, sheet -> table(sheet, table));
        }
        pages.page("tables/index.html", "Tables", "What is looked up", sheet -> {
            sheet.html.table("All tables", "Table", "Title", "Rows");
            for (String name : vocabulary.tableNames()) {
                sheet.html.raw("<tr><th scope=\"row\">");
                sheet.link("table", name);
                sheet.html.raw("</th><td>").text(vocabulary.table(name).title()).raw("</td><td>")
                        .text(String.valueOf(vocabulary.table(name).rows().size())).raw("</td></tr>\n");
            }
            sheet.html.endTable();
        });
        pages.page("calculations.html", "Calculations", "Formulas that texts call by name", sheet -> vocabulary.calculationNames()
                .forEach(name -> calculation(sheet, vocabulary.calculation(name))));
    }

    private void table(Sheet sheet, Table table) {
        sheet.html.section("Table", "s-table");
        sheet.facts().fact("Source", table.source());
        List<Declaration.ValueEntry> expected = vocabulary.tableText(table.name()).entries().stream()
                .filter(entry -> entry.name().text().equals("expect")).toList();
        if (!expected.isEmpty()) {
            sheet.fact("Expected", () -> expected.forEach(entry -> {
                sheet.html.raw("<span class=\"line\">");
                sheet.code(entry.value().span());
                sheet.html.raw("</span>");
            }));
        }
        callers(sheet, table.name());
        sheet.from(table.span(), vocabulary.replaced("table", table.name())).endFacts();
        sheet.html.endSection().section("Columns", "s-columns").table("Columns", "Column", "Is", "For");
        for (Table.Column column : table.columns()) {
            sheet.html.raw("<tr><th scope=\"row\">").code(column.name()).raw("</th><td>");
            sheet.type(column.type());
            sheet.html.raw("</td><td>").text(switch (column.role()) {
                case KEY -> "key";
                case HOLDS -> "key, the row's range holds what is asked";
                case BETWEEN -> "key, also between rows, never beyond the last";
                case FOUND -> "found";
            }).raw("</td></tr>\n");
        }
        sheet.html.endTable().endSection().section("Rows", "s-rows");
        List<String> heads = new ArrayList<>(table.columns().stream().map(Table.Column::name).toList());
        heads.add("written in");
        sheet.html.table(table.rows().size() + " rows", heads.toArray(String[]::new));
        for (Table.Row row : table.rows()) {
            sheet.html.raw("<tr>");
            for (int i = 0; i < table.columns().size(); i++) {
                sheet.html.raw("<td>");
                if (row.cells()[i] != null) {
                    sheet.value(row.cells()[i]);
                }
                sheet.html.raw("</td>");
            }
            sheet.html.raw("<td>").text(row.place() + (row.layer() == Table.Layer.TABLE ? "" : ", asked first")).raw("</td></tr>\n");
        }
        sheet.html.endTable().endSection();
    }

    private void calculation(Sheet sheet, Calculation calculation) {
        sheet.html.section(calculation.name(), Index.id(calculation.name())).paragraph(calculation.title())
                .table("Takes", "Argument", "Is", "Within", "The result");
        for (Calculation.Argument argument : calculation.arguments()) {
            Quantity like = Quantity.of(argument.measure(), 0, vocabulary.units().shownFor(argument.measure().dimension()));
            sheet.html.raw("<tr><th scope=\"row\">").code(argument.name()).raw("</th><td>");
            sheet.link("dimension", vocabulary.nameOf(argument.measure()));
            sheet.html.raw("</td><td>").text(QuantityFormat.band(like, new Interval(argument.least(), argument.most()))).raw("</td><td>")
                    .text(switch (argument.sense()) {
                        case RISES -> "rises with it";
                        case FALLS -> "falls with it";
                        case NEITHER -> "may do either";
                    }).raw("</td></tr>\n");
        }
        sheet.html.endTable();
        sheet.facts().fact("Gives", () -> sheet.link("dimension", vocabulary.nameOf(calculation.result())))
                .fact("Source", calculation.source());
        callers(sheet, calculation.name());
        sheet.endFacts();
        sheet.html.endSection();
    }

    private void callers(Sheet sheet, String name) {
        Pattern call = Pattern.compile("(?<![\\p{L}\\p{N}.-])" + Pattern.quote(name) + "\\(");
        sheet.links("Called by operations", "operation", vocabulary.operations().stream().map(Operation::name)
                .filter(o -> spans(vocabulary.operationText(o)).anyMatch(s -> call.matcher(s.text()).find())).toList());
        sheet.links("Called by rules", "rule", vocabulary.rules().stream()
                .filter(r -> spans(r.syntax()).anyMatch(s -> call.matcher(s.text()).find())).map(Rule::name).toList());
    }

    private static Stream<Span> spans(Declaration.OperationDeclaration text) {
        return Stream.of(text.leaves().stream().map(Declaration.Effect::span), text.needs().stream().map(Declaration.Need::span),
                text.takes().stream().map(t -> t.span()), text.time().stream().map(Declaration.ValueEntry::span)).flatMap(s -> s);
    }

    private static Stream<Span> spans(Declaration.RuleDeclaration text) {
        return Stream.of(text.lets().stream().map(Declaration.Effect::span), text.entries().stream().map(Declaration.ValueEntry::span),
                text.remedy().stream().map(Declaration.ValueEntry::span)).flatMap(s -> s);
    }
}
