package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A place that an expression reads.
 *
 * @param as the place as the expression writes it, on one line
 * @param from what stands at the root of the place
 * @param entry the dotted path of entries below it, or empty
 */
public record Input(String as, Source from, String entry) {

    /** What a place begins with. */
    public sealed interface Source {
        /** A setting of the step, by its index in the operation. */
        record Setting(int index) implements Source {}

        /** An in-between value, by its index. */
        record Between(int index) implements Source {}

        /** A property of the workpiece, before or after the step. */
        record State(Property property, boolean after) implements Source {}

        /** The product, the work centre or the operation, by the root's name; empty for the thing a rule speaks of. */
        record Root(String name) implements Source {}

        /** A named place along an axis, as a distance from its beginning. */
        record Station(Axis axis, String name) implements Source {}
    }

    /** The place one entry further down. */
    Input down(String as, String next) {
        return new Input(as, from, entry.isEmpty() ? next : entry + "." + next);
    }

    /** All that some expressions read, each way of writing it once, in the order of the text. */
    static List<Input> of(List<Node> nodes) {
        if (nodes.size() == 1) {
            return nodes.get(0).places();
        }
        Map<String, Input> result = new LinkedHashMap<>();
        nodes.forEach(node -> node.places().forEach(input -> result.putIfAbsent(input.as(), input)));
        return new ArrayList<>(result.values());
    }
}
