package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/**
 * A line of a text with the lines that go on from it, as {@link BraceMender} looks at it.
 *
 * @param tokens its tokens, at least one
 * @param indent characters before the first
 * @param ends the line ends behind it
 */
record Row(List<CommonToken> tokens, int indent, List<CommonToken> ends) {

    static List<Row> rows(SourceFile file, List<CommonToken> raw) {
        List<Row> rows = new ArrayList<>();
        Row row = null;
        for (CommonToken token : raw) {
            if (token.getType() == SpecLexer.NL) {
                if (row != null) {
                    row.ends.add(token);
                }
            } else if (row == null || !row.ends.isEmpty() && !row.goesOn(token)) {
                int start = token.getStartIndex();
                row = new Row(new ArrayList<>(List.of(token)), start - file.lineStart(file.line(start)),
                        new ArrayList<>());
                rows.add(row);
            } else {
                row.tokens.addAll(row.ends);
                row.ends.clear();
                row.tokens.add(token);
            }
        }
        return rows;
    }

    /** A head does not go on: an operator at its end stands where its brace should. */
    private boolean goesOn(CommonToken next) {
        int last = tokens.get(tokens.size() - 1).getType();
        return LineFilter.goesOnBefore(next.getType()) || last != SpecLexer.LBRACE
                && !canBeHead(tokens.subList(0, tokens.size() - 1))
                && next.getType() != SpecLexer.RBRACE && LineFilter.goesOnAfter(last)
                && !(last == SpecLexer.IN && tokens.size() > 1
                        && tokens.get(tokens.size() - 2).getType() == SpecLexer.NUMBER);
    }

    /** Finds the places of opening and closing braces without a partner among the tokens. */
    static void unmatched(List<CommonToken> tokens, List<Integer> opens, List<Integer> closes) {
        for (int i = 0; i < tokens.size(); i++) {
            if (tokens.get(i).getType() == SpecLexer.LBRACE) {
                opens.add(i);
            } else if (tokens.get(i).getType() == SpecLexer.RBRACE) {
                if (opens.isEmpty()) {
                    closes.add(i);
                } else {
                    opens.remove(opens.size() - 1);
                }
            }
        }
    }

    /** Whether tokens can be the head of a block: entries have a colon, heads have none; rows of a grid have bars. */
    static boolean canBeHead(List<CommonToken> tokens) {
        return tokens.stream().noneMatch(t -> t.getType() == SpecLexer.COLON || t.getType() == SpecLexer.BAR);
    }

    /** Whether a token can be the last before a block's brace: a name, a number, a title. */
    static boolean canEndHead(CommonToken token) {
        int type = token.getType();
        return type == SpecLexer.STRING || type == SpecLexer.NUMBER || NameWords.has(type);
    }

    /** Whether a brace in a line stands between a head and entries. */
    static boolean opensEntries(List<CommonToken> tokens, int brace) {
        return brace > 0 && brace + 2 < tokens.size() && canBeHead(tokens.subList(0, brace))
                && tokens.subList(brace, tokens.size()).stream().anyMatch(t -> t.getType() == SpecLexer.COLON);
    }
}
