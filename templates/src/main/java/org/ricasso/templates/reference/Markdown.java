package org.ricasso.templates.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.text.TextContentRenderer;

/** Texts in Markdown as HTML, parted at their headings. Markup in a text is shown as it stands there. */
final class Markdown {
    private static final List<TablesExtension> EXTENSIONS = List.of((TablesExtension) TablesExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();
    private static final HtmlRenderer HTML = HtmlRenderer.builder().extensions(EXTENSIONS).escapeHtml(true).sanitizeUrls(true).build();
    private static final TextContentRenderer TEXT = TextContentRenderer.builder().build();

    private Markdown() {}

    /** What stands under one heading of the second level; the first one is what stands before any. */
    record Section(String title, String id, String html) {}

    static List<Section> sections(String text) {
        Node document = PARSER.parse(text);
        List<Section> sections = new ArrayList<>();
        String title = "";
        Document body = new Document();
        for (Node node = document.getFirstChild(); node != null; ) {
            Node next = node.getNext();
            if (node instanceof Heading heading && heading.getLevel() <= 2) {
                sections.add(section(title, body));
                body = new Document();
                title = heading.getLevel() == 1 ? "" : TEXT.render(heading).strip();
            } else {
                body.appendChild(node);
            }
            node = next;
        }
        sections.add(section(title, body));
        sections.removeIf(section -> section.title().isEmpty() && section.html().isEmpty());
        return sections;
    }

    private static Section section(String title, Document body) {
        return new Section(title, id(title), HTML.render(body).replace("<table>", "<div class=\"wide\"><table class=\"grid\">")
                .replace("</table>", "</table></div>"));
    }

    private static String id(String title) {
        return title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }
}
