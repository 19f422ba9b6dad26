package org.ricasso.dsl.syntax;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/** Whether braces match. */
final class Braces {
    private Braces() {}

    /** Whether braces match as they stand. */
    static boolean match(List<CommonToken> raw) {
        int depth = 0;
        for (CommonToken token : raw) {
            depth += token.getType() == SpecLexer.LBRACE ? 1 : token.getType() == SpecLexer.RBRACE ? -1 : 0;
            if (depth < 0) {
                return false;
            }
        }
        return depth == 0;
    }

    /** Whether, of braces that match, each one that leads a line is indented like the line that opened its block. */
    static boolean matchIndentation(SourceFile file, List<CommonToken> raw) {
        Deque<Integer> opened = new ArrayDeque<>();
        int indent = 0;
        boolean first = true;
        for (CommonToken token : raw) {
            if (first && token.getType() != SpecLexer.NL) {
                indent = token.getStartIndex() - file.lineStart(file.line(token.getStartIndex()));
            }
            if (token.getType() == SpecLexer.LBRACE) {
                opened.push(indent);
            } else if (token.getType() == SpecLexer.RBRACE && opened.pop() != indent && first) {
                return false;
            }
            first = token.getType() == SpecLexer.NL;
        }
        return true;
    }
}
