package org.ricasso.dsl.diagnostics;

import java.util.Comparator;
import org.ricasso.dsl.source.Span;

/**
 * A marked place and what is special there.
 *
 * @param span the place
 * @param text what is said of it; stands alone
 */
public record Mark(Span span, String text) {
    /** By text and place in it. */
    static final Comparator<Mark> PLACES = Comparator.comparing((Mark mark) -> mark.span().file().name())
            .thenComparing(mark -> mark.span().start()).thenComparing(Mark::text);
    private static final String TAKEN = "taken over by ";

    /** The place where a thing takes over what is written elsewhere. */
    public static Mark taker(Span span, String thing) {
        return new Mark(span, TAKEN + thing + " here");
    }

    /** Whether this is a place where something is taken over. */
    public boolean isTaker() {
        return text.startsWith(TAKEN);
    }
}
