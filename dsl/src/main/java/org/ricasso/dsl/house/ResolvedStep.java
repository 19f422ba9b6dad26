package org.ricasso.dsl.house;

import java.util.Set;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Step;

/**
 * A step after a route has taken over, changed, added and left out; its names have no meaning yet.
 *
 * @param step the step with all its settings and measurements
 * @param takenAt the {@code like} that takes it over, or null where it is written in the route itself
 * @param own values that the taking route writes itself
 * @param cells those of them that stand in a family's row
 * @param named other numbers by which routes that take it over name it
 */
record ResolvedStep(Step step, Span takenAt, Set<Span> own, Set<Span> cells, Set<Span> named) {
    ResolvedStep {
        own = Set.copyOf(own);
        cells = Set.copyOf(cells);
        named = Set.copyOf(named);
    }

    ResolvedStep(Step step, Span takenAt) {
        this(step, takenAt, Set.of(), Set.of(), Set.of());
    }

    int number() {
        try {
            return Integer.parseInt(step.number().text());
        } catch (NumberFormatException tooLarge) {
            return -1;
        }
    }
}
