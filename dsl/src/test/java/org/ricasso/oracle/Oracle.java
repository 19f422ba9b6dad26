package org.ricasso.oracle;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a route as the reference is written and says what is wrong with it. */
public final class Oracle {
    private Oracle() {}

    /** What of a job is not as the reference asks; nothing where the knife is sound. */
    public static List<Violation> judge(Job job) {
        Reading reading = new Reading(job);
        conditions(reading);
        Order.judge(reading);
        Windows.judge(reading);
        Sizes.judge(reading);
        Demands.judge(reading);
        Steels.judge(reading);
        Handles.judge(reading);
        Centres.judge(reading);
        return reading.found();
    }

    /** Whether the reading knows an operation. */
    public static boolean knows(String operation) {
        return States.OPERATIONS.containsKey(operation);
    }

    /** The path in the spec of what a step of an operation measures under a name; null where nobody asks for it. */
    public static String characteristic(String operation, String measured) {
        String property = Demands.property(States.OPERATIONS.get(operation).part(), measured);
        return Demands.CHARACTERISTICS.entrySet().stream().filter(e -> e.getValue().equals(property)).map(Map.Entry::getKey).findFirst()
                .orElse(null);
    }

    /** The piece's conditions, step by step. */
    private static void conditions(Reading reading) {
        Map<String, String> piece = new LinkedHashMap<>(States.START);
        for (int i : reading.job.unrolled()) {
            Job.Step step = reading.job.steps().get(i);
            States.Operation operation = reading.operation(i);
            for (States.Need need : operation.needs()) {
                String found = piece.getOrDefault(need.of(), "");
                if (!need.isMet(found)) {
                    reading.add(need.rule(), i, "", step.operation() + " needs " + need.of() + (need.not() ? " not " : " ")
                            + String.join(" or ", need.words()) + ", it is " + found);
                }
            }
            boolean particles = step.operation().equals("check-cracks") && isYes(step, "particles");
            if (particles && !"clean_dry".equals(piece.get("clean"))) {
                reading.add("R24", i, "", "particles on a blade that is " + piece.get("clean"));
            }
            piece.putAll(operation.leaves());
            if (particles) {
                piece.put("mag", "magnetised");
            }
            if (step.operation().equals("stress-relieve") && isSoftened(step)) {
                piece.put("struct", "soft");
            }
        }
        end(reading, piece);
    }

    private static boolean isYes(Job.Step step, String setting) {
        return step.settings().get(setting) instanceof Figure.Word w && w.word().equals("yes");
    }

    /** Below the transformation what was hard beside a weld is tempered soft from 650 °C on (common practice). */
    private static boolean isSoftened(Job.Step relieved) {
        Figure.Number set = relieved.number("temperature", "°C");
        return set != null && set.least() >= 650;
    }

    /** What the knife must be like when it leaves. */
    private static void end(Reading reading, Map<String, String> piece) {
        must(reading, piece, "struct", "tempered", "R19");
        must(reading, piece, "packed", "yes", "R65");
        must(reading, piece, "mag", "demag", "R36");
        must(reading, piece, "handle", "finished", "R54");
        must(reading, piece, "clean", "clean_dry", "R63");
        must(reading, piece, "crack", "checked", "R22");
        must(reading, piece, "edge", "inspected", "R60");
        must(reading, piece, "trace", "recorded", "R01");
        mustNot(reading, piece, "seal", "soft", "R50");
        mustNot(reading, piece, "bond", "uncured", "R50");
        mustNot(reading, piece, "cond", "fresh", "OP480");
        mustNot(reading, piece, "mark", "wet-print", "R43");
        if (reading.job.spec().containsKey("handle.soft-grip")) {
            must(reading, piece, "grip-cover", "covered", "OP450");
        }
        if ("laser-annealed".equals(piece.get("mark"))) {
            must(reading, piece, "pass", "passive", "R44");
        }
        Map<String, String> finishes = Map.of("taper_ground", "ground", "flat_ground", "ground");
        String flank = piece.get("flank");
        String asked = reading.job.word("blade.finish");
        if (!asked.isEmpty() && !asked.equals(finishes.getOrDefault(flank, flank))) {
            reading.add("made", true, -1, "blade.finish", asked + " is asked for, the flanks are " + flank);
        }
        String method = reading.job.word("mark.method");
        if (!method.isEmpty() && !method.equals(piece.get("mark"))) {
            reading.add("made", true, -1, "mark.method", method + " is asked for, the mark is " + piece.get("mark"));
        }
    }

    private static void must(Reading reading, Map<String, String> piece, String of, String word, String rule) {
        if (!word.equals(piece.get(of))) {
            reading.add(rule, reading.job.steps().size() - 1, "", "the knife leaves with " + of + " " + piece.get(of));
        }
    }

    private static void mustNot(Reading reading, Map<String, String> piece, String of, String word, String rule) {
        if (word.equals(piece.get(of))) {
            reading.add(rule, reading.job.steps().size() - 1, "", "the knife leaves with " + of + " " + word);
        }
    }
}
