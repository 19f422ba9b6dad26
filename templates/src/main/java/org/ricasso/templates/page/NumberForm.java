package org.ricasso.templates.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a language sets numbers: its decimal sign, its words for a range and a limit, its blank before a unit. */
final class NumberForm {
    private static final char NO_BREAK = '\u00A0';
    private static final String NUMBER = "[-+\u2212]?\\d+(?:\\.\\d+)?";
    private static final Pattern RANGE = Pattern.compile("(" + NUMBER + ")\\.\\.(" + NUMBER + ")");
    private static final Pattern LIMIT = Pattern.compile("(max|min) (.+)");
    private static final Pattern DECIMAL = Pattern.compile("(?<=\\d)\\.(?=\\d)");
    private static final Pattern MINUS = Pattern.compile("(?<![\\p{L}\\p{N}.\\-])-(?=\\d)");
    private static final Pattern STATION = Pattern.compile("(?<=\\p{L}) - (?=\\d)");
    private static final Pattern BEFORE_TOLERANCE = Pattern.compile("[ \u00A0]?±[ \u00A0]?");
    private static final Pattern BEFORE_UNIT =
            Pattern.compile("(?<=\\d\\)?) (?=(?:[°µΩ%‰]|\\p{L}{1,3}(?![\\p{L}\\p{N}])|\\p{L}{1,2}[/·²³]))");
    private static final Pattern UNIT = Pattern.compile("(?<=[\\d)∞])[ \u00A0](?=[\\p{L}°µΩ%‰][^ \u00A0]*$)");

    private final PageWords words;
    private final String decimal;
    private final String unit;

    NumberForm(PageWords words) {
        this.words = words;
        this.decimal = words.plain("numbers.decimal");
        this.unit = Matcher.quoteReplacement(bound(words.between("numbers.unit")));
    }

    /**
     * Numbers inside a text: a range is read out ({@code 55..58} becomes {@code 55 to 58}), a minus is a minus, and a
     * number does not part from its tolerance and unit at a line's end. Its digits stay as they are: a text may name a
     * steel by its number.
     */
    String typeset(String text) {
        if (text.chars().noneMatch(c -> c >= '0' && c <= '9' || c == '±')) {
            return text;
        }
        String result = ranges(text);
        result = MINUS.matcher(result).replaceAll("\u2212");
        result = STATION.matcher(result).replaceAll(NO_BREAK + "\u2212" + NO_BREAK);
        result = BEFORE_TOLERANCE.matcher(result).replaceAll(NO_BREAK + "±" + NO_BREAK);
        return BEFORE_UNIT.matcher(result).replaceAll(String.valueOf(NO_BREAK));
    }

    /** A number alone, with the language's decimal sign: it may break before its deviations in brackets only. */
    String number(String text) {
        Matcher limit = LIMIT.matcher(text);
        if (limit.matches()) {
            return bound(words.say(limit.group(1).equals("max") ? "numbers.at-most" : "numbers.at-least", "value",
                    number(limit.group(2))));
        }
        String set = typeset(text).replace(' ', NO_BREAK).replace(NO_BREAK + "(", " (");
        return UNIT.matcher(decimals(set)).replaceAll(unit);
    }

    /** A count of some unit. */
    String with(long count, String unitSign) {
        return number(count + " " + unitSign);
    }

    /** The language's decimal sign in a text that holds nothing but numbers with points. */
    String decimals(String text) {
        return decimal.equals(".") ? text : DECIMAL.matcher(text).replaceAll(Matcher.quoteReplacement(decimal));
    }

    private String ranges(String text) {
        if (!text.contains("..")) {
            return text;
        }
        return RANGE.matcher(text).replaceAll(range -> Matcher.quoteReplacement(bound(words.say("numbers.range",
                "least", range.group(1), "most", range.group(2)))));
    }

    private static String bound(String text) {
        return text.replace(' ', NO_BREAK);
    }
}
