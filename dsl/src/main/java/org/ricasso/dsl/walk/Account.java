package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.evaluate.Margin;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;

/**
 * How every value of a walked route came about. Each time that the workpiece goes through a step is a <em>pass</em> with a
 * key of its own: the step's number, with {@code /2} and so on where it comes by again; {@link #START} is the beginning.
 *
 * @param start what is known at the beginning
 * @param passes the passes in the order of the walk
 * @param end for each property's path the pass that left it last
 * @param judged the numbers that rules compared, in the order of the walk
 * @param axes how far the places of each axis are from its beginning, by its name and theirs
 */
public record Account(List<Left> start, List<Pass> passes, Map<String, String> end, List<Judged> judged,
        Map<String, Map<String, Computed>> axes) {
    /** The key of the beginning of a route. */
    public static final String START = "start";

    public Account {
        start = List.copyOf(start);
        passes = List.copyOf(passes);
        judged = List.copyOf(judged);
    }

    /**
     * A pass.
     *
     * @param key its key
     * @param index the step's place in the walk, from 0
     * @param step the step
     * @param joined whether no step was done, but the ways out of a loop that ends here were joined
     * @param defaults settings that are not written, by name
     * @param asked what the operation's needs asked of the piece, in their order
     * @param between in-between values by name, in their order
     * @param leaves what the pass left
     * @param setUp the time to set up, or null
     * @param run the time of the step, or null
     */
    public record Pass(String key, int index, RouteStep step, boolean joined, Map<String, Computed> defaults,
            List<Asked> asked, Map<String, Computed> between, List<Left> leaves, Computed setUp, Computed run) {
        public Pass {
            asked = List.copyOf(asked);
            leaves = List.copyOf(leaves);
        }
    }

    /**
     * A need of an operation.
     *
     * @param property the property
     * @param condition what is asked of it
     * @param left the pass that left the property as it was found
     */
    public record Asked(Property property, Computed condition, String left) {}

    /**
     * A property that a pass left.
     *
     * @param property the property
     * @param value what it was left at
     * @param computed the expression that says so; null where the pass left it in another way
     * @param from where no expression says so, the passes whose values are joined; of a clock that runs on, the pass before;
     *     null for a value that nothing says
     */
    public record Left(Property property, Value value, Computed computed, List<String> from) {
        public Left {
            from = Collections.unmodifiableList(new ArrayList<>(from));
        }
    }

    /**
     * The numbers that a rule compared on one subject.
     *
     * @param rule the rule's name
     * @param step the step's number, 0 for the product
     * @param between the rule's in-between values by name, in their order
     * @param sides the comparisons with their margins
     */
    public record Judged(String rule, int step, Map<String, Computed> between, List<Sides> sides) {
        public Judged {
            sides = List.copyOf(sides);
        }
    }

    /** Both sides of a comparison, and the margin between them. */
    public record Sides(Computed left, Computed right, Margin margin) {}
}
