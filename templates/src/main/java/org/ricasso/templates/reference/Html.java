package org.ricasso.templates.reference;

/** Writes HTML: every text is escaped on its way, and what a page cannot hold becomes U+FFFD. */
final class Html {
    private final StringBuilder out = new StringBuilder(8_192);

    /** Markup as it is: of this package's own or of the Markdown library, never of a text of the house. */
    Html raw(String markup) {
        out.append(markup);
        return this;
    }

    Html text(String text) {
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.appendCodePoint(isOdd(c) ? 0xFFFD : c);
            }
        });
        return this;
    }

    /** Control characters, halves of pairs, signs that turn the direction, and code points that stand for nothing. */
    private static boolean isOdd(int c) {
        return c < 0x20 && c != '\n' || c >= 0x7F && c <= 0x9F || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069
                || c >= 0xD800 && c <= 0xDFFF || c >= 0xFDD0 && c <= 0xFDEF || (c & 0xFFFE) == 0xFFFE;
    }

    Html code(String text) {
        return raw("<code>").text(text).raw("</code>");
    }

    Html link(String href, String text) {
        return href.isEmpty() ? text(text) : raw("<a href=\"").text(href).raw("\">").text(text).raw("</a>");
    }

    Html paragraph(String text) {
        return text.isEmpty() ? this : raw("<p>").marked(text).raw("</p>\n");
    }

    /** A text with names and signs in backquotes. */
    Html marked(String text) {
        String[] pieces = text.split("`", -1);
        for (int i = 0; i < pieces.length; i++) {
            if (i % 2 == 0 || i == pieces.length - 1) {
                text(i % 2 == 0 ? pieces[i] : "`" + pieces[i]);
            } else {
                code(pieces[i]);
            }
        }
        return this;
    }

    /** @param id the section's address, or empty */
    Html section(String title, String id) {
        raw("<section><h2");
        if (!id.isEmpty()) {
            raw(" id=\"").text(id).raw("\"");
        }
        return raw(">").text(title).raw("</h2>\n<div class=\"body\">\n");
    }

    Html endSection() {
        return raw("</div></section>\n");
    }

    /** A table with its head; rows follow. */
    Html table(String caption, String... columns) {
        raw("<div class=\"wide\"><table class=\"grid\"><caption>").text(caption).raw("</caption>\n<thead><tr>");
        for (String column : columns) {
            raw("<th scope=\"col\">").text(column).raw("</th>");
        }
        return raw("</tr></thead>\n<tbody>\n");
    }

    Html endTable() {
        return raw("</tbody></table></div>\n");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
