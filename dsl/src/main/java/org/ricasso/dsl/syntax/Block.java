package org.ricasso.dsl.syntax;

import java.util.List;
import org.ricasso.dsl.source.Span;

/** What stands between braces in a thing or a step. */
public record Block(List<Item> items, Span span) {
    public Block {
        items = List.copyOf(items);
    }

    /** A line of a block. */
    public sealed interface Item {
        Span span();

        /** {@code path: value} */
        record Entry(Path path, EntryValue value, Span span) implements Item {}

        /** {@code edge { … }} */
        record Nested(Name name, Block block, Span span) implements Item {}

        /** {@code route { … }} or {@code route like forged { … }}; {@code like} is null where none is written. */
        record Route(Name like, List<RouteItem> items, Span span) implements Item {
            public Route {
                items = List.copyOf(items);
            }
        }
    }
}
