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

    /** Where among {@link #all} the steps begin that are walked one after the other with the one of this index. */
    public int begin(int index) {
        int begin = 0;
        for (PartRoute part : parts) {
            if (index < begin + part.steps().size()) {
                return begin;
            }
            begin += part.steps().size();
        }
        return begin;
    }

    /** Behind which index among {@link #all} the steps end that are walked one after the other with the one of this index. */
    public int end(int index) {
        int end = 0;
        for (PartRoute part : parts) {
            end += part.steps().size();
            if (index < end) {
                return end;
            }
        }
        return end + steps.size();
    }

    /**
     * This route with one more step.
     *
     * @param among the index of a step among whose like it comes: a part's or the route's own
     * @param index the place among {@link #all} that it gets, at most behind the last of them
     */
    public Route inserted(int among, int index, RouteStep step) {
        int begin = begin(among);
        int own = begin - parts.stream().mapToInt(p -> p.steps().size()).sum();
        List<PartRoute> others = new java.util.ArrayList<>();
        int first = 0;
        for (PartRoute part : parts) {
            others.add(own < 0 && first == begin ? new PartRoute(part.part(), inserted(part.steps(), index - first, step),
                    part.span()) : part);
            first += part.steps().size();
        }
        if (own < 0) {
            return new Route(steps, others, loops);
        }
        int at = index - begin;
        return new Route(inserted(steps, at, step), parts, loops.stream().map(l -> new Loop(l.from() + (l.from() >= at ? 1 : 0),
                l.to() + (l.to() >= at ? 1 : 0), l.when(), l.times(), l.span(), l.numbers())).toList());
    }

    private static List<RouteStep> inserted(List<RouteStep> steps, int at, RouteStep step) {
        List<RouteStep> result = new java.util.ArrayList<>(steps);
        result.add(at, step);
        return result;
    }

    /** Whether a step of this index among {@link #all} is where a loop begins or ends. */
    public boolean isEndOfLoop(int index) {
        int own = index - parts.stream().mapToInt(p -> p.steps().size()).sum();
        return loops.stream().anyMatch(l -> l.from() == own || l.to() == own);
    }

    /** This route with a step taken from one place to another, where its number may be another. */
    public Route moved(int from, int to, RouteStep step) {
        int begin = begin(from);
        int own = begin - parts.stream().mapToInt(p -> p.steps().size()).sum();
        List<PartRoute> others = new java.util.ArrayList<>();
        int first = 0;
        for (PartRoute part : parts) {
            others.add(own < 0 && first == begin ? new PartRoute(part.part(), moved(part.steps(), from - first, to - first, step),
                    part.span()) : part);
            first += part.steps().size();
        }
        if (own < 0) {
            return new Route(steps, others, loops);
        }
        int begins = from - begin;
        int ends = to - begin;
        return new Route(moved(steps, begins, ends, step), parts, loops.stream().map(l -> new Loop(after(l.from(), begins, ends),
                after(l.to(), begins, ends), l.when(), l.times(), l.span(), l.numbers())).toList());
    }

    /** Where a step is after another one has moved. */
    private static int after(int index, int from, int to) {
        if (index == from) {
            return to;
        }
        return index > from && index <= to ? index - 1 : index < from && index >= to ? index + 1 : index;
    }

    private static List<RouteStep> moved(List<RouteStep> steps, int from, int to, RouteStep step) {
        List<RouteStep> result = new java.util.ArrayList<>(steps);
        result.remove(from);
        result.add(to, step);
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
     * @param numbers the places of the two numbers, that of {@code from} first
     */
    public record Loop(int from, int to, Property when, int times, Span span, List<Span> numbers) {
        public Loop {
            numbers = List.copyOf(numbers);
        }
    }
}
