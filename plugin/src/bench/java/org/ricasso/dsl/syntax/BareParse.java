package org.ricasso.dsl.syntax;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.ricasso.dsl.source.SourceFile;

/** What the generated lexer and parser alone take for a text: the measure for everything that is done around them. */
public final class BareParse {
    private BareParse() {}

    /** The tree that ANTLR makes; nobody reads it. */
    public static Object parse(SourceFile file) {
        int end = file.text().length();
        List<CommonToken> tokens = LineFilter.filter(LineFilter.raw(file, 0, end), end);
        return Attempt.parser(tokens).file();
    }
}
