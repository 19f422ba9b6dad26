package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/**
 * A logical line: an entry with its grid, or a head with the lines between its braces. Made of tokens whose braces
 * match, see {@link BraceMender}.
 */
final class Statement {
    /** The line's tokens without its end; a head ends with its opening brace. A grid's lines have ends between them. */
    final List<CommonToken> tokens = new ArrayList<>();
    /** What stands between the braces, or {@code null} where there are none. */
    List<Statement> inner;
    private CommonToken close;
    /** The end, or {@code null} where something follows on the same line. */
    private CommonToken end;

    CommonToken first() {
        return tokens.get(0);
    }

    boolean isEnded() {
        return end != null;
    }

    /** The line alone, its block empty, as an entry rule reads it. */
    List<CommonToken> alone() {
        List<CommonToken> result = new ArrayList<>(tokens);
        CommonToken last = tokens.get(tokens.size() - 1);
        if (inner != null) {
            result.add(close);
            last = close;
        }
        result.add(end != null ? end : LineFilter.insert(last, SpecLexer.END, last.getStopIndex() + 1));
        result.add(LineFilter.insert(last, Token.EOF, last.getStopIndex() + 1));
        return result;
    }

    /** The line and all inside it, as an entry rule reads it. */
    List<CommonToken> whole() {
        List<CommonToken> result = new ArrayList<>();
        write(result);
        CommonToken last = result.get(result.size() - 1);
        result.add(LineFilter.insert(last, Token.EOF, last.getStopIndex() + 1));
        return result;
    }

    /** Adds the line and all inside it. */
    void write(List<CommonToken> out) {
        out.addAll(tokens);
        CommonToken last = tokens.get(tokens.size() - 1);
        if (inner != null) {
            inner.forEach(s -> s.write(out));
            out.add(close);
            last = close;
        }
        out.add(end != null ? end : LineFilter.insert(last, SpecLexer.END, last.getStopIndex() + 1));
    }

    boolean holds(int type) {
        return tokens.stream().anyMatch(t -> t.getType() == type);
    }

    /** The statements of filtered tokens. */
    static List<Statement> of(List<CommonToken> filtered) {
        return new Cutter(filtered).block();
    }

    private static final class Cutter {
        private final List<CommonToken> tokens;
        private int at;

        Cutter(List<CommonToken> tokens) {
            this.tokens = tokens;
        }

        private int type() {
            return tokens.get(at).getType();
        }

        List<Statement> block() {
            List<Statement> result = new ArrayList<>();
            while (type() != Token.EOF && type() != SpecLexer.RBRACE) {
                if (type() == SpecLexer.END) {
                    at++;
                } else {
                    add(statement(), result);
                }
            }
            return result;
        }

        private Statement statement() {
            Statement result = new Statement();
            while (type() != SpecLexer.END && type() != Token.EOF && type() != SpecLexer.RBRACE
                    && !result.endsWith(SpecLexer.LBRACE)) {
                result.tokens.add(tokens.get(at++));
            }
            if (result.endsWith(SpecLexer.LBRACE)) {
                result.inner = block();
                CommonToken here = tokens.get(at);
                result.close = type() == SpecLexer.RBRACE ? tokens.get(at++)
                        : LineFilter.insert(here, SpecLexer.RBRACE, here.getStartIndex());
            }
            if (type() == SpecLexer.END) {
                result.end = tokens.get(at++);
            }
            return result;
        }

        /** Lines with bars belong to the line before them, whole or damaged. */
        private static void add(Statement statement, List<Statement> result) {
            Statement last = result.isEmpty() ? null : result.get(result.size() - 1);
            if (last != null && last.inner == null && last.end != null && statement.inner == null
                    && statement.holds(SpecLexer.BAR)) {
                last.tokens.add(last.end);
                last.tokens.addAll(statement.tokens);
                last.end = statement.end;
            } else {
                result.add(statement);
            }
        }
    }

    private boolean endsWith(int type) {
        return !tokens.isEmpty() && tokens.get(tokens.size() - 1).getType() == type;
    }
}
