package org.ricasso.dsl.syntax;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.source.Limits;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/**
 * Keeps trees shallow, so that no pass over them can run out of stack: brackets count one for each level, and so does
 * each operator of an expression, since operators in a row make a tree that is deep on one side.
 */
final class Nesting {
    /** How deep brackets and operators may hang into each other. */
    static final int LIMIT = Limits.NESTING;

    private Nesting() {}

    /** The first token beyond the limit, or {@code null}. */
    static Token tooDeep(List<CommonToken> tokens) {
        Deque<Integer> outer = new ArrayDeque<>();
        int depth = 0;
        int base = 0;
        for (CommonToken token : tokens) {
            switch (token.getType()) {
                case SpecLexer.LBRACE, SpecLexer.LPAREN -> {
                    outer.push(base);
                    outer.push(depth);
                    depth++;
                    base = depth;
                }
                case SpecLexer.RBRACE, SpecLexer.RPAREN -> {
                    if (!outer.isEmpty()) {
                        depth = outer.pop();
                        base = outer.pop();
                    }
                }
                case SpecLexer.END, SpecLexer.COMMA, SpecLexer.BAR -> depth = base;
                case SpecLexer.PLUS, SpecLexer.MINUS, SpecLexer.TIMES, SpecLexer.SLASH, SpecLexer.GE, SpecLexer.LE,
                        SpecLexer.GT, SpecLexer.LT, SpecLexer.EQ, SpecLexer.IN, SpecLexer.AND, SpecLexer.OR,
                        SpecLexer.NOT, SpecLexer.IF, SpecLexer.DOT, SpecLexer.PER, SpecLexer.LIST -> depth++;
                default -> { }
            }
            if (depth > LIMIT) {
                return token;
            }
        }
        return null;
    }

    /** The first token of an entry or row with which it is longer than the limit, or {@code null}. */
    static Token tooLong(List<CommonToken> tokens) {
        int words = 0;
        for (CommonToken token : tokens) {
            switch (token.getType()) {
                case SpecLexer.END, SpecLexer.LBRACE, SpecLexer.RBRACE -> words = 0;
                default -> words++;
            }
            if (words > Limits.LINE_WORDS) {
                return token;
            }
        }
        return null;
    }
}
