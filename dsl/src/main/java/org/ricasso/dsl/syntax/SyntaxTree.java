package org.ricasso.dsl.syntax;

import java.util.List;
import org.ricasso.dsl.source.SourceFile;

/**
 * What a file says, before any name has a meaning.
 *
 * @param file the text
 * @param declarations its declarations in order; those that could not be read are left out
 */
public record SyntaxTree(SourceFile file, List<Declaration> declarations) {
    public SyntaxTree {
        declarations = List.copyOf(declarations);
    }
}
