package org.ricasso.templates.reference;

import org.ricasso.dsl.catalogue.Catalogue;
import org.ricasso.dsl.catalogue.CatalogueEntry;

/** Pages of the catalogue of findings, one a theme, with the guideline and the house that its examples stand in. */
final class FindingPages {
    private final ReferenceRenderer.Pages pages;

    FindingPages(ReferenceRenderer.Pages pages) {
        this.pages = pages;
    }

    void write() {
        for (Catalogue.Theme theme : Catalogue.shipped().themes()) {
            pages.page("findings/" + theme.name() + ".html", theme.title(), "Findings", sheet -> {
                theme.meaning().forEach(sheet.html::paragraph);
                theme.entries().forEach(entry -> entry(sheet, entry));
            });
        }
        pages.page("findings/index.html", "Findings", "What the check says, and what to do", sheet -> {
            sheet.html.paragraph("A finding of a rule has the rule's name and stands with the rule.");
            sheet.html.raw("<p><a href=\"guideline.html\">How findings are written, and the house of the examples</a></p>\n");
            for (Catalogue.Theme theme : Catalogue.shipped().themes()) {
                sheet.html.section(theme.title(), theme.name()).table(theme.title(), "Finding", "Is", "Says that");
                theme.entries().forEach(entry -> {
                    sheet.html.raw("<tr><th scope=\"row\">");
                    sheet.link("finding", entry.name());
                    sheet.html.raw("</th><td>").text(entry.severity().word()).raw("</td><td>").text(entry.title()).raw("</td></tr>\n");
                });
                sheet.html.endTable().endSection();
            }
        });
        pages.page("findings/guideline.html", "How findings are written", "Findings", sheet -> {
            ReferenceRenderer.markdown(sheet.html, Markdown.sections(Catalogue.guideline()));
            sheet.html.section("The little house", "s-house").paragraph("What an example declares stands in the place of what is declared here.");
            sheet.block(Catalogue.littleHouse());
            sheet.html.endSection();
        });
    }

    private static void entry(Sheet sheet, CatalogueEntry entry) {
        sheet.html.section(entry.name(), Index.id(entry.name())).raw("<p><span class=\"severity\">").text(entry.severity().word())
                .raw("</span> ").text(entry.title() + ".").raw("</p>\n");
        entry.meaning().forEach(sheet.html::paragraph);
        sheet.html.raw("<p><strong>Remedy.</strong> ").marked(entry.remedy()).raw("</p>\n");
        if (entry.hasExample()) {
            sheet.html.raw("<p>In <a href=\"guideline.html#s-house\">the little house</a> these lines give it:</p>\n");
            sheet.block(entry.gives());
            entry.files().keySet().stream().sorted().forEach(name -> {
                sheet.html.raw("<p>With the file ").code(name).raw(":</p>\n");
                sheet.block(entry.files().get(name));
            });
            sheet.html.raw("<p>What is printed:</p>\n<pre><code>").text(entry.prints().stripTrailing()).raw("</code></pre>\n");
        }
        if (!entry.mended().isEmpty()) {
            sheet.html.raw("<p>Mended:</p>\n");
            sheet.block(entry.mended());
        }
        sheet.html.endSection();
    }
}
