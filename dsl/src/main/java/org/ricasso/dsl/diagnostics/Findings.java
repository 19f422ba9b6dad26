package org.ricasso.dsl.diagnostics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import org.ricasso.dsl.source.Span;

/** Collects what a stage finds. A place that has an error gets no second one of the same name. */
public final class Findings {
    private final List<Diagnostic> found = new ArrayList<>();
    private final Predicate<String> lost;

    public Findings() {
        this(name -> false);
    }

    /** @param lost whether a name's declaration may have been lost where a text could not be read */
    public Findings(Predicate<String> lost) {
        this.lost = lost;
    }

    /** Whether a name's declaration may have been lost where a text could not be read. */
    public Predicate<String> lost() {
        return lost;
    }

    public void add(Diagnostic diagnostic) {
        for (Diagnostic other : found) {
            if (other.name().equals(diagnostic.name()) && other.primary().span().equals(diagnostic.primary().span())) {
                return;
            }
        }
        found.add(diagnostic);
    }

    public void addAll(Collection<Diagnostic> diagnostics) {
        diagnostics.forEach(this::add);
    }

    public void error(String name, Span span, String text) {
        add(Diagnostic.error(name, new Mark(span, text)));
    }

    /** An unknown name, with the names near it; the nearest is a remedy that can be applied. */
    public void unknownName(Span span, String what, String name, Collection<String> known) {
        if (lost.test(name)) {
            return;
        }
        Diagnostic diagnostic = Diagnostic.error("unknown-name", new Mark(span, "no " + what + " is named " + name));
        for (String one : Nearest.to(name, known)) {
            // only the one that is nearer than all others is a change to be made without a second thought
            diagnostic = diagnostic.remedy(Nearest.only(name, known).equals(one)
                    ? new Remedy("write " + one, List.of(new Edit(span, one))) : new Remedy("or is it " + one, List.of()));
        }
        add(diagnostic);
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    public int count() {
        return found.size();
    }

    public List<Diagnostic> all() {
        return List.copyOf(found);
    }
}
