package org.ricasso.dsl.format;

import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;

/**
 * A text in the one layout.
 *
 * @param text the text with line feeds; as it was given if it cannot be read
 * @param diagnostics why it cannot be read; empty exactly when the text is laid out
 */
public record Formatted(String text, List<Diagnostic> diagnostics) {
    public Formatted {
        diagnostics = List.copyOf(diagnostics);
    }
}
