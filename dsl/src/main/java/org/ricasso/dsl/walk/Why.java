package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.evaluate.Derivation;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Trace;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.vocabulary.Operation;

/**
 * Derivations on demand: the step that left a property is evaluated again, with a record of how. Of what a loop left, each
 * way out of it.
 */
final class Why {
    private static final int DEEPEST = 4;
    private final Passes passes;

    Why(Passes passes) {
        this.passes = passes;
    }

    /** How a property came about in a state of the walk, or null where no step left it. */
    Derivation property(int slot, Value[] state) {
        return property(slot, passes.leaver(state, slot), 0);
    }

    private Derivation property(int slot, String key, int depth) {
        Account.Pass pass = passes.pass(key);
        if (pass == null) {
            return null;
        }
        Account.Left left = pass.leaves().stream().filter(l -> l.property().slot() == slot).findFirst().orElseThrow();
        RouteStep step = pass.step();
        String text = left.property().path() + " after step " + step.number() + " " + step.operation().name();
        if (pass.joined()) {
            List<Derivation> ways = new ArrayList<>();
            left.from().forEach(way -> add(ways, property(slot, way, depth)));
            return new Derivation(text + ", straight on or after rework", left.value(), "", ways);
        }
        if (left.computed() == null) {
            Derivation started = property(slot, started(slot, key), depth);
            return new Derivation(text + ", at least", left.value(), "", started == null ? List.of() : List.of(started));
        }
        Frame frame = passes.frame(key);
        frame.trace = new Trace();
        Operation operation = step.operation();
        for (int i = 0; i < frame.lets.length; i++) {
            operation.lets().get(i).eval(frame);
        }
        Value value = left.computed().node().eval(frame);
        List<Derivation> inputs = new ArrayList<>(frame.trace.finished());
        frame.trace = null;
        frame.clearNotes();
        if (depth < DEEPEST) {
            Operation.Leave leave = operation.leaves().stream().filter(l -> l.property().slot() == slot).findFirst().orElseThrow();
            leave.reads().properties.forEach(read ->
                    add(inputs, property(read, passes.leaver(frame.before, read), depth + 1)));
        }
        return new Derivation(text + (key.contains("/") ? ", done again" : ""), left.value() instanceof Value.Clock ? left.value() : value, "", inputs);
    }

    /** The pass that a clock runs on from, behind all that only let it run. */
    private String started(int slot, String key) {
        Account.Pass pass = passes.pass(key);
        while (pass != null && !pass.joined()) {
            Account.Left left = pass.leaves().stream().filter(l -> l.property().slot() == slot).findFirst().orElseThrow();
            if (left.computed() != null) {
                break;
            }
            pass = passes.pass(left.from().get(0));
        }
        return pass == null ? null : pass.key();
    }

    private static void add(List<Derivation> inputs, Derivation derivation) {
        if (derivation != null) {
            inputs.add(derivation);
        }
    }
}
