package org.ricasso.dsl.walk;

import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.house.Thing;

/**
 * A house after the check.
 *
 * @param products the products in the order of their numbers' text, each with its walk
 * @param things all things of the house by kind and name, shipped ones too
 * @param diagnostics everything found, in {@link Diagnostic#ORDER}
 */
public record CheckedHouse(List<CheckedProduct> products, List<Thing> things, List<Diagnostic> diagnostics) {
    public CheckedHouse {
        products = List.copyOf(products);
        things = List.copyOf(things);
        diagnostics = List.copyOf(diagnostics);
    }

    /** Whether nothing forbids to publish. */
    public boolean holds() {
        return diagnostics.stream().noneMatch(d -> d.severity() == Severity.ERROR);
    }
}
