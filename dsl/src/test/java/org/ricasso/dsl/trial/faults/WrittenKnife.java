package org.ricasso.dsl.trial.faults;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A knife written out in full, with a route of its own: nothing is taken over, so that a fault is in one place.
 *
 * @param name the knife's name
 * @param title its title
 * @param spec what is written of each entry, by dotted path in the order of the text
 * @param parts the steps of parts with routes of their own, by the part's name
 * @param steps the steps in order
 * @param loops rework
 */
record WrittenKnife(String name, String title, Map<String, String> spec, Map<String, List<WrittenStep>> parts,
        List<WrittenStep> steps, List<Loop> loops) {

    /** Rework, by the ids of its steps. */
    record Loop(int from, int to, String when, int times) {}

    WrittenKnife {
        spec = new LinkedHashMap<>(spec);
        parts = new LinkedHashMap<>(parts);
        steps = List.copyOf(steps);
        loops = List.copyOf(loops);
    }

    /** The same with other steps; a loop whose step is gone goes with it. */
    WrittenKnife with(List<WrittenStep> other) {
        List<Integer> there = other.stream().map(WrittenStep::id).toList();
        return new WrittenKnife(name, title, spec, parts, other,
                loops.stream().filter(l -> there.contains(l.from()) && there.contains(l.to())).toList());
    }

    /** The same with a step written otherwise, be it a part's. */
    WrittenKnife with(WrittenStep step) {
        Map<String, List<WrittenStep>> otherParts = new LinkedHashMap<>();
        parts.forEach((part, of) -> otherParts.put(part, of.stream().map(s -> s.id() == step.id() ? step : s).toList()));
        return new WrittenKnife(name, title, spec, otherParts, steps.stream().map(s -> s.id() == step.id() ? step : s).toList(), loops);
    }

    WrittenKnife with(String path, String value) {
        Map<String, String> changed = new LinkedHashMap<>(spec);
        changed.put(path, value);
        return new WrittenKnife(name, title, changed, parts, steps, loops);
    }

    /** All steps, those of parts first. */
    List<WrittenStep> all() {
        List<WrittenStep> all = new ArrayList<>();
        parts.values().forEach(all::addAll);
        all.addAll(steps);
        return all;
    }

    WrittenStep step(int id) {
        return all().stream().filter(s -> s.id() == id).findFirst().orElseThrow();
    }

    int place(int id) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).id() == id) {
                return i;
            }
        }
        return -1;
    }
}
