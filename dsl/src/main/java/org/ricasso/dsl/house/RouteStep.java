package org.ricasso.dsl.house;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Operation;

/**
 * A step of a route with its names resolved.
 *
 * @param number its number
 * @param operation its operation, or null where that is not known
 * @param centre its work centre, or null
 * @param settings written settings in the order of the operation; null where the default stands
 * @param places where each is written; null where the default stands
 * @param measures properties that are measured
 * @param watches settings that are watched
 * @param span where the step is marked: its operation's name
 * @param head its number to its centre
 * @param numbered its number
 * @param whole its number to the end of its block
 * @param takenAt the {@code like} that takes it over, or null where the route itself writes it
 * @param own values that the route writes itself though it takes the step over
 * @param named other numbers by which routes that take it over name it
 * @param solves settings that are solved for; their values are unknown until the house has been solved
 */
public record RouteStep(int number, Operation operation, Thing centre, Value[] settings, Span[] places,
        List<Measure> measures, List<Watch> watches, Span span, Span head, Span numbered, Span whole, Span takenAt, Set<Span> own,
        Set<Span> named, List<Solve> solves) {
    public RouteStep {
        measures = List.copyOf(measures);
        watches = List.copyOf(watches);
        solves = List.copyOf(solves);
    }

    /** This step with a setting solved; {@code locked} is where the lock says so, or null. */
    public RouteStep solved(Solve solve, Value value, Span locked) {
        Value[] other = settings.clone();
        other[solve.setting()] = value;
        return new RouteStep(number, operation, centre, other, places, measures, watches, span, head, numbered, whole, takenAt,
                own, named, solves.stream().map(s -> s == solve ? s.at(locked) : s).toList());
    }

    /** This step with another number and other measurements. */
    public RouteStep with(int other, List<Measure> measured) {
        return new RouteStep(other, operation, centre, settings, places, measured, watches, span, head, numbered, whole, takenAt, own,
                named, solves);
    }

    /** What a setting is solved for, or null where it is not. */
    public Solve solve(int setting) {
        return solves.stream().filter(s -> s.setting() == setting).findFirst().orElse(null);
    }

    /** The {@code like} by which a value written at some place came into the route, or null where it is its own. */
    public Span takenAt(Span value) {
        return own.contains(value) ? null : takenAt;
    }

    /**
     * A measurement as written.
     *
     * @param property what is measured
     * @param entries the entries of kind {@code measurement}
     * @param limit the limit of an in-process characteristic, or null
     * @param span the property's name in the step
     * @param whole its name to the end of its block
     * @param places where the entries and the limit are written, by name; defaults have none
     */
    public record Measure(Property property, Value.Entries entries, Value limit, Span span, Span whole, Map<String, Span> places) {
        public Measure {
            places = Map.copyOf(places);
        }
    }

    /**
     * A setting that the step watches while it works: a process characteristic, whose limit is the setting with its tolerance.
     *
     * @param setting its index in the operation
     * @param entries the entries of kind {@code measurement}
     * @param span the setting's name where it is watched
     * @param places where the entries are written, by name; defaults have none
     */
    public record Watch(int setting, Value.Entries entries, Span span, Map<String, Span> places) {
        public Watch {
            places = Map.copyOf(places);
        }
    }
}
