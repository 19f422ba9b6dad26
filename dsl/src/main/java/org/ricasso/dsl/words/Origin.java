package org.ricasso.dsl.words;

import org.ricasso.dsl.source.Span;

/** Whose a text is: the works', ours, or a library's. Each begins languages for its own texts. */
final class Origin {
    static final String WORKS = "works";
    private static final String FOLDER = "ricasso/";

    private Origin() {}

    static String of(Span place) {
        if (!place.file().shipped()) {
            return WORKS;
        }
        int folder = place.file().name().indexOf(FOLDER);
        return folder < 0 ? "" : place.file().name().substring(0, folder);
    }
}
