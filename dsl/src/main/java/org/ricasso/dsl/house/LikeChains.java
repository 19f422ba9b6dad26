package org.ricasso.dsl.house;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.source.Limits;

/**
 * Which of the declarations that are {@code like} others stand too far from the first one to be followed there. Rings that
 * are not longer than the limit are not among them: they are another fault.
 */
final class LikeChains {
    private final Map<String, String> parents;

    /** @param parents by name, the name that it is like; without those that are like nothing */
    LikeChains(Map<String, String> parents) {
        this.parents = parents;
    }

    Set<String> tooDeep() {
        Set<String> result = new TreeSet<>();
        for (String name : parents.keySet()) {
            if (isTooDeep(name)) {
                result.add(name);
            }
        }
        return result;
    }

    /** Of those that are too deep the ones at which it begins, so that a chain is reported once. */
    Set<String> first(Set<String> tooDeep) {
        Set<String> result = new TreeSet<>();
        for (String name : tooDeep) {
            if (!tooDeep.contains(parents.get(name))) {
                result.add(name);
            }
        }
        // a long ring begins nowhere
        return result.isEmpty() && !tooDeep.isEmpty() ? Set.of(tooDeep.iterator().next()) : result;
    }

    private boolean isTooDeep(String name) {
        Set<String> seen = new HashSet<>();
        int count = 0;
        for (String at = name; parents.containsKey(at); at = parents.get(at)) {
            if (!seen.add(at)) {
                return false;
            }
            if (++count > Limits.LIKE) {
                return true;
            }
        }
        return false;
    }
}
