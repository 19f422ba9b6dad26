package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.format.Piece.Sign;
import org.ricasso.dsl.syntax.Lexeme.Kind;

/**
 * Signs that can be written in two ways are written in one: {@code ±}, {@code -}, {@code *}, and before a literal
 * {@code max} and {@code min} for {@code <=} and {@code >=}. A unit's other sign stays: only a vocabulary knows it.
 */
final class CanonicalSigns {
    private static final String MINUS_SIGN = "\u2212";
    /** Words that a value may follow; behind any other word a number is a name. */
    private static final Set<String> BEFORE_VALUES = Set.of("default", "max", "min", "starts", "usual", "within");

    private CanonicalSigns() {}

    /** The pieces of an item, its signs in their one spelling. */
    static List<Piece> of(List<Piece> pieces) {
        List<Piece> result = new ArrayList<>(pieces.size());
        for (int i = 0; i < pieces.size(); i++) {
            result.add(pieces.get(i) instanceof Sign sign ? spelt(sign, i == 0 ? null : pieces.get(i - 1))
                    : pieces.get(i));
        }
        if (isRow(result)) {
            for (int i = 0; i + 1 < result.size(); i++) {
                if (result.get(i) instanceof Sign sign && sign.is(Kind.BAR)) {
                    limit(result, i + 1);
                }
            }
        } else {
            limit(result, Cells.colon(result) + 1);
        }
        return result;
    }

    private static boolean isRow(List<Piece> pieces) {
        return pieces.get(0) instanceof Sign sign && sign.is(Kind.BAR);
    }

    private static Sign spelt(Sign sign, Piece before) {
        return switch (sign.kind()) {
            case PLUS_MINUS -> sign.as(Kind.PLUS_MINUS, "±");
            case AT_LEAST -> sign.as(Kind.AT_LEAST, ">=");
            case AT_MOST -> sign.as(Kind.AT_MOST, "<=");
            case MINUS -> sign.as(Kind.MINUS, "-");
            case TIMES -> sign.as(Kind.TIMES, "*");
            case NUMBER -> isName(before) ? sign : sign.as(Kind.NUMBER, sign.text().replace(MINUS_SIGN, "-"));
            default -> sign;
        };
    }

    /** Whether a number behind a piece is a name: as it is written it may stand in other files, too. */
    private static boolean isName(Piece before) {
        return before instanceof Sign sign
                && (sign.is(Kind.DOT) || sign.kind().isName() && !BEFORE_VALUES.contains(sign.text()));
    }

    /** Where a value begins that is {@code <=} or {@code >=} and a literal, the sign becomes its word. */
    private static void limit(List<Piece> pieces, int start) {
        if (start == 0 || start >= pieces.size() || !(pieces.get(start) instanceof Sign sign)
                || !sign.is(Kind.AT_LEAST) && !sign.is(Kind.AT_MOST)) {
            return;
        }
        LiteralSigns literal = LiteralSigns.at(pieces, start + 1);
        if (literal != null && endsValue(pieces, literal.end())) {
            pieces.set(start, sign.as(Kind.CLAUSE, sign.is(Kind.AT_LEAST) ? "min" : "max"));
            // a line goes on behind the sign, but not behind the word
            Sign number = (Sign) pieces.get(start + 1);
            pieces.set(start + 1, new Sign(number.kind(), number.text(), false, false));
        }
    }

    private static boolean endsValue(List<Piece> pieces, int end) {
        return end == pieces.size() || pieces.get(end) instanceof Sign sign
                && (sign.is(Kind.BAR) || sign.is(Kind.RESERVED) && sign.text().equals("else"));
    }
}
