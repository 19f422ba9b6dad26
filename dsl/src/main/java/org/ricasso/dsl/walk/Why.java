package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.evaluate.Derivation;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Reads;
import org.ricasso.dsl.evaluate.Trace;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.vocabulary.Operation;

/** Derivations on demand: the step that left a property is evaluated again, with a record of how. */
final class Why {
    private static final int DEEPEST = 4;
    private final Walk walk;

    Why(Walk walk) {
        this.walk = walk;
    }

    /** How the final value of a property came about, or null where no step left it. */
    Derivation property(int slot) {
        int change = walk.lastChange[slot];
        return change < 0 ? null : property(slot, change, 0);
    }

    private Derivation property(int slot, int index, int depth) {
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
            Value value = leave.value().eval(frame);
            List<Derivation> inputs = new ArrayList<>(frame.trace.finished());
            if (depth < DEEPEST) {
                earlier(leave.reads(), index, depth, inputs);
            }
            return new Derivation(leave.property().path() + " after step " + step.number() + " "
                    + step.operation().name(), value, "", inputs);
        }
        return null;
    }

    private void earlier(Reads reads, int index, int depth, List<Derivation> inputs) {
        for (int slot : reads.properties) {
            for (int i = index - 1; i >= 0; i--) {
                Operation operation = walk.steps.get(i).operation();
                if (operation != null && operation.leaves().stream().anyMatch(l -> l.property().slot() == slot)) {
                    inputs.add(property(slot, i, depth + 1));
                    break;
                }
            }
        }
    }
}
