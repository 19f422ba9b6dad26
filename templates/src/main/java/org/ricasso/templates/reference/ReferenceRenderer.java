package org.ricasso.templates.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.catalogue.Catalogue;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.templates.page.PageSet;

/**
 * Renders the reference of a house: the language, all that its texts declare but its products, and all findings. The same
 * texts give the same bytes. Nothing is written: a whole set is handed out.
 */
public final class ReferenceRenderer {
    private static final String EXTRA = "reference.css";
    private final Vocabulary vocabulary;
    private final House house;
    private final Texts texts;
    private final String title;
    private final Index index = new Index();
    private final SortedMap<String, byte[]> files = new TreeMap<>();

    private ReferenceRenderer(House house, Texts texts, String title) {
        this.house = house;
        this.vocabulary = house.vocabulary();
        this.texts = texts;
        this.title = title;
    }

    /**
     * @param house a house as loaded
     * @param texts the texts it was loaded from, shipped ones too
     * @param title what the house is called on the pages
     */
    public static PageSet render(House house, Texts texts, String title) {
        return new ReferenceRenderer(house, texts, title).all();
    }

    private PageSet all() {
        Declared declared = Declared.of(texts);
        enter(declared);
        new KindPages(vocabulary, this::page).write(declared);
        new OperationPages(house, this::page).write();
        new RulePages(vocabulary, this::page).write();
        new TablePages(vocabulary, this::page).write();
        new FindingPages(this::page).write();
        page("language.html", "Language", "The forms of texts", this::language);
        page("index.html", "Reference", "All names", this::names);
        files.put("style.css", resource("/pages/style.css"));
        files.put(EXTRA, resource("/pages/" + EXTRA));
        files.put("search.js", resource("/pages/search.js"));
        return new PageSet(files);
    }

    /** Writes a page by its path. */
    interface Pages {
        void page(String path, String title, String what, Consumer<Sheet> content);
    }

    private void page(String path, String heading, String what, Consumer<Sheet> content) {
        Sheet sheet = new Sheet(vocabulary, index, path, title, heading, what);
        content.accept(sheet);
        files.put(path, sheet.closed().getBytes(StandardCharsets.UTF_8));
    }

    /** All names have their places before the first page links to one. */
    private void enter(Declared declared) {
        vocabulary.operations().forEach(o -> index.add("operation", o.name(), o.title(), "operations/" + Index.file(o.name()) + ".html"));
        vocabulary.rules().forEach(r -> index.add("rule", r.name(), r.title(), "rules/" + Index.file(r.name()) + ".html"));
        vocabulary.tableNames().forEach(t -> index.add("table", t, vocabulary.table(t).title(), "tables/" + Index.file(t) + ".html"));
        vocabulary.calculationNames().forEach(c -> index.add("calculation", c, vocabulary.calculation(c).title(),
                "calculations.html#" + Index.id(c)));
        for (String kind : vocabulary.kindNames()) {
            String file = "kinds/" + Index.file(kind) + ".html";
            var head = vocabulary.kind(kind).head();
            index.add("kind", kind, head.title() == null ? "" : head.title().written(), file);
            if (!kind.equals(vocabulary.productKind())) {
                vocabulary.things(kind).forEach(t -> index.add(kind, t.name(), t.title(), file + "#" + Index.id(t.name())));
            }
        }
        vocabulary.parts().forEach(p -> index.add("part", p, vocabulary.partTitle(p), "workpiece.html#" + Index.id(p)));
        vocabulary.properties().forEach(p -> index.add("property", p.path(), "", "workpiece.html#" + Index.id(p.path())));
        declared.all().forEach(d -> index.add(d.kind().text(), d.head().name().text(),
                d.head().title() == null ? "" : d.head().title().written(), "units.html#" + Index.id(Declared.key(d))));
        Catalogue.shipped().entries().forEach(e -> index.add("finding", e.name(), e.title(),
                "findings/" + e.theme() + ".html#" + Index.id(e.name())));
    }

    private void language(Sheet sheet) {
        List<Markdown.Section> sections = Markdown.sections(new String(resource(Ricasso.class, "LANGUAGE.md"), StandardCharsets.UTF_8));
        sheet.html.raw("<nav class=\"ways\" aria-label=\"On this page\">");
        sections.stream().filter(s -> !s.title().isEmpty()).forEach(s -> sheet.html.link("#" + s.id(), s.title()).raw("\n"));
        sheet.html.raw("</nav>\n");
        markdown(sheet.html, sections);
    }

    static void markdown(Html html, List<Markdown.Section> sections) {
        for (Markdown.Section section : sections) {
            if (section.title().isEmpty()) {
                html.raw("<div class=\"body lead\">\n").raw(section.html()).raw("</div>\n");
            } else {
                html.section(section.title(), section.id()).raw(section.html()).endSection();
            }
        }
    }

    /** The whole index is on the page; the script only hides what is not searched for. */
    private void names(Sheet sheet) {
        List<Index.Entry> entries = index.entries();
        sheet.html.raw("<p class=\"search\" hidden><label>Find a name or word <input type=\"search\" autocomplete=\"off\"></label>"
                + " <output></output></p>\n");
        sheet.html.raw("<p>" + entries.size() + " names</p>\n<table class=\"entries\"><caption>All names</caption>\n<thead><tr><th scope=\"col\">Name</th>"
                + "<th scope=\"col\">What</th><th scope=\"col\">Title</th></tr></thead>\n<tbody>\n");
        for (Index.Entry entry : entries) {
            sheet.html.raw("<tr><th scope=\"row\">").link(entry.href(), entry.name()).raw("</th><td>").text(entry.what())
                    .raw("</td><td>").text(entry.title()).raw("</td></tr>\n");
        }
        sheet.html.raw("</tbody></table>\n<script src=\"search.js\" defer></script>\n");
    }

    private static byte[] resource(String path) {
        return resource(ReferenceRenderer.class, path);
    }

    private static byte[] resource(Class<?> beside, String path) {
        try (InputStream in = beside.getResourceAsStream(path)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
