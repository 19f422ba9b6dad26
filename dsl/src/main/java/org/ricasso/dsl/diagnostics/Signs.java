package org.ricasso.dsl.diagnostics;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.text.Normalizer;
import java.util.Map;

/**
 * Signs as a console can show them: a sign that its charset lacks is written in ASCII, a control character never gets
 * through. Also how many columns a sign takes.
 */
final class Signs {
    private static final Map<Integer, String> ASCII = Map.ofEntries(
            Map.entry((int) '±', "+/-"), Map.entry((int) '°', "deg"), Map.entry(0xB5, "u"), Map.entry(0x3BC, "u"),
            Map.entry((int) '²', "^2"), Map.entry((int) '³', "^3"), Map.entry((int) '·', "*"),
            Map.entry((int) '×', "x"), Map.entry((int) '÷', "/"), Map.entry((int) '‰', "per mille"),
            Map.entry((int) '–', "-"), Map.entry((int) '—', "-"), Map.entry(0x2212, "-"), Map.entry((int) '…', "..."),
            Map.entry((int) '≤', "<="), Map.entry((int) '≥', ">="), Map.entry((int) '≠', "!="),
            Map.entry((int) '→', "->"), Map.entry((int) 'Ø', "dia. "), Map.entry((int) '⌀', "dia. "),
            Map.entry((int) 'Δ', "D"), Map.entry((int) 'Ω', "Ohm"), Map.entry((int) 'ß', "ss"),
            Map.entry((int) '‘', "'"), Map.entry((int) '’', "'"), Map.entry((int) '“', "\""),
            Map.entry((int) '”', "\""), Map.entry((int) '„', "\""), Map.entry((int) '«', "\""),
            Map.entry((int) '»', "\""), Map.entry((int) '½', "1/2"), Map.entry((int) 'æ', "ae"),
            Map.entry((int) 'ø', "o"), Map.entry((int) 'ł', "l"), Map.entry((int) 'Ł', "L"),
            Map.entry(0xA0, " "), Map.entry(0x202F, " "), Map.entry(0x2009, " "), Map.entry(0xFEFF, ""));

    private final CharsetEncoder encoder;

    Signs(Charset charset) {
        this.encoder = charset.newEncoder();
    }

    /** The text as the console can show it; tabs stay. */
    String show(String text) {
        StringBuilder result = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> result.append(show(c)));
        return result.toString();
    }

    String show(int codePoint) {
        if (codePoint == '\t') {
            return "\t";
        }
        if (Character.isISOControl(codePoint) || changesDirection(codePoint)
                || codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE) {
            return "?";
        }
        String sign = Character.toString(codePoint);
        if (encoder.canEncode(sign)) {
            return sign;
        }
        String ascii = ASCII.get(codePoint);
        if (ascii != null) {
            return ascii;
        }
        String plain = Normalizer.normalize(sign, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
        return !plain.equals(sign) && encoder.canEncode(plain) ? plain : isWithoutWidth(codePoint) ? "" : "?";
    }

    /** How many columns the sign takes as it is shown: 0 for a combining one, 2 for a wide one. */
    int width(int codePoint) {
        String shown = show(codePoint);
        if (shown.length() == Character.charCount(codePoint) && shown.codePointAt(0) == codePoint) {
            return isWithoutWidth(codePoint) ? 0 : isWide(codePoint) ? 2 : 1;
        }
        return shown.length();
    }

    private static boolean isWithoutWidth(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> true;
            default -> false;
        };
    }

    /** East Asian wide and full-width signs and pictures (after Unicode Standard Annex 11, in ranges, from memory). */
    private static boolean isWide(int c) {
        return c >= 0x1100 && c <= 0x115F || c >= 0x2E80 && c <= 0xA4CF && c != 0x303F || c >= 0xAC00 && c <= 0xD7A3
                || c >= 0xF900 && c <= 0xFAFF || c >= 0xFE30 && c <= 0xFE6F || c >= 0xFF00 && c <= 0xFF60
                || c >= 0xFFE0 && c <= 0xFFE6 || c >= 0x1F300 && c <= 0x1F64F || c >= 0x1F680 && c <= 0x1F6FF
                || c >= 0x1F900 && c <= 0x1FAFF || c >= 0x20000 && c <= 0x3FFFD;
    }

    /** Signs that turn the direction of writing could make an excerpt look like another text. */
    private static boolean changesDirection(int c) {
        return c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    }
}
