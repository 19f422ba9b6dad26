package org.ricasso.dsl.diagnostics;

import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/**
 * A line of a file with a place to mark, as a console shows it.
 *
 * @param line the line's text, cut where it is long
 * @param padding blanks (and the line's own tabs) that lead from the line's beginning to the mark
 * @param width columns of the mark, at least one
 */
record Excerpt(String line, String padding, int width) {
    /** Longer lines are cut. */
    private static final int WIDEST = 120;
    /** Columns that stay before the mark in a line that is cut. */
    private static final int BEFORE = 50;

    static Excerpt of(Span span, Signs signs) {
        SourceFile file = span.file();
        int number = span.line();
        int lineStart = file.lineStart(number);
        String text = file.lineText(number);
        int from = Math.min(span.start() - lineStart, text.length());
        int to = Math.max(from, Math.min(span.end() - lineStart, text.length()));
        boolean cut = columns(text, 0, text.length(), signs) > WIDEST;
        int left = cut ? back(text, from, BEFORE, signs) : 0;
        int right = cut ? forward(text, left, WIDEST, signs) : text.length();
        to = Math.max(from, Math.min(to, right));
        String ellipsis = signs.show("…");
        StringBuilder padding = new StringBuilder(left > 0 ? " ".repeat(ellipsis.length()) : "");
        for (int i = left; i < from; ) {
            int c = text.codePointAt(i);
            padding.append(c == '\t' ? "\t" : " ".repeat(signs.width(c)));
            i += Character.charCount(c);
        }
        String line = (left > 0 ? ellipsis : "") + signs.show(text.substring(left, right))
                + (right < text.length() ? ellipsis : "");
        return new Excerpt(line.stripTrailing(), padding.toString(), Math.max(1, columns(text, from, to, signs)));
    }

    private static int columns(String text, int from, int to, Signs signs) {
        int result = 0;
        for (int i = from; i < to; ) {
            int c = text.codePointAt(i);
            result += c == '\t' ? 1 : signs.width(c);
            i += Character.charCount(c);
        }
        return result;
    }

    /** The offset some columns before another. */
    private static int back(String text, int from, int columns, Signs signs) {
        int left = columns;
        int i = from;
        while (i > 0 && left > 0) {
            int c = text.codePointBefore(i);
            left -= signs.width(c);
            i -= Character.charCount(c);
        }
        return i;
    }

    /** The offset some columns behind another. */
    private static int forward(String text, int from, int columns, Signs signs) {
        int left = columns;
        int i = from;
        while (i < text.length() && left > 0) {
            int c = text.codePointAt(i);
            left -= signs.width(c);
            i += Character.charCount(c);
        }
        return i;
    }
}
