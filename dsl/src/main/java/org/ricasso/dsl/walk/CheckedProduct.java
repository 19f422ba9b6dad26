package org.ricasso.dsl.walk;

import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.house.Thing;

/**
 * A product after its route was walked.
 *
 * @param product the product as specified
 * @param steps its steps in order
 * @param outcomes what became of each characteristic, in the order of the spec
 * @param judgements every rule on every subject of this product, in the order of the walk
 * @param diagnostics what was found on it
 * @param loops rework
 */
public record CheckedProduct(Thing product, List<CheckedStep> steps, List<Outcome> outcomes,
        List<Judgement> judgements, List<Diagnostic> diagnostics, List<Loop> loops) {
    public CheckedProduct {
        loops = List.copyOf(loops);
        steps = List.copyOf(steps);
        outcomes = List.copyOf(outcomes);
        judgements = List.copyOf(judgements);
        diagnostics = List.copyOf(diagnostics);
    }

    /**
     * Rework.
     *
     * @param from number of the step that finds it
     * @param to number of the step that a piece goes back to
     * @param path the property that is not right
     * @param times how often a piece may go back
     */
    public record Loop(int from, int to, String path, int times) {}
}
