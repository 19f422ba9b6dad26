package org.ricasso.templates.page;

/** Names of the language as words for people. */
final class Names {
    private Names() {}

    /** {@code since-quench} becomes {@code since quench}. */
    static String words(String name) {
        return name.replace('-', ' ').strip();
    }

    /** {@code since-quench} becomes {@code Since quench}. */
    static String label(String name) {
        return capital(words(name));
    }

    /** The text with a capital at its beginning. */
    static String capital(String text) {
        int first = 0;
        while (first < text.length() && Marks.isMark(text.charAt(first))) {
            first++;
        }
        if (first == text.length()) {
            return text;
        }
        int next = text.offsetByCodePoints(first, 1);
        return text.substring(0, first) + text.substring(first, next).toUpperCase(java.util.Locale.ROOT) + text.substring(next);
    }
}
