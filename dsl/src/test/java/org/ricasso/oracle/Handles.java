package org.ricasso.oracle;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What the handle's material stands, by the reference's table of handle materials and R39, R51, R55, R68. */
final class Handles {
    private static final Map<String, Map<String, String>> MATERIALS = Table.rows("handle-materials.csv").stream()
            .collect(Collectors.toMap(r -> r.get("material"), Function.identity()));
    /** Our short names. */
    private static final Map<String, String> NAMES = Map.ofEntries(Map.entry("pom", "POM copolymer (acetal)"),
            Map.entry("pom-homopolymer", "POM homopolymer"), Map.entry("abs", "ABS"), Map.entry("pa66", "PA66 unfilled"),
            Map.entry("pa66-glass", "PA66 with 30-33 % glass fibre"), Map.entry("pp", "PP"), Map.entry("tpe", "TPE/TPS soft grip"),
            Map.entry("walnut", "walnut (black)"), Map.entry("beech", "beech (European/American)"), Map.entry("olive", "olive wood"),
            Map.entry("oak", "oak (smoked)"), Map.entry("densified-beech", "resin-impregnated densified beech (compreg)"),
            Map.entry("veneer-laminate", "coloured resin-impregnated veneer laminate"),
            Map.entry("cotton-phenolic", "cotton-cloth phenolic laminate (NEMA C/CE)"),
            Map.entry("linen-phenolic", "linen-cloth phenolic laminate (NEMA L/LE)"),
            Map.entry("glass-epoxy", "glass-cloth epoxy laminate (NEMA G-10/FR-4 type)"),
            Map.entry("glass-phenolic", "glass-filled phenolic moulding"), Map.entry("stainless-shell", "stainless steel (hollow handle)"));
    private static final List<String> BATHS = List.of("wash", "ultrasonic-wash", "passivate", "deburr", "corrosion-test");

    private Handles() {}

    static void judge(Reading reading) {
        Job job = reading.job;
        Map<String, String> material = MATERIALS.get(NAMES.getOrDefault(job.word("handle.material"), ""));
        if (material == null) {
            reading.add("handle", true, -1, "handle.material", "nothing is known of " + job.word("handle.material"));
            return;
        }
        String dishwasher = material.get("dishwasher_ok");
        if (job.word("wash").equals("dishwasher") && !dishwasher.equals("yes")) {
            reading.add("R39", true, -1, "wash", "dishwasher: " + dishwasher);
        }
        boolean mounted = false;
        boolean activated = false;
        for (int i = 0; i < job.steps().size(); i++) {
            Job.Step step = job.steps().get(i);
            if (mounted && BATHS.contains(step.operation())) {
                bath(reading, i, step, material);
            }
            mounted |= reading.operation(i).leaves().containsKey("mount");
            activated |= step.operation().equals("plasma-treat");
            if (step.operation().equals("pad-print") && job.word("mark.on").equals("handle")
                    && material.get("class").equals("thermoplastic") && !activated) {
                reading.add("R46", i, "", "ink does not hold on an untreated handle");
            }
            switch (step.operation()) {
                case "mould-handle" -> mould(reading, i, step, material);
                case "rivet-scales" -> rivet(reading, i, step, material);
                case "bond-scales", "bond-hidden-tang" -> {
                    String before = material.get("bond_pretreatment");
                    if (before.startsWith("not bondable") || before.startsWith("flame") || material.get("class").equals("elastomer")) {
                        reading.add("OP430", i, "", "glue does not hold on it");
                    }
                }
                case "weld-handle" -> {
                    if (!material.get("class").equals("metal")) {
                        reading.add("OP470", i, "", "only metal is welded on");
                    }
                }
                case "oil-handle" -> {
                    if (!material.get("class").equals("wood")) {
                        reading.add("OP510", i, "", "only wood takes oil");
                    }
                }
                case "grind-handle" -> warm(reading, i, "handle-heat", Double.parseDouble(material.get("max_service_C")), "R55");
                default -> { }
            }
        }
    }

    private static void bath(Reading reading, int i, Job.Step step, Map<String, String> material) {
        if (material.get("hygroscopic").equals("yes")) {
            reading.add("R39", i, "", "the handle drinks");
        } else {
            warm(reading, i, "temperature", Double.parseDouble(material.get("wash_limit_C")), "R39");
        }
    }

    private static void warm(Reading reading, int i, String setting, double limit, String rule) {
        Figure.Number set = reading.job.steps().get(i).number(setting, "°C");
        if (set != null && set.most() > limit + 1e-9) {
            reading.add(rule, i, setting, set.most() + " °C is more than the handle's " + limit);
        }
    }

    private static void mould(Reading reading, int i, Job.Step step, Map<String, String> material) {
        range(reading, i, step, "melt-at", material.get("mould_melt_C"), "R68");
        range(reading, i, step, "mould-at", material.get("mould_temp_C"), "OP450");
    }

    private static void range(Reading reading, int i, Job.Step step, String setting, String window, String rule) {
        Figure.Number set = step.number(setting, "°C");
        if (!window.matches("\\d+-\\d+")) {
            reading.add("OP450", i, "", "it is not moulded on a tang so");
        } else if (set != null) {
            double least = Double.parseDouble(window.split("-")[0]);
            double most = Double.parseDouble(window.split("-")[1]);
            if (set.least() < least - 1e-9 || set.most() > most + 1e-9) {
                reading.add(rule, i, setting, set.least() + ".." + set.most() + " °C is outside " + window);
            }
        }
    }

    /** R51: the press does not crush the scale under the head. */
    private static void rivet(Reading reading, int i, Job.Step step, Map<String, String> material) {
        if (material.get("class").equals("elastomer")) {
            reading.add("OP440", i, "", "no scale is made of it");
        }
        String rivet = step.settings().get("rivet") instanceof Figure.Word w ? w.word() : reading.job.word("handle.rivets.rivet");
        Figure.Number head = reading.job.thing(rivet, "head", "mm");
        Figure.Number force = step.number("force", "N");
        String strength = material.get("compressive_strength_MPa");
        if (head != null && force != null && strength.matches("[\\d.]+")
                && force.middle() > Double.parseDouble(strength) * Math.PI / 4 * head.middle() * head.middle()) {
            reading.add("R51", i, "force", force.middle() + " N crush it");
        }
    }
}
