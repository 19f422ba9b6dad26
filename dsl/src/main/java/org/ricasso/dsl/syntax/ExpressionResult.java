package org.ricasso.dsl.syntax;

import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;

/**
 * An expression, value or cell as read.
 *
 * @param expression what was read; {@code null} where the text could not be read, or where a cell is empty
 * @param diagnostics what could not be read, in {@link Diagnostic#ORDER}
 */
public record ExpressionResult(Expression expression, List<Diagnostic> diagnostics) {
    public ExpressionResult {
        diagnostics = List.copyOf(diagnostics);
    }
}
