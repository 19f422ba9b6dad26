package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Operation;

/** How a house uses its operations: where each stands in its routes, and which products share a step. */
final class Practice {
    private final House house;
    private final Takers shared;
    private Map<Operation, List<Use>> uses;
    private Map<Span, List<Thing>> takers;

    Practice(House house) {
        this.house = house;
        this.shared = new Takers(house, this);
    }

    /**
     * A step of some product's route, with its neighbours.
     *
     * @param before the step before it, or null
     * @param after the step after it, or null
     */
    record Use(Thing product, RouteStep before, RouteStep step, RouteStep after) {}

    /** What a change of a text means for all who take it over. */
    Takers shared() {
        return shared;
    }

    House house() {
        return house;
    }

    /** Where an operation is used, in the order of the products and their steps; a step that is taken over, once. */
    synchronized List<Use> uses(Operation operation) {
        if (uses == null) {
            read();
        }
        return uses.getOrDefault(operation, List.of());
    }

    /** The products whose routes hold the step that is written at a place. */
    synchronized List<Thing> takers(Span step) {
        if (takers == null) {
            read();
        }
        return takers.getOrDefault(step, List.of());
    }

    private void read() {
        uses = new LinkedHashMap<>();
        takers = new LinkedHashMap<>();
        house.routes().forEach((product, route) -> {
            route.parts().forEach(part -> read(product, part.steps()));
            read(product, route.steps());
        });
    }

    private void read(Thing product, List<RouteStep> steps) {
        for (int i = 0; i < steps.size(); i++) {
            RouteStep step = steps.get(i);
            List<Thing> known = takers.computeIfAbsent(step.head(), s -> new ArrayList<>());
            known.add(product);
            if (step.operation() != null) {
                uses.computeIfAbsent(step.operation(), o -> new ArrayList<>()).add(new Use(product,
                        i == 0 ? null : steps.get(i - 1), step, i + 1 == steps.size() ? null : steps.get(i + 1)));
            }
        }
    }
}
