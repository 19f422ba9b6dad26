package org.ricasso.dsl.syntax;

import org.ricasso.dsl.source.Span;

/**
 * A piece of a text as the language cuts it, for those who look at how a text is written rather than at what it says.
 *
 * @param kind what it is
 * @param text as written; a comment with its strokes and without blanks at its end, an end as {@code ""}
 * @param span its place; an end that only a brace or the text's end implies has no width
 */
public record Lexeme(Kind kind, String text, Span span) {

    /** Kinds of pieces. Blanks are none. */
    public enum Kind {
        /** A line's end or {@code ;} that ends an entry; those where a line goes on are left out. */
        END,
        /** {@code // …} to the line's end. */
        COMMENT,
        /** A name. */
        WORD,
        /** A word that leads a clause and is a name elsewhere. */
        CLAUSE,
        /** {@code and else if in not or per then} */
        RESERVED,
        NUMBER,
        DATE,
        /** A text with its quotes. */
        TEXT,
        /** A unit that is a sign: {@code ° °C %}. */
        UNIT_SIGN,
        PLUS_MINUS,
        DOTS,
        AT_LEAST,
        AT_MOST,
        MINUS,
        SLASH,
        TIMES,
        /** Any other operator. */
        OPERATOR,
        DOT,
        COMMA,
        COLON,
        BAR,
        OPEN_BRACE,
        CLOSE_BRACE,
        OPEN_BRACKET,
        CLOSE_BRACKET;

        /** Whether it can be a name. */
        public boolean isName() {
            return this == WORD || this == CLAUSE;
        }
    }
}
