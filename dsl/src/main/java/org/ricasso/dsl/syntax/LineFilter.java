package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/**
 * Cuts a text into tokens and turns line ends and {@code ;} into the token that ends an entry.
 *
 * <p>No end stands behind <code>{ ( ,</code> or an operator, and none before {@code else then and or )}; ends in a row
 * are one; one always stands before a closing brace (unless the opening one does) and at the end of the text.
 */
final class LineFilter {
    private LineFilter() {}

    /** The tokens of a stretch of a file as they stand, line ends too, without the end of the file. */
    static List<CommonToken> raw(SourceFile file, int start, int end) {
        int from = start == 0 && file.text().startsWith("\uFEFF") ? 1 : start;
        SpecLexer lexer = new SpecLexer(new OffsetStream(file.name(), file.text(), from, end));
        lexer.removeErrorListeners();
        List<CommonToken> result = new ArrayList<>((end - start) / 4 + 8);
        for (Token token = lexer.nextToken(); token.getType() != Token.EOF; token = lexer.nextToken()) {
            result.add((CommonToken) token);
        }
        return result;
    }

    /** The tokens with ends, closed by the end of the file. Does not change the tokens given. */
    static List<CommonToken> filter(List<CommonToken> raw, int end) {
        List<CommonToken> result = new ArrayList<>(raw.size() + 2);
        CommonToken pending = null;
        int last = SpecLexer.LBRACE;
        int lastButOne = last;
        for (CommonToken token : raw) {
            int type = token.getType();
            if (type == SpecLexer.NL || type == SpecLexer.SEMI) {
                // `8 in` at a line's end is an inch: the line ends.
                boolean inch = last == SpecLexer.IN && lastButOne == SpecLexer.NUMBER;
                if (pending == null && (inch || !goesOnAfter(last))) {
                    pending = token;
                }
                continue;
            }
            if (type == SpecLexer.RBRACE) {
                if (last != SpecLexer.LBRACE) {
                    result.add(pending != null ? end(pending) : end(token, token.getStartIndex()));
                }
            } else if (pending != null && !goesOnBefore(type)) {
                result.add(end(pending));
            }
            pending = null;
            result.add(token);
            lastButOne = last;
            last = type;
        }
        CommonToken model = raw.isEmpty() ? new CommonToken(Token.EOF) : raw.get(raw.size() - 1);
        if (!result.isEmpty()) {
            result.add(pending != null ? end(pending) : end(model, end));
        }
        result.add(insert(model, Token.EOF, end));
        return result;
    }

    private static CommonToken end(CommonToken of) {
        CommonToken result = new CommonToken(of);
        result.setType(SpecLexer.END);
        return result;
    }

    private static CommonToken end(CommonToken model, int offset) {
        return insert(model, SpecLexer.END, offset);
    }

    /** A token without width. Copied from another, since a token without a source is not one for ANTLR. */
    static CommonToken insert(CommonToken model, int type, int offset) {
        CommonToken result = new CommonToken(model);
        result.setType(type);
        result.setStartIndex(offset);
        result.setStopIndex(offset - 1);
        return result;
    }

    static boolean goesOnAfter(int type) {
        return switch (type) {
            case SpecLexer.LBRACE, SpecLexer.LPAREN, SpecLexer.COMMA, SpecLexer.PLUS, SpecLexer.MINUS, SpecLexer.TIMES,
                    SpecLexer.SLASH, SpecLexer.GE, SpecLexer.LE, SpecLexer.GT, SpecLexer.LT, SpecLexer.EQ,
                    SpecLexer.IN, SpecLexer.AND, SpecLexer.OR, SpecLexer.NOT, SpecLexer.IF, SpecLexer.THEN,
                    SpecLexer.ELSE, SpecLexer.PER, SpecLexer.PM, SpecLexer.DOTS -> true;
            default -> false;
        };
    }

    static boolean goesOnBefore(int type) {
        return switch (type) {
            case SpecLexer.ELSE, SpecLexer.THEN, SpecLexer.AND, SpecLexer.OR, SpecLexer.RPAREN -> true;
            default -> false;
        };
    }
}
