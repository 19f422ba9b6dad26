package org.ricasso.oracle;

import java.util.List;
import java.util.Map;

/** Work centres and tools: the right kind, within their limits, for this knife. Machines warm the steel: R20. Belts: R30. */
final class Centres {
    /** Median grain in micrometres by P grade: ISO 6344-2 and -3. */
    private static final Map<Integer, Double> GRAIN = Map.ofEntries(Map.entry(60, 269.0), Map.entry(80, 201.0), Map.entry(100, 162.0),
            Map.entry(120, 125.0), Map.entry(150, 100.0), Map.entry(180, 82.0), Map.entry(220, 68.0), Map.entry(240, 58.5),
            Map.entry(280, 52.2), Map.entry(320, 46.2), Map.entry(360, 40.5), Map.entry(400, 35.0), Map.entry(500, 30.2),
            Map.entry(600, 25.8), Map.entry(800, 21.8), Map.entry(1000, 18.3));
    private static final List<String> LIMITED = List.of("temperature", "pressure", "force", "speed");
    private static final List<String> SIZED = List.of("edge-to", "tang-to", "angle-to");

    private Centres() {}

    static void judge(Reading reading) {
        Job job = reading.job;
        Figure.Number temper = null;
        for (int i = 0; i < job.steps().size(); i++) {
            Job.Step step = job.steps().get(i);
            kind(reading, i, step);
            tool(reading, i, step);
            if (step.operation().equals("temper")) {
                temper = step.number("temperature", "°C");
            } else if (step.operation().equals("temper-again") && temper != null) {
                Figure.Number again = step.number("temperature", "°C");
                if (again != null && again.middle() > temper.middle() + 1e-9) {
                    reading.add("R20", false, i, "temperature", "a second temper above the first");
                }
            } else if (temper != null) {
                warm(reading, i, step, temper.least() - 20);
            }
            if (step.operation().equals("satin-finish")) {
                belts(reading, i, step);
            }
        }
    }

    private static void kind(Reading reading, int i, Job.Step step) {
        Job job = reading.job;
        if (step.centre() == null) {
            return;
        }
        if (!reading.operation(i).centres().contains(job.thingWord(step.centre(), "is"))) {
            reading.add("centre", i, "at", step.operation() + " is not done at " + step.centre());
            return;
        }
        for (String setting : LIMITED) {
            if (step.settings().get(setting) instanceof Figure.Number set
                    && job.things().getOrDefault(step.centre(), Map.of()).get(setting) instanceof Figure.Number limit) {
                Figure.Number same = set.in(limit.unit());
                if (same != null && (same.least() < limit.least() - 1e-9 || same.most() > limit.most() + 1e-9)) {
                    reading.add("centre", i, setting, step.centre() + " runs at " + limit.least() + ".." + limit.most() + " " + limit.unit());
                }
            }
        }
        more(reading, i, step, "longest", job.number("blade.length", "mm"));
        Figure.Number bar = job.thingWord(job.word("stock"), "form").equals("bar") ? job.thing(job.word("stock"), "thickness", "mm") : null;
        Figure.Number takes = job.thing(step.centre(), "diameter", "mm");
        if (bar != null && takes != null && (bar.least() < takes.least() - 1e-9 || bar.most() > takes.most() + 1e-9)) {
            reading.add("centre", i, "at", step.centre() + " takes bar of " + takes.least() + ".." + takes.most() + " mm");
        }
        if (step.operation().endsWith("grind") || step.operation().equals("quench-plates")) {
            more(reading, i, step, "thickest", spine(job));
        }
        spread(reading, i, step);
    }

    private static Figure.Number spine(Job job) {
        return job.spec().get("blade.spine") instanceof Figure.Along along ? along.places().values().stream().map(n -> n.in("mm"))
                .max((a, b) -> Double.compare(a.middle(), b.middle())).orElse(null) : job.number("blade.spine", "mm");
    }

    private static void more(Reading reading, int i, Job.Step step, String limit, Figure.Number found) {
        Figure.Number most = reading.job.thing(step.centre(), limit, "mm");
        if (most != null && found != null && found.middle() > most.most() + 1e-9) {
            reading.add("centre", i, "at", found.middle() + " mm do not go into " + step.centre());
        }
    }

    /** A machine that spreads further than the tolerance cannot hold it. */
    private static void spread(Reading reading, int i, Job.Step step) {
        Figure.Number uniformity = reading.job.thing(step.centre(), "uniformity", "K");
        Figure.Number set = step.number("temperature", "°C");
        if (uniformity != null && set != null && set.most() > set.least() && (set.most() - set.least()) / 2 < uniformity.middle() - 1e-9) {
            reading.add("centre", i, "temperature", "the centre spreads by " + uniformity.middle() + " K");
        }
        for (String setting : SIZED) {
            boolean angle = setting.startsWith("angle");
            Figure.Number scatter = reading.job.thing(step.centre(), angle ? "angle-scatter" : "scatter", angle ? "°" : "mm");
            Figure.Number size = step.number(setting, angle ? "°" : "mm");
            if (scatter != null && size != null && size.most() > size.least()
                    && (size.most() - size.least()) / 2 < scatter.middle() - 1e-9) {
                reading.add("centre", i, setting, "the centre spreads by " + scatter.middle());
            }
        }
    }

    /** R20: steel that is tempered stays 20 K below its temper. */
    private static void warm(Reading reading, int i, Job.Step step, double limit) {
        Figure.Number heat = reading.job.thing(step.centre(), "piece-heat", "°C");
        if (step.operation().equals("cure-print") || step.operation().equals("cure") || step.operation().equals("passivate")
                || step.operation().endsWith("wash")) {
            heat = step.number("temperature", "°C");
        }
        if (step.operation().equals("weld-handle")) {
            heat = step.number("blade-heat", "°C");
        }
        if (heat != null && heat.most() > limit + 1e-9 && !step.operation().equals("clamp-temper")) {
            reading.add("R20", i, "temperature", "the steel gets " + heat.most() + " °C, at most " + limit);
        }
    }

    /** A tool must be there. Which models it fits is not read: a customer's knife is made with the tools of the one it is like. */
    private static void tool(Reading reading, int i, Job.Step step) {
        for (String setting : List.of("die", "tool", "rolls")) {
            if (step.settings().get(setting) instanceof Figure.Word tool && !reading.job.things().containsKey(tool.word())) {
                reading.add("tool", i, setting, "there is no " + tool.word());
            }
        }
    }

    private static void belts(Reading reading, int i, Job.Step step) {
        Double before = null;
        String last = "";
        for (String setting : List.of("first", "second", "third", "last")) {
            if (step.settings().get(setting) instanceof Figure.Word belt) {
                Figure.Number grit = reading.job.thing(belt.word(), "grit", "");
                Double grain = grit == null ? null : GRAIN.get((int) grit.middle());
                if (grain == null) {
                    reading.add("tool", i, setting, "no belt " + belt.word());
                    return;
                }
                if (before != null && before / grain > 2.2) {
                    reading.add("R30", i, setting, "the grain falls by more than 2.2");
                }
                before = grain;
                last = belt.word();
            }
        }
        Figure.Number asked = reading.job.number("blade.roughness", "µm");
        Figure.Number leaves = reading.job.thing(last, "leaves", "µm");
        boolean polished = reading.last("mirror-polish", "stonewash") > i;
        if (asked != null && !polished && (leaves == null || leaves.most() > asked.most() + 1e-9)) {
            reading.add("size", -1, "blade.roughness", last + " leaves " + leaves);
        }
    }
}
