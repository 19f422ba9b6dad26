package org.ricasso.dsl.format;

import java.util.List;
import org.ricasso.dsl.format.Piece.Sign;
import org.ricasso.dsl.syntax.Lexeme.Kind;

/**
 * A number with tolerance and unit, sign by sign.
 *
 * @param first its first number
 * @param firstUnit the unit between the first number and what follows, or {@code ""}
 * @param form {@code ±}, {@code ..}, {@code (} for deviations, or {@code ""} for a single number
 * @param second what follows the form, deviations with their brackets, or {@code ""}
 * @param unit the unit at its end, or {@code ""}
 * @param end the index behind its last sign
 */
record LiteralSigns(String first, String firstUnit, String form, String second, String unit, int end) {

    /** The literal that begins at an index, or {@code null} where there is none. */
    static LiteralSigns at(List<? extends Piece> pieces, int start) {
        if (!is(pieces, start, Kind.NUMBER)) {
            return null;
        }
        String first = text(pieces, start);
        int i = start + 1;
        String unit = unit(pieces, i);
        i += unit.isEmpty() ? 0 : 1;
        if ((is(pieces, i, Kind.PLUS_MINUS) || is(pieces, i, Kind.DOTS)) && is(pieces, i + 1, Kind.NUMBER)) {
            String last = unit(pieces, i + 2);
            return new LiteralSigns(first, unit, text(pieces, i), text(pieces, i + 1), last,
                    i + (last.isEmpty() ? 2 : 3));
        }
        if (deviationsAt(pieces, i)) {
            String last = unit(pieces, i + 5);
            return new LiteralSigns(first, unit, "(", "(" + text(pieces, i + 1) + "/" + text(pieces, i + 3) + ")", last,
                    i + (last.isEmpty() ? 5 : 6));
        }
        return new LiteralSigns(first, "", "", "", unit, i);
    }

    /** Whether {@code (+0.5/-0.3)} stands at an index, behind a number or its unit. */
    static boolean deviationsAt(List<? extends Piece> pieces, int i) {
        return is(pieces, i, Kind.OPEN_BRACKET) && is(pieces, i + 1, Kind.NUMBER) && is(pieces, i + 2, Kind.SLASH)
                && is(pieces, i + 3, Kind.NUMBER) && is(pieces, i + 4, Kind.CLOSE_BRACKET)
                && (is(pieces, i - 1, Kind.NUMBER)
                        || !unit(pieces, i - 1).isEmpty() && is(pieces, i - 2, Kind.NUMBER));
    }

    private static String unit(List<? extends Piece> pieces, int i) {
        boolean unit = is(pieces, i, Kind.UNIT_SIGN) || is(pieces, i, Kind.WORD)
                || is(pieces, i, Kind.CLAUSE) && text(pieces, i).equals("min");
        return unit ? text(pieces, i) : "";
    }

    private static boolean is(List<? extends Piece> pieces, int i, Kind kind) {
        return i >= 0 && i < pieces.size() && pieces.get(i) instanceof Sign sign && sign.is(kind);
    }

    private static String text(List<? extends Piece> pieces, int i) {
        return ((Sign) pieces.get(i)).text();
    }
}
