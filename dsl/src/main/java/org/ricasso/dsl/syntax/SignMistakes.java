package org.ricasso.dsl.syntax;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/** Mistakes in writing signs and units that show between two tokens. */
final class SignMistakes {
    private SignMistakes() {}

    /** A finding, or {@code null}; the index is not 0. */
    static Diagnostic find(Spans spans, List<CommonToken> tokens, int index) {
        Token here = tokens.get(index);
        Token before = tokens.get(index - 1);
        if (isSigned(here) && endsValue(before)) {
            return SyntaxFindings.signWithoutBlanks(spans.of(here), before.getType() == SpecLexer.NUMBER);
        }
        if (before.getType() == SpecLexer.WORD && before.getText().matches(".*-\\d+")
                && (here.getType() == SpecLexer.WORD || here.getType() == SpecLexer.SIGN_UNIT)) {
            return SyntaxFindings.minusInName(spans.of(before));
        }
        // The unit `in` is an operator; what stands behind it decides where reading stops.
        for (int i = Math.max(1, index - 2); i <= index; i++) {
            boolean nothingBehind = i + 1 >= tokens.size() || i + 1 == index
                    || spans.of(tokens.get(i + 1)).line() > spans.of(tokens.get(i)).line();
            if (tokens.get(i).getType() == SpecLexer.IN && tokens.get(i - 1).getType() == SpecLexer.NUMBER
                    && (nothingBehind || i == index)) {
                return SyntaxFindings.inch(spans.of(tokens.get(i)));
            }
        }
        if ((before.getType() == SpecLexer.MAX || before.getType() == SpecLexer.MIN)
                && here.getType() != SpecLexer.NUMBER && beginsValue(here)) {
            return SyntaxFindings.limitOfNoNumber(spans.of(before), spans.of(here));
        }
        return null;
    }

    private static boolean isSigned(Token token) {
        return token.getType() == SpecLexer.NUMBER && !Character.isDigit(token.getText().charAt(0));
    }

    private static boolean endsValue(Token token) {
        return switch (token.getType()) {
            case SpecLexer.NUMBER, SpecLexer.WORD, SpecLexer.SIGN_UNIT, SpecLexer.RPAREN, SpecLexer.MIN -> true;
            default -> false;
        };
    }

    private static boolean beginsValue(Token token) {
        return switch (token.getType()) {
            case SpecLexer.WORD, SpecLexer.LPAREN, SpecLexer.MAX, SpecLexer.MIN, SpecLexer.IF -> true;
            default -> false;
        };
    }
}
