package org.ricasso.templates.page;

/** Texts inside a string of a style sheet. */
final class CssText {
    private CssText() {}

    /**
     * The text so that it can mean nothing but itself between quotes in a style sheet in a page: every character but
     * plain letters, digits and blanks is written as its number.
     */
    static String escaped(String text) {
        StringBuilder result = new StringBuilder();
        PlainText.of(text).codePoints().forEach(c -> {
            if (c == ' ' || c >= '0' && c <= '9' || c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z') {
                result.appendCodePoint(c);
            } else {
                // the blank ends the number and is not part of the text
                result.append('\\').append(Integer.toHexString(c)).append(' ');
            }
        });
        return result.toString();
    }
}
