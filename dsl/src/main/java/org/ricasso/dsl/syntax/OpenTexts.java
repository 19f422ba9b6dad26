package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/**
 * A text that is not closed swallows the rest of its line. A brace at that end that the line's block needs is given
 * back, so that the one mistake does not look like two.
 */
final class OpenTexts {
    private OpenTexts() {}

    static List<CommonToken> split(List<CommonToken> raw) {
        List<CommonToken> result = new ArrayList<>(raw.size());
        int depth = 0;
        for (CommonToken token : raw) {
            int type = token.getType();
            if (type == SpecLexer.NL) {
                depth = 0;
            }
            depth += type == SpecLexer.LBRACE ? 1 : type == SpecLexer.RBRACE ? -1 : 0;
            if (type == SpecLexer.BAD_STRING) {
                split(token, depth, result);
            } else {
                result.add(token);
            }
        }
        return result;
    }

    private static void split(CommonToken token, int depth, List<CommonToken> result) {
        String text = token.getText();
        int length = text.stripTrailing().length();
        boolean opens = depth == 0 && length > 1 && text.charAt(length - 1) == '{';
        int braces = opens ? 1 : 0;
        int cut = opens ? length - 1 : length;
        while (!opens && braces < depth && cut > 1 && text.charAt(cut - 1) == '}') {
            cut = text.substring(0, cut - 1).stripTrailing().length();
            braces++;
        }
        if (braces == 0) {
            result.add(token);
            return;
        }
        CommonToken open = new CommonToken(token);
        open.setStopIndex(token.getStartIndex() + cut - 1);
        result.add(open);
        int type = opens ? SpecLexer.LBRACE : SpecLexer.RBRACE;
        for (int i = cut; i < length; i++) {
            if (text.charAt(i) == '{' || text.charAt(i) == '}') {
                CommonToken brace = LineFilter.insert(token, type, token.getStartIndex() + i);
                brace.setStopIndex(brace.getStartIndex());
                result.add(brace);
            }
        }
    }
}
