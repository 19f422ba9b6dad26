package org.ricasso.templates.page;

/** Makes any text fit to stand on a page. */
final class PlainText {
    private PlainText() {}

    /**
     * The text without what a page cannot hold: control characters, halves of a pair, non-characters, and the signs
     * that turn the direction of what follows become U+FFFD, so that they are seen; line ends and tabs become blanks.
     */
    static String of(String text) {
        int bad = firstOdd(text);
        if (bad < 0) {
            return text;
        }
        StringBuilder result = new StringBuilder(text.length()).append(text, 0, bad);
        for (int i = bad; i < text.length(); ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            if (c == '\t' || c == '\n' || c == '\r' || c == '\u2028' || c == '\u2029') {
                result.append(' ');
            } else {
                result.appendCodePoint(isOdd(c) ? 0xFFFD : c);
            }
        }
        return result.toString();
    }

    private static int firstOdd(String text) {
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (isOdd(c)) {
                return i;
            }
            i += Character.charCount(c);
        }
        return -1;
    }

    private static boolean isOdd(int c) {
        return c < 0x20
                || c >= 0x7F && c <= 0x9F
                || c == 0x2028 || c == 0x2029
                || c >= 0x202A && c <= 0x202E
                || c >= 0x2066 && c <= 0x2069
                || c >= 0xD800 && c <= 0xDFFF
                || c >= 0xFDD0 && c <= 0xFDEF
                || (c & 0xFFFE) == 0xFFFE;
    }
}
