package org.ricasso.dsl.trial.real;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.diagnostics.Severity;

/**
 * What is said of a mistake.
 *
 * @param name the finding's name
 * @param severity how grave it is
 * @param at the place that is marked first
 * @param marks further places, each of which must be marked
 * @param words stretches of what is said at the first place
 * @param reasons stretches of reasons, further findings and marks
 * @param remedies beginnings of remedies that are offered, in their order; each is written into the texts and leaves nothing to be found
 * @param advice beginnings of remedies that are only said
 */
record Said(String name, Severity severity, Place at, List<Place> marks, List<String> words, List<String> reasons, List<String> remedies,
        List<String> advice) {
    /**
     * A marked place.
     *
     * @param in a stretch of its line, or of the last line above it that begins a step, a thing or an entry's block
     * @param under what stands under the mark
     */
    record Place(String in, String under) {}

    /** An error at a place. */
    static Said error(String name, String in, String under) {
        return new Said(name, Severity.ERROR, new Place(in, under), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** A warning at a place. */
    static Said warning(String name, String in, String under) {
        return new Said(name, Severity.WARNING, new Place(in, under), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** A further mark. */
    Said mark(String in, String under) {
        List<Place> more = new ArrayList<>(marks);
        more.add(new Place(in, under));
        return new Said(name, severity, at, List.copyOf(more), words, reasons, remedies, advice);
    }

    /** Words and numbers of the message itself. */
    Said says(String... stretches) {
        return new Said(name, severity, at, marks, and(words, stretches), reasons, remedies, advice);
    }

    /** Words and numbers of its reasons. */
    Said because(String... stretches) {
        return new Said(name, severity, at, marks, words, and(reasons, stretches), remedies, advice);
    }

    /** Remedies that hold when they are written as they stand: all that are offered, in their order. */
    Said offers(String... begins) {
        return new Said(name, severity, at, marks, words, reasons, and(remedies, begins), advice);
    }

    /** Remedies in words, which only a person can carry out: all that are given, in their order. */
    Said advises(String... begins) {
        return new Said(name, severity, at, marks, words, reasons, remedies, and(advice, begins));
    }

    private static List<String> and(List<String> list, String... more) {
        List<String> result = new ArrayList<>(list);
        result.addAll(List.of(more));
        return List.copyOf(result);
    }
}
