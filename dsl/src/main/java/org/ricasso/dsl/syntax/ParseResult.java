package org.ricasso.dsl.syntax;

import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;

/**
 * A file as read.
 *
 * @param tree what could be read; never {@code null}
 * @param diagnostics what could not, in {@link Diagnostic#ORDER}; empty exactly when the tree is whole
 */
public record ParseResult(SyntaxTree tree, List<Diagnostic> diagnostics) {
    public ParseResult {
        diagnostics = List.copyOf(diagnostics);
    }
}
