package org.ricasso.oracle;

import java.util.List;
import java.util.Map;

/** Rules of order that are no condition of the piece: what follows what, and how often. */
final class Order {
    private static final List<String> HARDEN = List.of("harden", "harden-on-belt");
    private static final List<String> SHARPEN = List.of("sharpen-in-cell", "sharpen-on-belt", "sharpen-on-stone", "grind-serrations");
    private static final List<String> ON_FLANKS = List.of("taper-grind", "hollow-grind", "flat-grind", "satin-finish", "mirror-polish",
            "stonewash", "light-blast", "descale");

    /** Conditions that are measured under another name. */
    private static final Map<String, String> CONDITIONS = Map.of("edge-state", "edge", "cracks", "crack", "surface", "flank",
            "cleanness", "clean", "magnetism", "mag", "passivity", "pass", "colour", "flank");

    private Order() {}

    static void judge(Reading reading) {
        List<Job.Step> steps = reading.job.steps();
        for (int i = 0; i < steps.size(); i++) {
            String operation = steps.get(i).operation();
            String next = i + 1 < steps.size() ? steps.get(i + 1).operation() : "nothing";
            if (HARDEN.contains(operation) && !next.startsWith("quench-")) {
                reading.add("R17", i, "", "the quench must follow, " + next + " does");
            }
            if (operation.equals("etch-mark") && !next.equals("neutralise")) {
                reading.add("R44", i, "", "it must be neutralised at once, " + next + " follows");
            }
            if (SHARPEN.contains(operation) && !honed(steps, i)) {
                reading.add("R60", i, "", "honing must follow, " + next + " does");
            }
            if (ON_FLANKS.contains(operation) && reading.operation(i).part().equals("blade") && marked(reading, i)) {
                reading.add("R31", i, "", "takes steel off a marked blade");
            }
        }
        before(reading, "R28", reading.last("grind-outline"), reading.last("satin-finish", "mirror-polish"));
        before(reading, "R71", reading.last("scallop"), reading.last("mirror-polish"));
        int laser = reading.last("laser-mark");
        boolean proved = reading.last("passivate") > laser || steps.stream().skip(laser + 1L).anyMatch(s -> s.measures().containsKey("passivity"));
        if (laser >= 0 && !proved) {
            reading.add("R44", laser, "", "nothing shows that the marked steel resists rust");
        }
        for (Job.Loop loop : reading.job.loops()) {
            judge(reading, loop);
        }
    }

    /** Whether nothing but a way and a guard comes between sharpening and honing. */
    private static boolean honed(List<Job.Step> steps, int sharpened) {
        for (int i = sharpened + 1; i < steps.size(); i++) {
            String operation = steps.get(i).operation();
            if (operation.equals("hone") || SHARPEN.contains(operation)) {
                return true;
            }
            if (!operation.equals("transfer") && !operation.equals("guard-edge")) {
                return false;
            }
        }
        return false;
    }

    private static boolean marked(Reading reading, int step) {
        for (int i = step - 1; i >= 0; i--) {
            String operation = reading.job.steps().get(i).operation();
            if (operation.equals("strip-mark")) {
                return false;
            }
            if (List.of("etch-mark", "laser-mark", "laser-engrave").contains(operation)) {
                return true;
            }
        }
        return false;
    }

    /** The first must not come behind the second. */
    private static void before(Reading reading, String rule, int first, int second) {
        if (first >= 0 && second >= 0 && first > second) {
            reading.add(rule, first, "", "comes after " + reading.job.steps().get(second).operation());
        }
    }

    /** A piece goes back to where its fault can be mended, and what found it looks again. */
    private static void judge(Reading reading, Job.Loop loop) {
        if (loop.to() > loop.from() || loop.times() < 1 || loop.times() > 3) {
            reading.add("R66", loop.from(), "", "the loop does not go back, or not one to three times");
            return;
        }
        if (!reading.job.steps().get(loop.from()).measures().containsKey(loop.when())) {
            reading.add("R66", loop.from(), loop.when(), "what sends a piece back is not measured there");
        }
        boolean mends = false;
        for (int i = loop.to(); i <= loop.from(); i++) {
            mends |= reading.operation(i).changes(loop.when())
                    || reading.operation(i).leaves().containsKey(CONDITIONS.getOrDefault(loop.when(), loop.when()));
        }
        if (!mends) {
            reading.add("R66", loop.from(), "", "nothing in the loop can change " + loop.when());
        }
    }
}
