package org.ricasso.dsl.syntax;

import java.util.List;
import java.util.stream.Collectors;
import org.ricasso.dsl.source.Span;

/** Names joined by dots, at least one. */
public record Path(List<Name> names, Span span) {
    public Path {
        names = List.copyOf(names);
    }

    /** The names with dots between. */
    public String text() {
        return names.size() == 1 ? names.get(0).text()
                : names.stream().map(Name::text).collect(Collectors.joining("."));
    }
}
