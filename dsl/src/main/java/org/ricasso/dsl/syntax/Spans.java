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
        return new Name(context.start.getText(), of(context.start));
    }

    Name name(Token token) {
        return new Name(token.getText(), of(token));
    }

    Name name(TerminalNode node) {
        return new Name(node.getSymbol().getText(), of(node.getSymbol()));
    }

    /** The name, or {@code null} where none is written. */
    Name optionalName(ParserRuleContext context) {
        return context == null ? null : name(context);
    }
}
