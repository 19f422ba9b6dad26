package org.ricasso.templates.reference;

import java.util.List;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Declaration.ThingDeclaration;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** Pages of kinds with their things, of the workpiece, and of units. */
final class KindPages {
    private final Vocabulary vocabulary;
    private final ReferenceRenderer.Pages pages;

    KindPages(Vocabulary vocabulary, ReferenceRenderer.Pages pages) {
        this.vocabulary = vocabulary;
        this.pages = pages;
    }

    void write(Declared declared) {
        for (String kind : vocabulary.kindNames()) {
            var title = vocabulary.kind(kind).head().title();
            pages.page("kinds/" + Index.file(kind) + ".html", title == null ? kind : title.written(), "Kind " + kind, s -> kind(s, kind));
        }
        pages.page("kinds/index.html", "Kinds", "What things are, and the things", this::list);
        pages.page("workpiece.html", "Workpiece", "What is carried through a route", this::workpiece);
        pages.page("units.html", "Units", "Units, dimensions and axes", sheet -> units(sheet, declared));
    }

    private void list(Sheet sheet) {
        sheet.html.table("All kinds", "Kind", "Title", "Things");
        for (String kind : vocabulary.kindNames()) {
            var title = vocabulary.kind(kind).head().title();
            sheet.html.raw("<tr><th scope=\"row\">");
            sheet.link("kind", kind);
            sheet.html.raw("</th><td>").text(title == null ? "" : title.written()).raw("</td><td>")
                    .text(kind.equals(vocabulary.productKind()) ? "the products" : String.valueOf(vocabulary.things(kind).size()))
                    .raw("</td></tr>\n");
        }
        sheet.html.endTable();
    }

    private void kind(Sheet sheet, String kind) {
        sheet.html.section("Entries", "s-entries");
        sheet.facts().from(vocabulary.kind(kind).head().name().span(), vocabulary.replaced("kind", kind)).endFacts();
        if (vocabulary.entries(kind).isEmpty()) {
            sheet.html.paragraph("Its things have a name and a title, and nothing else.");
        } else {
            sheet.entries("Entries of kind " + kind, "entry.", vocabulary.entries(kind).values());
        }
        sheet.html.endSection();
        if (kind.equals(vocabulary.productKind())) {
            sheet.html.section("Things", "s-things").paragraph("These are the products. They have pages of their own.").endSection();
            return;
        }
        vocabulary.things(kind).forEach(thing -> {
            sheet.html.section(thing.title().contains(thing.name()) ? thing.title() : thing.name() + " – " + thing.title(), Index.id(thing.name()));
            sheet.facts().fact("Name", () -> sheet.html.code(thing.name()));
            sheet.values(thing.entries(), "").from(thing.span(), thing.replaced()).endFacts();
            sheet.html.endSection();
        });
    }

    private void workpiece(Sheet sheet) {
        part(sheet, null);
        vocabulary.parts().forEach(part -> part(sheet, part));
    }

    private void part(Sheet sheet, String part) {
        List<Property> own = vocabulary.properties().stream()
                .filter(p -> part == null ? p.part() == null : part.equals(p.part())).toList();
        sheet.html.section(part == null ? "Whole piece" : vocabulary.partTitle(part), part == null ? "s-whole" : Index.id(part));
        for (Property property : own) {
            sheet.html.raw("<h3 id=\"").text(Index.id(property.path())).raw("\">").text(property.path()).raw("</h3>\n");
            sheet.facts().fact("Is", () -> sheet.type(property.type()));
            if (property.starts() == null) {
                sheet.fact("Starts", "unknown, until a step leaves it");
            } else {
                sheet.fact("Starts", property.starts().span());
            }
            sheet.links("Left by", "operation", names(o -> o.leaves().stream().anyMatch(l -> l.property() == property)));
            sheet.links("Needed by", "operation", names(o -> o.needs().stream().anyMatch(n -> n.property() == property)));
            sheet.links("Measured by", "operation", names(o -> o.measures().contains(property.slot())));
            sheet.links("Disturbed by", "operation", names(o -> o.disturbs().contains(property.slot())));
            sheet.from(property.span(), null).endFacts();
        }
        sheet.html.endSection();
    }

    private List<String> names(java.util.function.Predicate<Operation> which) {
        return vocabulary.operations().stream().filter(which).map(Operation::name).toList();
    }

    private void units(Sheet sheet, Declared declared) {
        for (String kind : List.of("unit", "dimension", "axis")) {
            sheet.html.section(kind.equals("unit") ? "Units" : kind.equals("axis") ? "Axes" : "Dimensions", kind);
            if (kind.equals("unit")) {
                sheet.html.paragraph("Built in are `m kg s A K rad HRC HV HB`. A compound such as `N/mm²` or `g/cm^3` needs no declaration.");
            }
            sheet.html.table("Declared: " + kind, "Name", "Title", "Says", "Written in");
            for (ThingDeclaration one : declared.of(kind)) {
                sheet.html.raw("<tr id=\"").text(Index.id(Declared.key(one))).raw("\"><th scope=\"row\">").code(one.head().name().text())
                        .raw("</th><td>").text(one.head().title() == null ? "" : one.head().title().written()).raw("</td><td>");
                for (Block.Item item : one.block().items()) {
                    sheet.html.raw("<span class=\"line\">");
                    sheet.code(item.span());
                    sheet.html.raw("</span>");
                }
                sheet.html.raw("</td><td>").text(one.span().file().name() + ":" + one.span().line()).raw("</td></tr>\n");
            }
            sheet.html.endTable().endSection();
        }
    }
}
