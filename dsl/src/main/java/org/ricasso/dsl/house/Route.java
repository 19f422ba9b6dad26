package org.ricasso.dsl.house;

import java.util.List;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.source.Span;

/**
 * A product's route.
 *
 * @param steps its steps in order
 * @param parts parts that have routes of their own, which are walked first
 * @param loops rework
 */
public record Route(List<RouteStep> steps, List<PartRoute> parts, List<Loop> loops) {
    public Route {
        steps = List.copyOf(steps);
        parts = List.copyOf(parts);
        loops = List.copyOf(loops);
    }

    /** A route without steps. */
    public static final Route NONE = new Route(List.of(), List.of(), List.of());

    /** All steps: those of the parts' own routes first. */
    public List<RouteStep> all() {
        if (parts.isEmpty()) {
            return steps;
        }
        List<RouteStep> result = new java.util.ArrayList<>();
        parts.forEach(part -> result.addAll(part.steps()));
        result.addAll(steps);
        return result;
    }

    /** This route with one of {@link #all} its steps as given. */
    public Route with(int index, RouteStep step) {
        int left = index;
        List<PartRoute> others = new java.util.ArrayList<>();
        for (PartRoute part : parts) {
            others.add(new PartRoute(part.part(), with(part.steps(), left, step), part.span()));
            left -= part.steps().size();
        }
        return new Route(with(steps, left, step), others, loops);
    }

    private static List<RouteStep> with(List<RouteStep> steps, int index, RouteStep step) {
        List<RouteStep> result = new java.util.ArrayList<>(steps);
        if (index >= 0 && index < result.size()) {
            result.set(index, step);
        }
        return result;
    }

    /**
     * A part with a route of its own.
     *
     * @param part the part's name
     * @param steps its steps in order
     * @param span where the product's route says so
     */
    public record PartRoute(String part, List<RouteStep> steps, Span span) {
        public PartRoute {
            steps = List.copyOf(steps);
        }
    }

    /**
     * A loop: after the step {@code from} a piece whose property is not right goes back to the step {@code to}.
     *
     * @param from index of the step that finds it
     * @param to index of the step it goes back to
     * @param when the property that is not right
     * @param times how often a piece may go back
     * @param span where the loop is written
     */
    public record Loop(int from, int to, Property when, int times, Span span) {}
}
