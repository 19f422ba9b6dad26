package org.ricasso.dsl.walk;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.source.Span;

/**
 * Something found on a walk, before remedies are tried and findings on one value are put together.
 *
 * @param name its name
 * @param severity how grave it is
 * @param primary where to look first
 * @param text what is said there
 * @param others the other places
 * @param because reasons
 * @param sources sources
 * @param attempts remedies to be tried, in order
 * @param about properties that it speaks of, by slot, where several findings of a name may stand at one place
 * @param safety whether somebody may be hurt
 */
record Finding(String name, Severity severity, Span primary, String text, List<Mark> others, List<String> because,
        List<String> sources, List<Attempt> attempts, Set<Integer> about, boolean safety) {

    Finding {
        others = List.copyOf(others);
        because = List.copyOf(because);
        sources = List.copyOf(sources);
        attempts = List.copyOf(attempts);
        about = Collections.unmodifiableSet(new TreeSet<>(about));
    }

    Finding(String name, Severity severity, Span primary, String text, List<Mark> others, List<String> because,
            List<String> sources, List<Attempt> attempts) {
        this(name, severity, primary, text, others, because, sources, attempts, Set.of(), false);
    }

    Finding at(Span span, String what) {
        List<Mark> marks = new java.util.ArrayList<>(others);
        marks.removeIf(m -> m.span().equals(span));
        if (!span.equals(primary)) {
            marks.add(0, new Mark(primary, what));
        }
        return new Finding(name, severity, span, text, marks, because, sources, attempts, about, safety);
    }

    Finding and(Mark mark) {
        List<Mark> marks = new java.util.ArrayList<>(others);
        marks.add(mark);
        return new Finding(name, severity, primary, text, marks, because, sources, attempts, about, safety);
    }

    /** The same of some properties. */
    Finding about(Set<Integer> slots, boolean hurts) {
        return new Finding(name, severity, primary, text, others, because, sources, attempts, slots, hurts);
    }

    /** Whether settings are searched that bring a value right. */
    boolean isSearched() {
        return attempts.stream().anyMatch(Attempt.Search.class::isInstance);
    }

    /** Whether a step's need is not met. */
    boolean isOfNeed() {
        return attempts.stream().anyMatch(a -> a instanceof Attempt.Rearrange rearrange && rearrange.asked() != null
                && rearrange.slots().equals(about));
    }

    /** Whether two findings say the same of the same place, so that one walk's can be found in another's. */
    boolean sameAs(Finding other) {
        return name.equals(other.name) && primary.equals(other.primary) && about.equals(other.about);
    }

    /** A remedy to be tried. */
    sealed interface Attempt {
        /** Another value for one setting, as text. */
        record Setting(int step, int setting, String value) implements Attempt {}

        /** Another value for one entry of the product, as text. */
        record Entry(String path, String value) implements Attempt {}

        /** A measurement that names another thing; {@code place} is where the thing is named. */
        record Instead(Span measurement, Value.Entries entries, Span place, String text, String name) implements Attempt {}

        /** The best value for one of these settings, to be searched; {@code slot} is what it is to bring right. */
        record Search(List<int[]> settings, int slot) implements Attempt {}

        /** A measurement after step {@code last}; {@code early} is the step that measures too early, or -1. */
        record Measure(int slot, int last, int early) implements Attempt {}

        /**
         * Another step, or a step at another place, to be searched, so that a property is as asked.
         *
         * @param step the index of the step that asks; the number of steps for the end of the route
         * @param slots properties of which one has to be otherwise
         * @param asked what the only one of them has to be, or null where that cannot be said
         */
        record Rearrange(int step, Set<Integer> slots, Value asked) implements Attempt {
            public Rearrange {
                slots = Collections.unmodifiableSet(new TreeSet<>(slots));
            }
        }
    }
}
