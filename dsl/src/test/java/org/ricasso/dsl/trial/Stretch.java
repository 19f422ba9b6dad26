package org.ricasso.dsl.trial;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A stretch of a text, found whatever its layout: where one blank or more is written, any blanks, line ends and {@code ;}
 * may stand. Blanks at its beginning stand for the beginning of a line.
 *
 * @param start where it begins
 * @param end where it ends
 */
public record Stretch(int start, int end) {

    /**
     * Finds a stretch that stands in a text once.
     *
     * @throws AssertionError if it does not, or more than once
     */
    public static Stretch once(String text, String wanted) {
        Matcher matcher = Pattern.compile(pattern(wanted)).matcher(text);
        return once(matcher, wanted, 0);
    }

    /** The text with a stretch written otherwise; what both have in common at their ends stays as it is laid out. */
    public static String replaced(String text, String old, String other) {
        int before = 0;
        while (before < Math.min(old.length(), other.length()) && old.charAt(before) == other.charAt(before)) {
            before++;
        }
        int behind = 0;
        while (behind < Math.min(old.length(), other.length()) - before
                && old.charAt(old.length() - 1 - behind) == other.charAt(other.length() - 1 - behind)) {
            behind++;
        }
        int end = old.length() - behind;
        Matcher matcher = Pattern.compile(pattern(old.substring(0, before)) + "(" + inner(old.substring(before, end)) + ")"
                + inner(old.substring(end))).matcher(text);
        Stretch changed = once(matcher, old, 1);
        return text.substring(0, changed.start) + other.substring(before, other.length() - behind)
                + text.substring(changed.end);
    }

    private static Stretch once(Matcher matcher, String wanted, int group) {
        if (!matcher.find()) {
            throw new AssertionError("nothing like " + wanted + " stands there");
        }
        Stretch result = new Stretch(matcher.start(group), matcher.end(group));
        if (matcher.find()) {
            throw new AssertionError(wanted + " stands there more than once");
        }
        return result;
    }

    private static String pattern(String wanted) {
        String stripped = wanted.stripLeading();
        return (stripped.length() < wanted.length() ? "(?m:^) *" : "") + inner(stripped);
    }

    private static String inner(String wanted) {
        StringBuilder result = new StringBuilder();
        Matcher blanks = Pattern.compile("\\n|[ ;]+").matcher(wanted);
        int from = 0;
        while (blanks.find()) {
            result.append(literal(wanted.substring(from, blanks.start())));
            result.append(blanks.group().equals("\n") ? " *\n" : "[\\s;]+");
            from = blanks.end();
        }
        return result.append(literal(wanted.substring(from))).toString();
    }

    private static String literal(String text) {
        return text.isEmpty() ? "" : Pattern.quote(text);
    }
}
