package org.ricasso.templates.page;

import java.util.regex.Pattern;

/** Makes any text fit to stand on a page, and sets numbers as a typesetter would. */
final class PlainText {
    private static final char NO_BREAK = '\u00A0';
    private static final Pattern RANGE = Pattern.compile("(?<=\\d)\\.\\.(?=[-+\u2212]?\\d)");
    private static final Pattern MINUS = Pattern.compile("(?<![\\p{L}\\p{N}.\\-])-(?=\\d)");
    private static final Pattern STATION = Pattern.compile("(?<=\\p{L}) - (?=\\d)");
    private static final Pattern BEFORE_TOLERANCE = Pattern.compile("[ \u00A0]?±[ \u00A0]?");
    private static final Pattern BEFORE_UNIT =
            Pattern.compile("(?<=\\d\\)?) (?=(?:[°µΩ%‰]|\\p{L}{1,3}(?![\\p{L}\\p{N}])|\\p{L}{1,2}[/·²³]))");

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

    /**
     * Numbers inside a text: a range is read out ({@code 55..58} becomes {@code 55 to 58}), a minus is a minus, and a
     * number does not part from its tolerance and unit at a line's end.
     */
    static String typeset(String text) {
        if (text.chars().noneMatch(c -> c >= '0' && c <= '9' || c == '±')) {
            return text;
        }
        String result = RANGE.matcher(text).replaceAll(NO_BREAK + "to" + NO_BREAK);
        result = MINUS.matcher(result).replaceAll("\u2212");
        result = STATION.matcher(result).replaceAll(NO_BREAK + "\u2212" + NO_BREAK);
        result = BEFORE_TOLERANCE.matcher(result).replaceAll(NO_BREAK + "±" + NO_BREAK);
        return BEFORE_UNIT.matcher(result).replaceAll(String.valueOf(NO_BREAK));
    }

    /** A number alone: it may break before its deviations in brackets only. */
    static String number(String text) {
        return typeset(text).replace(' ', NO_BREAK).replace(NO_BREAK + "(", " (");
    }
}
