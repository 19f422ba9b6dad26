package org.ricasso.dsl.walk;

import java.util.LinkedHashSet;
import java.util.Set;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Reads;
import org.ricasso.dsl.evaluate.Trace;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.vocabulary.Operation;

/**
 * What a finding on a property is known from: the steps behind it, as they were first walked, are evaluated again with a
 * record of tables and calculations. Unlike {@link Why} it needs nothing that the walk noted for it.
 */
final class Sources {
    private static final int DEEPEST = 4;
    private final Walk walk;
    private final Set<String> found = new LinkedHashSet<>();

    private Sources(Walk walk) {
        this.walk = walk;
    }

    /** The sources behind the final value of a property, the nearest first, each once. */
    static Set<String> of(Walk walk, int slot) {
        Sources sources = new Sources(walk);
        if (walk.lastChange[slot] >= 0) {
            sources.property(slot, walk.lastChange[slot], 0);
        }
        return sources.found;
    }

    private void property(int slot, int index, int depth) {
        RouteStep step = walk.steps.get(index);
        for (Operation.Leave leave : step.operation().leaves()) {
            if (leave.property().slot() != slot) {
                continue;
            }
            Frame frame = new Frame();
            frame.product = walk.product;
            frame.centre = step.centre();
            frame.settings = walk.settings[index];
            frame.before = walk.before[index];
            frame.trace = new Trace();
            frame.lets = new Value[step.operation().lets().size()];
            for (int i = 0; i < frame.lets.length; i++) {
                frame.lets[i] = step.operation().lets().get(i).eval(frame);
            }
            leave.value().eval(frame);
            frame.trace.finished().forEach(derivation -> found.addAll(derivation.sources()));
            if (depth < DEEPEST) {
                earlier(leave.reads(), index, depth);
            }
            return;
        }
    }

    private void earlier(Reads reads, int index, int depth) {
        for (int slot : reads.properties) {
            for (int i = index - 1; i >= 0; i--) {
                Operation operation = walk.steps.get(i).operation();
                if (operation != null && operation.leaves().stream().anyMatch(l -> l.property().slot() == slot)) {
                    property(slot, i, depth + 1);
                    break;
                }
            }
        }
    }
}
