package org.ricasso.dsl.walk;

import java.util.List;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Severity;
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
 */
record Finding(String name, Severity severity, Span primary, String text, List<Mark> others, List<String> because,
        List<String> sources, List<Attempt> attempts) {

    Finding {
        others = List.copyOf(others);
        because = List.copyOf(because);
        sources = List.copyOf(sources);
        attempts = List.copyOf(attempts);
    }

    Finding at(Span span, String what) {
        List<Mark> marks = new java.util.ArrayList<>(others);
        marks.removeIf(m -> m.span().equals(span));
        if (!span.equals(primary)) {
            marks.add(0, new Mark(primary, what));
        }
        return new Finding(name, severity, span, text, marks, because, sources, attempts);
    }

    Finding and(Mark mark) {
        List<Mark> marks = new java.util.ArrayList<>(others);
        marks.add(mark);
        return new Finding(name, severity, primary, text, marks, because, sources, attempts);
    }

    /** Whether two findings say the same of the same place, so that one walk's can be found in another's. */
    boolean sameAs(Finding other) {
        return name.equals(other.name) && primary.equals(other.primary);
    }

    /** A remedy to be tried. */
    sealed interface Attempt {
        /** Another value for one setting, as text. */
        record Setting(int step, int setting, String value) implements Attempt {}

        /** Another value for one entry of the product, as text. */
        record Entry(String path, String value) implements Attempt {}

        /** The best value for one of these settings, to be searched; {@code slot} is what it is to bring right. */
        record Search(List<int[]> settings, int slot) implements Attempt {}
    }
}
