package org.ricasso.plugin.report;

/**
 * What a report says of a kind of finding.
 *
 * @param title one line
 * @param text the whole explanation; the title where there is no more to say
 */
public record ReportRule(String title, String text) {

    /** A rule of which only the name is known: its words, as a sentence. */
    public static ReportRule named(String name) {
        String words = name.replace('-', ' ');
        String title = words.isEmpty() ? name
                : new StringBuilder().appendCodePoint(Character.toUpperCase(words.codePointAt(0)))
                        .append(words, words.offsetByCodePoints(0, 1), words.length()).toString();
        return new ReportRule(title, title);
    }
}
