package org.ricasso.templates.reference;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.quantity.QuantityFormat;

/** One page while it is written: its frame, and values, types and expressions with links to what they name. */
final class Sheet {
    private static final Pattern NAME = Pattern.compile("\"(?:[^\"\\\\\\n]|\\\\.)*\"|[\\p{L}][\\p{L}\\p{N}-]*(?:\\.[\\p{L}][\\p{L}\\p{N}-]*)*");
    private final Vocabulary vocabulary;
    private final Index index;
    private final String up;
    final Html html = new Html();

    /** @param path the page's path in the set */
    Sheet(Vocabulary vocabulary, Index index, String path, String house, String title, String what) {
        this.vocabulary = vocabulary;
        this.index = index;
        this.up = "../".repeat((int) path.chars().filter(c -> c == '/').count());
        html.raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width,"
                + " initial-scale=1\">\n<meta name=\"color-scheme\" content=\"light dark\">\n<title>").text(title + " – " + what)
                .raw("</title>\n<link rel=\"icon\" href=\"data:,\">\n<link rel=\"stylesheet\" href=\"" + up + "style.css\">\n"
                + "<link rel=\"stylesheet\" href=\"" + up + "reference.css\">\n</head>\n<body class=\"reference\">\n"
                + "<a class=\"skip\" href=\"#main\">Skip to the content</a>\n<header>\n<nav class=\"way\" aria-label=\"The reference\">\n");
        for (String[] way : new String[][] {{"index.html", "Index"}, {"language.html", "Language"}, {"operations/index.html", "Operations"},
            {"rules/index.html", "Rules"}, {"tables/index.html", "Tables"}, {"calculations.html", "Calculations"},
            {"kinds/index.html", "Kinds"}, {"workpiece.html", "Workpiece"}, {"units.html", "Units"}, {"findings/index.html", "Findings"}}) {
            html.link(up + way[0], way[1]).raw("\n");
        }
        html.raw("</nav>\n<h1>").text(title).raw("</h1>\n<p class=\"model-title\">").text(what)
                .raw(house.isEmpty() ? "" : " – ").text(house).raw("</p>\n</header>\n<main id=\"main\">\n");
    }

    /** The whole page. */
    String closed() {
        return html.raw("</main>\n<footer><p>Made from the texts themselves. Where work can hurt somebody, local codes, the machine's"
                + " manual and licensed practice stand before what is written here.</p></footer>\n</body>\n</html>\n").toString();
    }

    Sheet link(String what, String name) {
        return link(what, name, name);
    }

    Sheet link(String what, String name, String shown) {
        String place = index.place(what, name);
        html.link(place.isEmpty() ? "" : up + place, shown);
        return this;
    }

    /** A fact: what it is and its value, written by the caller. */
    Sheet fact(String label, Runnable value) {
        html.raw("<div><dt>").text(label).raw("</dt><dd>");
        value.run();
        html.raw("</dd></div>\n");
        return this;
    }

    /** A fact in plain words; nothing where there are none. */
    Sheet fact(String label, String text) {
        return text == null || text.isEmpty() ? this : fact(label, () -> html.marked(text));
    }

    Sheet fact(String label, Span expression) {
        return expression == null ? this : fact(label, () -> code(expression));
    }

    Sheet links(String label, String what, List<String> names) {
        return names.isEmpty() ? this : fact(label, () -> {
            for (int i = 0; i < names.size(); i++) {
                html.raw(i == 0 ? "" : ", ");
                link(what, names.get(i));
            }
        });
    }

    Sheet facts() {
        html.raw("<dl class=\"pairs\">\n");
        return this;
    }

    Sheet endFacts() {
        html.raw("</dl>\n");
        return this;
    }

    /** Where something is declared, and what it stands in place of. */
    Sheet from(Span span, Span replaced) {
        String name = span.file().name();
        String whose = !span.file().shipped() ? "the works' own" : name.startsWith("ricasso/") ? "shipped" : "of a library";
        return fact("Written in", name + ", line " + span.line() + ", " + whose
                + (replaced == null ? "" : "; in place of " + replaced.file().name() + ", line " + replaced.line()));
    }

    /** What is written at a place, on one line, with links to tables, calculations and properties. */
    Sheet code(Span span) {
        return code(span.text().strip().replaceAll("\\s*\\R\\s*", " "));
    }

    Sheet code(String text) {
        html.raw("<code>");
        linked(text);
        html.raw("</code>");
        return this;
    }

    /** Several lines as they are written. */
    Sheet block(String text) {
        html.raw("<pre><code>");
        linked(text.stripTrailing());
        html.raw("</code></pre>\n");
        return this;
    }

    private void linked(String text) {
        Matcher matcher = NAME.matcher(text);
        int done = 0;
        while (matcher.find()) {
            html.text(text.substring(done, matcher.start()));
            String name = matcher.group();
            html.link(place(name, matcher.end() < text.length() && text.charAt(matcher.end()) == '('), name);
            done = matcher.end();
        }
        html.text(text.substring(done));
    }

    private String place(String name, boolean called) {
        String place;
        if (called) {
            place = index.place("table", name);
            place = place.isEmpty() ? index.place("calculation", name) : place;
        } else {
            place = name.contains(".") ? index.place("property", name.replaceFirst("^(before|after)\\.", "")) : "";
        }
        return place.isEmpty() ? "" : up + place;
    }

    /** A type in words, with links to kinds and dimensions. */
    Sheet type(Type type) {
        if (type instanceof Type.ThingOf of) {
            return link("kind", of.kind());
        }
        if (type instanceof Type.ListOf list) {
            html.text("list of ");
            return type(list.element());
        }
        if (type instanceof Type.Measured measured) {
            return link("dimension", measured.name());
        }
        if (type instanceof Type.AlongAxis along) {
            type(along.element());
            html.text(" along " + along.axis().name());
            return this;
        }
        html.text(Type.describe(type).replaceFirst("^an? ", ""));
        return this;
    }

    /** Entries of a kind or settings of an operation. */
    Sheet entries(String caption, String prefix, Iterable<EntryType> entries) {
        html.table(caption, "Name", "Is", "Marks");
        for (EntryType entry : entries) {
            html.raw("<tr id=\"").text(Index.id(prefix + entry.name())).raw("\"><th scope=\"row\">").code(entry.name()).raw("</th><td>");
            type(entry.type());
            html.raw("</td><td>");
            if (entry.within() != null) {
                html.text("within " + QuantityFormat.show(entry.within()) + " ");
            }
            if (entry.usual() != null) {
                html.text("usually " + QuantityFormat.show(entry.usual()) + " ");
            }
            if (entry.byDefault() != null) {
                html.text("default ");
                code(entry.byDefault().span());
                html.text(" ");
            } else if (entry.optional()) {
                html.text("optional ");
            }
            html.text(entry.sized() ? "sized " : "");
            if (entry.madeAs() != null) {
                html.text("made as ");
                link("property", entry.madeAs());
            }
            html.raw("</td></tr>\n");
        }
        html.endTable();
        return this;
    }

    Sheet value(Value value) {
        if (value instanceof Value.Ref ref) {
            return link(ref.thing().kind(), ref.thing().name(), titled(ref.thing()));
        }
        if (value instanceof Value.Several several) {
            for (int i = 0; i < several.values().size(); i++) {
                html.raw(i == 0 ? "" : ", ");
                value(several.values().get(i));
            }
            return this;
        }
        html.text(Shows.show(value));
        return this;
    }

    private static String titled(Thing thing) {
        return thing.title().contains(thing.name()) ? thing.title() : thing.name() + " " + thing.title();
    }

    /** The entries of a thing as facts, blocks by path. */
    Sheet values(Map<String, Value> entries, String prefix) {
        entries.forEach((name, value) -> {
            if (value instanceof Value.Entries block) {
                values(block.entries(), prefix + name + ".");
            } else if (!(value instanceof Value.Absent)) {
                fact(prefix + name, () -> value(value));
            }
        });
        return this;
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }
}
