package org.ricasso.plugin.report.replay;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which numbers of {@code house.json} have been accounted for; it finds those that have not. */
final class Numbers {
    /** What stands in an object and is accounted for on its own, not with the object. */
    private static final Set<String> ALONE = Set.of("found", "written", "takenOver", "default", "replaces");
    private final Set<JsonNode> whole = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Map<JsonNode, Set<String>> members = new IdentityHashMap<>();
    private final List<String> untold = new ArrayList<>();
    private int values;
    private int all;

    /** All numbers inside an object are accounted for, but those that stand alone. */
    void told(JsonNode object) {
        if (!object.isContainerNode()) {
            throw new IllegalArgumentException("a plain node may be one that others share");
        }
        whole.add(object);
    }

    /** One member of an object is accounted for, or the numbers of an array that is one. */
    void told(JsonNode object, String member) {
        members.computeIfAbsent(object, o -> new HashSet<>()).add(member);
    }

    /** Looks for all numbers below a node. */
    Numbers count(JsonNode house) {
        count(house, "", false);
        return this;
    }

    /** Where there is a number that nothing accounts for. */
    List<String> untold() {
        return untold;
    }

    /** How many values with bands or clocks there are. */
    int values() {
        return values;
    }

    /** How many numbers there are, of whatever meaning. */
    int all() {
        return all;
    }

    private void count(JsonNode node, String path, boolean inside) {
        if (node.isNumber()) {
            all++;
            if (!inside) {
                untold.add(path);
            }
            return;
        }
        boolean told = inside || whole.contains(node);
        if (node.isObject()) {
            values += node.has("aim") && node.has("unit") || node.has("atLeastSeconds") ? 1 : 0;
            Set<String> some = members.getOrDefault(node, Set.of());
            node.properties().forEach(e -> count(e.getValue(), path + "/" + e.getKey(),
                    told && !ALONE.contains(e.getKey()) || some.contains(e.getKey())));
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            count(node.get(i), path + "/" + i, told);
        }
    }
}
