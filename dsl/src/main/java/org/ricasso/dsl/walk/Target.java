package org.ricasso.dsl.walk;

import java.util.Set;
import org.ricasso.dsl.evaluate.Comparisons;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.vocabulary.Operation;

/**
 * What is to be so when a step comes.
 *
 * @param step the step's index among all steps; behind the last of its like for the end of the route
 * @param among a step among whose like the step is: a part's, or the route's own
 * @param from the first place at which the property is as it must not be: behind the step that left it so
 * @param slots properties of which one has to be otherwise
 * @param asked what the only one of them has to be, or null where that cannot be said
 */
record Target(int step, int among, int from, Set<Integer> slots, Value asked) {

    /** A need that is not met: a property and what it has to be. */
    record Unmet(int slot, Value asked) {}

    /** The target of a finding on a walk. */
    static Target of(Walk walk, Finding.Attempt.Rearrange attempt) {
        int among = Math.min(attempt.step(), walk.steps.size() - 1);
        int step = attempt.step();
        int slot = attempt.slots().iterator().next();
        if (step == walk.steps.size()) {
            // a part with a route of its own is done at the end of that
            Property property = walk.vocabulary.properties().get(slot);
            int end = 0;
            for (Route.PartRoute part : walk.route.parts()) {
                end += part.steps().size();
                if (part.part().equals(property.part()) && !part.steps().isEmpty()) {
                    among = end - 1;
                    step = end;
                    break;
                }
            }
        }
        int from = walk.route.begin(among);
        for (int i = step - 1; i >= from; i--) {
            if (changes(walk, i, attempt.slots())) {
                from = i + 1;
                break;
            }
        }
        return new Target(step, among, from, attempt.slots(), attempt.asked());
    }

    /** Whether a step changed one of some properties, as it was walked first. */
    static boolean changes(Walk walk, int step, Set<Integer> slots) {
        Operation operation = walk.steps.get(step).operation();
        return operation == null || operation.leaves().stream().map(l -> l.property().slot()).anyMatch(slot -> slots.contains(slot)
                && (walk.after[step][slot] instanceof Value.Clock || !walk.after[step][slot].equals(walk.before[step][slot])));
    }

    /** The piece as it comes to a place among the steps: behind the last of them as it leaves that. */
    Value[] comes(Walk walk, int index) {
        return index == walk.route.end(among) ? walk.after[index - 1] : walk.before[index];
    }

    /** What is wanted of another property at a place before. */
    Target other(int index, Unmet lacks) {
        return new Target(index, among, index, Set.of(lacks.slot()), lacks.asked());
    }

    /** Whether a state is as asked. */
    boolean isMet(Value[] state) {
        return asked == null || slots.stream().allMatch(slot -> isMet(state[slot]));
    }

    private boolean isMet(Value found) {
        if (found instanceof Value.Unknown) {
            return false;
        }
        try {
            Truth truth = Comparisons.meets(found, asked, false);
            return truth == Truth.ALL || found instanceof Value.Clock && truth == Truth.UNKNOWN;
        } catch (IllegalArgumentException outsideTheHardnessTable) {
            return false;
        }
    }
}
