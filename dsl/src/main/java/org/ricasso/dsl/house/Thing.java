package org.ricasso.dsl.house;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.source.Span;

/**
 * A thing of a kind, with its entries resolved: inherited ones taken over, defaults filled in.
 *
 * <p>Things refer to each other, so entries are filled in once, after all things are known, and never changed after.
 */
public final class Thing {
    private final String kind;
    private final String name;
    private final String title;
    private final Span span;
    private final Span replaced;
    private Map<String, Value> entries = Map.of();
    private Map<String, Place> places = Map.of();

    public Thing(String kind, String name, String title, Span span) {
        this(kind, name, title, span, null);
    }

    /** @param replaced where the declaration stands that this one replaces, or null */
    public Thing(String kind, String name, String title, Span span, Span replaced) {
        this.kind = kind;
        this.name = name;
        this.title = title;
        this.span = span;
        this.replaced = replaced;
    }

    /** A thing of which nothing can be said, since the name that was written is a fault reported elsewhere. */
    static Thing unknown(String kind, String name, Set<String> entries, Span span) {
        Thing thing = new Thing(kind, name, name, span);
        Map<String, Value> unknown = new LinkedHashMap<>();
        entries.forEach(entry -> unknown.put(entry, new Value.Unknown("a fault reported elsewhere", true)));
        thing.fill(unknown, Map.of());
        return thing;
    }

    /** Sets the entries; called once by the loader. */
    void fill(Map<String, Value> resolved, Map<String, Place> where) {
        entries = Collections.unmodifiableMap(new LinkedHashMap<>(resolved));
        places = Collections.unmodifiableMap(new LinkedHashMap<>(where));
    }

    /** Says of an entry, given by its dotted path, that it is not known because of a fault that is reported; called by the loader. */
    void leaveOpen(String path) {
        fill(replaced(entries, path, new Value.Unknown("a fault reported elsewhere", true)), places);
    }

    /** A copy in which one entry, given by its dotted path, has another value. */
    public Thing with(String path, Value value) {
        Thing copy = new Thing(kind, name, title, span, replaced);
        copy.fill(replaced(entries, path, value), places);
        return copy;
    }

    private static Map<String, Value> replaced(Map<String, Value> entries, String path, Value value) {
        Map<String, Value> result = new LinkedHashMap<>(entries);
        int dot = path.indexOf('.');
        if (dot < 0) {
            result.put(path, value);
        } else {
            String first = path.substring(0, dot);
            Map<String, Value> inner = entries.get(first) instanceof Value.Entries block ? block.entries() : Map.of();
            result.put(first, new Value.Entries(replaced(inner, path.substring(dot + 1), value)));
        }
        return result;
    }

    public String kind() {
        return kind;
    }

    public String name() {
        return name;
    }

    /** Its title, or its name where none is written. */
    public String title() {
        return title;
    }

    /** Where it is declared. */
    public Span span() {
        return span;
    }

    /** Where the declaration stands that this one replaces, or null. */
    public Span replaced() {
        return replaced;
    }

    /** Whether it came with the tool or a library. */
    public boolean shipped() {
        return span.file().shipped();
    }

    /** Its entries in the order of the kind; a block is {@link Value.Entries}, a missing optional one is absent. */
    public Map<String, Value> entries() {
        return entries;
    }

    /** The places of written entries by dotted path; defaults have none. */
    public Map<String, Place> places() {
        return places;
    }

    /** The value at a dotted path, or {@link Value.Absent}. */
    public Value at(String path) {
        Map<String, Value> level = entries;
        int start = 0;
        while (true) {
            int dot = path.indexOf('.', start);
            Value value = level.get(dot < 0 ? path.substring(start) : path.substring(start, dot));
            if (value == null) {
                return new Value.Absent(path);
            }
            if (dot < 0) {
                return value;
            }
            if (value instanceof Value.Unknown) {
                return value;
            }
            if (!(value instanceof Value.Entries block)) {
                return new Value.Absent(path);
            }
            level = block.entries();
            start = dot + 1;
        }
    }

    /**
     * Where an entry stands.
     *
     * @param value the value as written
     * @param inheritedAt the {@code like} of the thing that inherits it, or {@code null} where it is written
     */
    public record Place(Span value, Span inheritedAt) {}

    /** Whether both are the same declared thing, be it with another entry in one of them. */
    public boolean isSame(Thing other) {
        return this == other || name.equals(other.name) && kind.equals(other.kind);
    }

    @Override
    public String toString() {
        return kind + " " + name;
    }
}
