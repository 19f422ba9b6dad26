package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ricasso.dsl.source.Span;

/**
 * A line on the product along which numbers vary.
 *
 * @param name its name behind {@code along}
 * @param start the name of its beginning
 * @param end the name of its end
 * @param length where its length from the product is written, as an expression in the language
 * @param stations named places between, each with where its distance from the start is written, as an expression in the language
 */
public record Axis(String name, String start, String end, Span length, Map<String, Span> stations) {
    public Axis {
        stations = Collections.unmodifiableMap(new TreeMap<>(stations));
    }

    /** Whether a place along it has this name. */
    public boolean hasStation(String word) {
        return word.equals(start) || word.equals(end) || stations.containsKey(word);
    }

    /** The names of places along it, from its start. */
    public List<String> stationNames() {
        List<String> names = new ArrayList<>(stations.keySet());
        names.add(0, start);
        names.add(end);
        return names;
    }
}
