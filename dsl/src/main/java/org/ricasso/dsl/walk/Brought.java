package org.ricasso.dsl.walk;

import java.util.Optional;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Origin;
import org.ricasso.dsl.source.Span;

/**
 * Knowledge behind a step or a product that does not come with the tool.
 *
 * @param what its kind of declaration: {@code operation}, {@code table} (for rows put before it), {@code calculation}, or
 *     the kind of a thing
 * @param name its name
 * @param title its title
 * @param origin who brought it
 * @param place file and line, or the class of a calculation
 * @param replaces whether it stands in place of what comes with the tool
 */
public record Brought(String what, String name, String title, Origin origin, String place, boolean replaces) {

    /** A thing of a library, or one that stands in place of another; all other things are the works' own by nature. */
    public static Optional<Brought> of(Thing thing) {
        Origin origin = Origin.of(thing.span());
        boolean told = !origin.library().isEmpty() || thing.replaced() != null;
        return told ? Optional.of(new Brought(thing.kind(), thing.name(), thing.title(), origin, place(thing.span()),
                thing.replaced() != null)) : Optional.empty();
    }

    static String place(Span span) {
        return span.file().name() + ":" + span.line();
    }
}
