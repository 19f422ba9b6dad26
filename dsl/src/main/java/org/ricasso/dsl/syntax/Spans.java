package org.ricasso.dsl.syntax;

import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/** From ANTLR's places to spans. Token positions are UTF-16 offsets already, see {@link OffsetStream}. */
record Spans(SourceFile file) {

    Span of(Token token) {
        return new Span(file, token.getStartIndex(), Math.max(token.getStartIndex(), token.getStopIndex() + 1));
    }

    Span of(Token first, Token last) {
        return new Span(file, first.getStartIndex(), last.getStopIndex() + 1);
    }

    Span of(ParserRuleContext context) {
        return of(context.start, context.stop);
    }

    /** The place without width behind a token. */
    Span behind(Token token) {
        return new Span(file, token.getStopIndex() + 1, token.getStopIndex() + 1);
    }

    Name name(ParserRuleContext context) {
        return new Name(word(context.start), of(context.start));
    }

    Name name(Token token) {
        return new Name(word(token), of(token));
    }

    Name name(TerminalNode node) {
        return new Name(word(node.getSymbol()), of(node.getSymbol()));
    }

    /** A token's text, once for all texts: a house says the same few words over and over. */
    static String word(Token token) {
        return token.getText().intern();
    }

    /** The name, or {@code null} where none is written. */
    Name optionalName(ParserRuleContext context) {
        return context == null ? null : name(context);
    }
}
