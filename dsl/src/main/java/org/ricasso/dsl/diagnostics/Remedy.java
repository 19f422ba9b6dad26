package org.ricasso.dsl.diagnostics;

import java.util.List;

/**
 * What to do.
 *
 * @param text a statement
 * @param edits the change that does it, or none where only a person can
 */
public record Remedy(String text, List<Edit> edits) {
    public Remedy {
        edits = List.copyOf(edits);
    }
}
