package org.ricasso.dsl;

import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Severity;

/**
 * What is left of a check of which nothing else is kept.
 *
 * @param products how many products were checked
 * @param diagnostics everything found, in {@link Diagnostic#ORDER}
 */
public record Verdict(int products, List<Diagnostic> diagnostics) {
    public Verdict {
        diagnostics = List.copyOf(diagnostics);
    }

    /** Whether nothing forbids to publish. */
    public boolean holds() {
        return diagnostics.stream().noneMatch(d -> d.severity() == Severity.ERROR);
    }
}
