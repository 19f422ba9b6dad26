package org.ricasso.dsl.evaluate;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.ricasso.dsl.source.Span;

/** Builds derivations while expressions are evaluated. */
public final class Trace {
    private final Deque<List<Derivation>> open = new ArrayDeque<>();

    private final boolean answersOnly;

    /** Records every expression. */
    public Trace() {
        this(false);
    }

    /** @param answersOnly whether only what tables and calculations answered is recorded */
    public Trace(boolean answersOnly) {
        this.answersOnly = answersOnly;
        open.push(new ArrayList<>());
    }

    void enter() {
        open.push(new ArrayList<>());
    }

    void leave(Span span, Value value, String source) {
        List<Derivation> children = open.pop();
        if (answersOnly && source.isEmpty()) {
            open.peek().addAll(children);
        } else {
            open.peek().add(new Derivation(Node.oneLine(span), value, source, children));
        }
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
