package org.ricasso.dsl.house;

import java.util.List;
import org.ricasso.dsl.syntax.RouteItem;

/**
 * A route with what it takes over merged in.
 *
 * @param steps its steps in order
 * @param loops its loops
 * @param parts the parts that have routes of their own
 */
record ResolvedRoute(List<ResolvedStep> steps, List<RouteItem.Rework> loops, List<Part> parts) {

    /** A route without anything. */
    static final ResolvedRoute NONE = new ResolvedRoute(List.of(), List.of(), List.of());

    ResolvedRoute {
        steps = List.copyOf(steps);
        loops = List.copyOf(loops);
        parts = List.copyOf(parts);
    }

    /**
     * A part with a route of its own.
     *
     * @param item where the route says so
     * @param steps the part's steps in order
     */
    record Part(RouteItem.Part item, List<ResolvedStep> steps) {
        Part {
            steps = List.copyOf(steps);
        }
    }
}
