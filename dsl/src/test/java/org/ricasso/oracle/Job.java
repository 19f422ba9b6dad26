package org.ricasso.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A knife, its route and what the works has, as plain lists.
 *
 * @param number the knife's number
 * @param spec what is asked, by dotted path such as {@code blade.hardness}
 * @param steps the route's steps in order; those of parts with routes of their own come first
 * @param loops rework
 * @param things entries of stocks, centres, tools, belts and rivets, by name
 */
public record Job(String number, Map<String, Figure> spec, List<Step> steps, List<Loop> loops,
        Map<String, Map<String, Figure>> things) {

    /**
     * A step.
     *
     * @param operation the operation's id
     * @param centre the centre's name
     * @param settings what it is set to
     * @param measures the limit of each measured property, by its name; an empty word where the knife's own stands
     */
    public record Step(String operation, String centre, Map<String, Figure> settings, Map<String, Figure> measures) {
        Figure.Number number(String setting, String unit) {
            return settings.get(setting) instanceof Figure.Number n ? n.in(unit) : null;
        }
    }

    /** Rework from a step to an earlier one, by their places in the list. */
    public record Loop(int from, int to, String when, int times) {}

    /** The places of the steps as a piece meets them that goes through each loop as often as it may. */
    List<Integer> unrolled() {
        List<Integer> walked = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            walked.add(i);
            for (Loop loop : loops) {
                for (int times = 0; loop.from() == i && loop.to() <= i && times < Math.min(3, loop.times()); times++) {
                    for (int again = loop.to(); again <= i; again++) {
                        walked.add(again);
                    }
                }
            }
        }
        return walked;
    }

    String word(String path) {
        return spec.get(path) instanceof Figure.Word w ? w.word() : "";
    }

    Figure.Number number(String path, String unit) {
        return spec.get(path) instanceof Figure.Number n ? n.in(unit) : null;
    }

    Figure.Number thing(String name, String entry, String unit) {
        return things.getOrDefault(name, Map.of()).get(entry) instanceof Figure.Number n ? n.in(unit) : null;
    }

    String thingWord(String name, String entry) {
        return things.getOrDefault(name, Map.of()).get(entry) instanceof Figure.Word w ? w.word() : "";
    }
}
