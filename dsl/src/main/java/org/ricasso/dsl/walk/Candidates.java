package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.evaluate.Reads;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.vocabulary.Operation;

/** The settings whose values a property came from: those of the step that left it, then of the steps before it. */
final class Candidates {
    private static final int MOST = 8;
    private static final int DEEPEST = 3;

    private Candidates() {}

    /** Settings behind the last value of a property, as pairs of step and setting, the nearest first. */
    static List<int[]> settings(Walk walk, int slot) {
        List<int[]> found = new ArrayList<>();
        int change = walk.lastChange[slot];
        if (change >= 0) {
            collect(walk, change, slot, 0, found, new LinkedHashSet<>());
        }
        return found;
    }

    /** Settings behind a value that a step is about to leave. */
    static List<int[]> settings(Walk walk, int step, Operation.Leave leave) {
        List<int[]> found = new ArrayList<>();
        collect(walk, step, leave.reads(), 0, found, new LinkedHashSet<>());
        return found;
    }

    private static void collect(Walk walk, int step, int slot, int depth, List<int[]> found, Set<Integer> seen) {
        for (Operation.Leave leave : walk.steps.get(step).operation().leaves()) {
            if (leave.property().slot() == slot) {
                collect(walk, step, leave.reads(), depth, found, seen);
            }
        }
    }

    private static void collect(Walk walk, int step, Reads reads, int depth, List<int[]> found, Set<Integer> seen) {
        for (int setting : reads.settings) {
            boolean known = found.stream().anyMatch(f -> f[0] == step && f[1] == setting);
            if (!known && found.size() < MOST && walk.steps.get(step).places()[setting] != null
                    && walk.steps.get(step).settings()[setting] instanceof Value.Num) {
                found.add(new int[] {step, setting});
            }
        }
        if (depth == DEEPEST) {
            return;
        }
        for (int slot : reads.properties) {
            // the step that left it before this one
            for (int earlier = step - 1; earlier >= 0; earlier--) {
                Operation operation = walk.steps.get(earlier).operation();
                if (operation != null && operation.leaves().stream().anyMatch(l -> l.property().slot() == slot)) {
                    if (seen.add(earlier * 10_000 + slot)) {
                        collect(walk, earlier, slot, depth + 1, found, seen);
                    }
                    break;
                }
            }
        }
    }
}
