package org.ricasso.dsl.house;

import java.util.List;
import org.ricasso.dsl.syntax.RouteItem;

/** A route after inheritance: its steps in order, its loops, its parts with routes of their own. */
record ResolvedRoute(List<ResolvedStep> steps, List<RouteItem.Rework> loops, List<RouteItem.Part> parts) {
    ResolvedRoute {
        steps = List.copyOf(steps);
        loops = List.copyOf(loops);
        parts = List.copyOf(parts);
    }
}
