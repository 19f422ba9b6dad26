package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which names an expression may use.
 *
 * @param settings settings by bare name, in the order of their slots
 * @param lets in-between values by bare name, in the order of their slots; grows while they are read
 * @param part the part whose properties are bare names, before those of the whole piece; or null
 * @param properties whether properties are bare names at all
 * @param self the kind whose entries are bare names, or null
 * @param roots the roots that may be used
 * @param attributes the operation's attributes for {@code operation.…}; null where it stands for any operation
 * @param limits whether the limits of characteristics may be read
 * @param anyStep whether {@code step.…} stands for the settings of any operation
 * @param given further names with the types of what the frame holds for them
 */
public record Scope(List<EntryType> settings, List<Let> lets, String part, boolean properties, String self,
        Set<String> roots, Map<String, Value> attributes, boolean limits, boolean anyStep,
        Map<String, Type> given) {
    public Scope {
        given = Map.copyOf(given);
    }

    public Scope(List<EntryType> settings, List<Let> lets, String part, boolean properties, String self, Set<String> roots,
            Map<String, Value> attributes, boolean limits, boolean anyStep) {
        this(settings, lets, part, properties, self, roots, attributes, limits, anyStep, Map.of());
    }

    /** An in-between value. */
    public record Let(String name, Type type) {}

    /** A scope with roots alone, in which the spec may not prove itself. */
    public static Scope made(Set<String> roots) {
        return new Scope(List.of(), new ArrayList<>(), null, false, null, roots, Map.of(), false, false);
    }

    /** A scope with roots alone. */
    public static Scope roots(Set<String> roots) {
        return new Scope(List.of(), new ArrayList<>(), null, false, null, roots, Map.of(), true, false);
    }
}
