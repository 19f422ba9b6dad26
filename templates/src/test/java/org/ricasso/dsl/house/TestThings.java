package org.ricasso.dsl.house;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/** Things for tests that have no text to load them from. */
public final class TestThings {
    private TestThings() {}

    /** A thing all of whose entries are written. */
    public static Thing thing(String kind, String name, String title, Map<String, Value> entries) {
        return thing(kind, name, title, entries, Set.of());
    }

    /** @param byDefault paths of entries that nobody wrote */
    public static Thing thing(String kind, String name, String title, Map<String, Value> entries,
            Set<String> byDefault) {
        Span span = new Span(new SourceFile("test.ricasso", kind + " " + name, false), 0, kind.length());
        Thing thing = new Thing(kind, name, title, span);
        Map<String, Thing.Place> places = new LinkedHashMap<>();
        collect(places, "", entries, span, byDefault);
        thing.fill(entries, places);
        return thing;
    }

    private static void collect(Map<String, Thing.Place> places, String prefix, Map<String, Value> entries, Span span,
            Set<String> byDefault) {
        entries.forEach((name, value) -> {
            String path = prefix + name;
            if (!(value instanceof Value.Absent) && !byDefault.contains(path)) {
                places.put(path, new Thing.Place(span, null));
            }
            if (value instanceof Value.Entries block) {
                collect(places, path + ".", block.entries(), span, byDefault);
            }
        });
    }
}
