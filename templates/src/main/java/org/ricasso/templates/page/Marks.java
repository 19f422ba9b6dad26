package org.ricasso.templates.page;

/**
 * Marks inside texts of a page that are not in the page's language, so that they are never taken for its own: a text that
 * the language has no words for is <em>borrowed</em> from the texts' own language, and what is in that language in every
 * set, such as a finding, is a <em>quotation</em>. The marks are characters that Unicode keeps for such use.
 */
final class Marks {
    static final char BORROWED = '\uFDD0';
    static final char QUOTED = '\uFDD1';
    static final char END = '\uFDD2';

    private Marks() {}

    /** A text of the source language that stands in for one that the page's language lacks. */
    static String borrowed(String text) {
        return text.isEmpty() ? text : BORROWED + plain(text) + END;
    }

    /** A text that is in the source language wherever it stands. */
    static String quoted(String text) {
        return text.isEmpty() ? text : QUOTED + plain(text) + END;
    }

    static boolean isMark(char c) {
        return c >= BORROWED && c <= END;
    }

    static boolean has(String text) {
        return first(text, 0) < text.length();
    }

    static boolean hasBorrowed(CharSequence text) {
        return text.toString().indexOf(BORROWED) >= 0;
    }

    /** Where the next mark stands, or the text's length. */
    static int first(String text, int from) {
        int i = from;
        while (i < text.length() && !isMark(text.charAt(i))) {
            i++;
        }
        return i;
    }

    /** The text without marks. */
    static String plain(String text) {
        return has(text) ? text.replaceAll("[\uFDD0-\uFDD2]", "") : text;
    }

    /** A text from outside, in which such characters mean nothing. */
    static String clean(String text) {
        return has(text) ? text.replaceAll("[\uFDD0-\uFDD2]", "\uFFFD") : text;
    }
}
