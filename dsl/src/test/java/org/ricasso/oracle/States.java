package org.ricasso.oracle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What operations ask of the piece and leave of it, in the reference's words for its conditions. {@code states.csv} is made from
 * the columns {@code needs_before} and {@code leaves_after} of the reference's list of operations; where that gives a reason and no
 * need (only a magnetic blade wants demagnetising) it says nothing.
 */
final class States {
    /** A condition: the piece's {@code of} must, or must not, be one of the words. */
    record Need(String of, boolean not, List<String> words, String rule) {
        boolean isMet(String found) {
            return words.contains(found) != not;
        }
    }

    /**
     * An operation.
     *
     * @param op the reference's ids
     * @param centres kinds of work centres that it runs at
     * @param part what it works
     * @param makes what it sets, by the property's name
     * @param disturbs what it may change
     */
    record Operation(List<String> op, List<String> centres, String part, List<Need> needs, Map<String, String> leaves,
            List<String> makes, List<String> disturbs) {
        boolean changes(String property) {
            return makes.contains(property) || disturbs.contains(property);
        }
    }

    static final Map<String, Operation> OPERATIONS = read();
    static final Map<String, String> START = Map.ofEntries(Map.entry("shape", "stock"), Map.entry("struct", "soft"),
            Map.entry("temp", "ambient"), Map.entry("scale", "scale_free"), Map.entry("clean", "oily"),
            Map.entry("burr", "burr_free"), Map.entry("flank", "as_rolled"), Map.entry("edge", "none"),
            Map.entry("handle", "none"), Map.entry("mark", "none"), Map.entry("crack", "unchecked"),
            Map.entry("mag", "demag"), Map.entry("pass", "passive"), Map.entry("scales", "none"),
            Map.entry("oil", "unoiled"), Map.entry("holes", "no"), Map.entry("mount", "none"),
            Map.entry("grip-cover", "none"), Map.entry("block", "none"), Map.entry("ferrule", "none"));

    private States() {}

    private static Map<String, Operation> read() {
        Map<String, Operation> result = new LinkedHashMap<>();
        for (Map<String, String> row : Table.rows("states.csv")) {
            Map<String, String> leaves = new LinkedHashMap<>();
            for (String leave : list(row.get("leaves"), ";")) {
                String[] sides = leave.split("=", 2);
                leaves.put(sides[0], sides[1]);
            }
            List<String> op = list(row.get("op"), "\\|");
            List<Need> needs = new ArrayList<>();
            for (String need : list(row.get("needs"), ";")) {
                String[] at = need.split("@", 2);
                boolean not = at[0].contains("!=");
                String[] sides = at[0].split("!?=", 2);
                needs.add(new Need(sides[0], not, list(sides[1], "\\|"), at.length > 1 ? at[1] : op.get(0)));
            }
            result.put(row.get("operation"), new Operation(op, list(row.get("centres"), "\\|"), row.get("part"), needs, leaves,
                    list(row.get("makes"), ";"), list(row.get("disturbs"), ";")));
        }
        return result;
    }

    private static List<String> list(String cell, String between) {
        return cell.isEmpty() ? List.of() : Arrays.asList(cell.split(between));
    }
}
