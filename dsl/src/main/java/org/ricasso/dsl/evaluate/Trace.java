package org.ricasso.dsl.evaluate;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Builds derivations while expressions are evaluated. */
public final class Trace {
    private final Deque<List<Derivation>> open = new ArrayDeque<>();

    public Trace() {
        open.push(new ArrayList<>());
    }

    void enter() {
        open.push(new ArrayList<>());
    }

    void leave(String text, Value value, String source) {
        List<Derivation> children = open.pop();
        open.peek().add(new Derivation(text, value, source, children));
    }

    /** Adds a finished derivation under the one that is open. */
    public void add(Derivation derivation) {
        open.peek().add(derivation);
    }

    /** What was evaluated at the outermost level, in order. */
    public List<Derivation> finished() {
        return List.copyOf(open.peek());
    }
}
