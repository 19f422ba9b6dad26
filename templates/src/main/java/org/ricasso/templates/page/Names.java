package org.ricasso.templates.page;

import java.util.Arrays;
import java.util.stream.Collectors;

/** Names of the language as words for people. */
final class Names {
    private Names() {}

    /** {@code since-quench} becomes {@code Since quench}. */
    static String label(String name) {
        return capital(name.replace('-', ' ').strip());
    }

    /** The text with a capital at its beginning. */
    static String capital(String text) {
        if (text.isEmpty()) {
            return text;
        }
        int first = text.offsetByCodePoints(0, 1);
        return text.substring(0, first).toUpperCase(java.util.Locale.ROOT) + text.substring(first);
    }

    /** A property's label: without its part where that is the one that is worked, or where it has none. */
    static String of(String path, String works) {
        int dot = path.indexOf('.');
        return dot > 0 && label(path.substring(0, dot)).equals(works) ? label(path.substring(dot + 1)) : path(path);
    }

    /** {@code blade.edge.each-side} becomes {@code Blade, edge, each side}. */
    static String path(String path) {
        return label(Arrays.stream(path.split("\\.")).map(p -> p.replace('-', ' ')).collect(Collectors.joining(", ")));
    }
}
