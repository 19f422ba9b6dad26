package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Lexeme.Kind;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/** Cuts a good text into its pieces, comments too. */
public final class Lexemes {
    private Lexemes() {}

    /**
     * The pieces of a text in which the parser found nothing wrong, in their order.
     *
     * @throws IllegalArgumentException if the text holds something that is no piece of the language
     */
    public static List<Lexeme> of(SourceFile file) {
        int end = file.text().length();
        List<CommonToken> raw = LineFilter.raw(file, 0, end);
        List<Lexeme> comments = comments(file, raw, end);
        List<Lexeme> result = new ArrayList<>(raw.size() + comments.size());
        int comment = 0;
        for (CommonToken token : LineFilter.filter(raw, end)) {
            while (comment < comments.size() && comments.get(comment).span().start() < token.getStartIndex()) {
                result.add(comments.get(comment++));
            }
            if (token.getType() != Token.EOF) {
                Span span = new Spans(file).of(token);
                Kind kind = kind(token.getType(), span);
                result.add(new Lexeme(kind, kind == Kind.END ? "" : span.text(), span));
            }
        }
        result.addAll(comments.subList(comment, comments.size()));
        return result;
    }

    /** The lexer passes over comments: they stand where between two tokens there is more than blanks. */
    private static List<Lexeme> comments(SourceFile file, List<CommonToken> raw, int end) {
        List<Lexeme> result = new ArrayList<>();
        int from = 0;
        for (CommonToken token : raw) {
            comment(file, from, token.getStartIndex(), result);
            from = token.getStopIndex() + 1;
        }
        comment(file, from, end, result);
        return result;
    }

    private static void comment(SourceFile file, int from, int to, List<Lexeme> result) {
        int start = file.text().substring(from, to).indexOf("//") + from;
        if (start >= from) {
            String text = file.text().substring(start, to).stripTrailing();
            result.add(new Lexeme(Kind.COMMENT, text, new Span(file, start, start + text.length())));
        }
    }

    private static Kind kind(int type, Span span) {
        return switch (type) {
            case SpecLexer.END -> Kind.END;
            case SpecLexer.WORD -> Kind.WORD;
            case SpecLexer.AND, SpecLexer.ELSE, SpecLexer.IF, SpecLexer.IN, SpecLexer.NOT, SpecLexer.OR, SpecLexer.PER,
                    SpecLexer.THEN -> Kind.RESERVED;
            case SpecLexer.NUMBER -> Kind.NUMBER;
            case SpecLexer.DATE -> Kind.DATE;
            case SpecLexer.STRING -> Kind.TEXT;
            case SpecLexer.SIGN_UNIT -> Kind.UNIT_SIGN;
            case SpecLexer.PM -> Kind.PLUS_MINUS;
            case SpecLexer.DOTS -> Kind.DOTS;
            case SpecLexer.GE -> Kind.AT_LEAST;
            case SpecLexer.LE -> Kind.AT_MOST;
            case SpecLexer.MINUS -> Kind.MINUS;
            case SpecLexer.SLASH -> Kind.SLASH;
            case SpecLexer.TIMES -> Kind.TIMES;
            case SpecLexer.PLUS, SpecLexer.GT, SpecLexer.LT, SpecLexer.EQ -> Kind.OPERATOR;
            case SpecLexer.DOT -> Kind.DOT;
            case SpecLexer.COMMA -> Kind.COMMA;
            case SpecLexer.COLON -> Kind.COLON;
            case SpecLexer.BAR -> Kind.BAR;
            case SpecLexer.LBRACE -> Kind.OPEN_BRACE;
            case SpecLexer.RBRACE -> Kind.CLOSE_BRACE;
            case SpecLexer.LPAREN -> Kind.OPEN_BRACKET;
            case SpecLexer.RPAREN -> Kind.CLOSE_BRACKET;
            default -> {
                if (!NameWords.has(type)) {
                    throw new IllegalArgumentException(span + ": " + span.text());
                }
                yield Kind.CLAUSE;
            }
        };
    }
}
