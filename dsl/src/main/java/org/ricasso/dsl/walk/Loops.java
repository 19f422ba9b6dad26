package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.evaluate.Joins;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Route;

/** Work that is done again: loops of a route, unrolled while it is walked. */
final class Loops {
    private final Walk walk;
    private boolean again;

    Loops(Walk walk) {
        this.walk = walk;
    }

    /** Whether a step is walked again in a loop: what its page needs has been noted. */
    boolean again() {
        return again;
    }

    /** The loops that end at a step, the inner ones first: unrolled, and all ways out joined. */
    Value[] around(int base, int index, Value[] state) {
        Value[] joined = state;
        for (Route.Loop loop : walk.route.loops()) {
            if (base + loop.from() != index) {
                continue;
            }
            Value[] round = joined;
            for (int i = 0; i < loop.times(); i++) {
                boolean outer = again;
                again = true;
                for (int j = base + loop.to(); j <= index; j++) {
                    round = walk.step(j, round);
                }
                again = outer;
                Value[] both = joined(joined, round);
                if (walk.passes != null) {
                    walk.passes.joined(index, walk.steps.get(index), both, joined, round);
                }
                joined = both;
            }
            walk.after[index] = joined;
        }
        return joined;
    }

    private Value[] joined(Value[] a, Value[] b) {
        Value[] result = new Value[a.length];
        for (int slot = 0; slot < a.length; slot++) {
            result[slot] = Joins.join(a[slot], b[slot], walk.vocabulary.arithmetic());
        }
        return result;
    }

    /** Another round says only what the first one did not. */
    void onlyNew(int known) {
        List<Finding> earlier = walk.findings.subList(0, known);
        List<Finding> fresh = new ArrayList<>(walk.findings.subList(known, walk.findings.size()));
        fresh.removeIf(f -> earlier.stream().anyMatch(f::sameAs));
        walk.findings.subList(known, walk.findings.size()).clear();
        walk.findings.addAll(fresh);
    }
}
