package org.ricasso.dsl.format;

import java.util.List;
import java.util.Set;
import org.ricasso.dsl.format.Piece.Sign;
import org.ricasso.dsl.syntax.Lexeme.Kind;

/** Where on a line a blank stands. */
final class Spacing {
    /** Words behind which a bracket may be a value as well as what the word calls. */
    private static final Set<String> MARKS = Set.of("default", "starts", "usual", "within");

    private Spacing() {}

    /** Pieces on one line; comments are left out. */
    static String flat(List<? extends Piece> pieces) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < pieces.size(); i++) {
            append(pieces, i, i > 0, out);
        }
        return out.toString();
    }

    /** Appends one piece, with its blank where it follows another on its line. */
    static void append(List<? extends Piece> pieces, int i, boolean follows, StringBuilder out) {
        if (pieces.get(i) instanceof Piece.Comment) {
            return;
        }
        if (follows && blankBefore(pieces, i)) {
            out.append(' ');
        }
        if (pieces.get(i) instanceof Sign sign) {
            out.append(sign.text());
        } else if (pieces.get(i) instanceof Piece.Block block) {
            out.append(flat(block));
        }
    }

    private static String flat(Piece.Block block) {
        if (block.entries().isEmpty()) {
            return "{}";
        }
        List<String> items = block.entries().stream().map(e -> flat(((Piece.Item) e).pieces())).toList();
        return "{ " + String.join("; ", items) + " }";
    }

    /** Whether a blank stands between a piece and the one before it. */
    static boolean blankBefore(List<? extends Piece> pieces, int i) {
        if (i == 0 || !(pieces.get(i) instanceof Sign sign) || !(pieces.get(i - 1) instanceof Sign before)) {
            return i > 0;
        }
        return switch (sign.kind()) {
            case COMMA, COLON, CLOSE_BRACKET, DOTS -> false;
            // `20.5` would be one number
            case DOT -> before.is(Kind.NUMBER) && i + 1 < pieces.size() && pieces.get(i + 1) instanceof Sign next
                    && next.is(Kind.NUMBER);
            case OPEN_BRACKET -> blankBeforeBracket(pieces, i, sign, before);
            case SLASH -> !LiteralSigns.deviationsAt(pieces, i - 2);
            default -> blankAfter(pieces, i, sign, before);
        };
    }

    private static boolean blankBeforeBracket(List<? extends Piece> pieces, int i, Sign bracket, Sign before) {
        if (LiteralSigns.deviationsAt(pieces, i)) {
            return true;
        }
        if (before.kind().isName()) {
            boolean oneOf = before.is("of") && i > 1 && pieces.get(i - 2) instanceof Sign one && one.is("one");
            return oneOf || MARKS.contains(before.text()) && !bracket.touches();
        }
        return blankAfter(pieces, i, bracket, before);
    }

    private static boolean blankAfter(List<? extends Piece> pieces, int i, Sign sign, Sign before) {
        return switch (before.kind()) {
            case OPEN_BRACKET, DOT, DOTS -> false;
            case SLASH -> !LiteralSigns.deviationsAt(pieces, i - 3);
            // a sign that touches digits would belong to them
            case MINUS -> !isPrefix(pieces, i - 1) || sign.is(Kind.NUMBER) || sign.is(Kind.DATE);
            default -> true;
        };
    }

    /** Whether a minus stands before one operand rather than between two. */
    private static boolean isPrefix(List<? extends Piece> pieces, int minus) {
        if (minus == 0 || !(pieces.get(minus - 1) instanceof Sign before)) {
            return true;
        }
        return switch (before.kind()) {
            case WORD, CLAUSE, NUMBER, DATE, TEXT, UNIT_SIGN, CLOSE_BRACKET -> false;
            default -> true;
        };
    }
}
