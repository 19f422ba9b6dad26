package org.ricasso.oracle;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Sizes carried by hand: what sets a size replaces it and must find it larger, what takes off or adds is counted, and what
 * the knife ends with must lie within what is asked. In millimetres, ends of tolerances; scatter of machines is left to {@link Centres}.
 */
final class Sizes {
    private static final double EPS = 1e-6;
    /** Straightness with which a blade may be cut, milled and ground (needs of OP140 before OP100, of OP160, OP260 and OP270). */
    private static final Map<String, Double> FLAT = Map.of("cut-outline", 0.5, "soft-pregrind", 0.5, "grind-tang", 0.5, "flat-grind", 0.5,
            "taper-grind", 0.4, "hollow-grind", 0.4);
    private static final Map<String, String> MEASURED = Map.of("edge-thickness", "edge", "tang-thickness", "tang", "bolster-length",
            "bolster", "height", "height", "length", "length");
    /** More than so many times the size is not ground off. */
    private static final Map<String, Double> WORN = Map.of("tang", 2.0, "bolster", 2.0, "edge", 12.0);
    private final Reading reading;
    private final Map<String, Figure.Number> size = new LinkedHashMap<>();
    private final Skin skin = new Skin();
    private Figure.Number bow;

    private Sizes(Reading reading) {
        this.reading = reading;
    }

    static void judge(Reading reading) {
        new Sizes(reading).walk();
    }

    private void walk() {
        Job job = reading.job;
        Figure.Number stock = job.thing(job.word("stock"), "thickness", "mm");
        if (stock != null) {
            places().forEach(place -> size.put("spine " + place, stock));
            size.put("edge", stock);
            size.put("tang", stock);
            size.keySet().forEach(skin::start);
        }
        for (int i : job.unrolled()) {
            Double flat = FLAT.get(job.steps().get(i).operation());
            if (flat != null && bow != null && bow.most() > flat + EPS) {
                reading.add("flat", i, "", "the blade comes bowed by " + bow.most());
            }
            skin.heat(job.steps().get(i).operation(), job.thingWord(job.steps().get(i).centre(), "atmosphere"));
            step(i, job.steps().get(i));
            limits(i, job.steps().get(i));
        }
        for (String place : places()) {
            if (skin.of("spine " + place) > EPS) {
                reading.add("skin", -1, "blade.spine", skin.of("spine " + place) + " mm of soft skin stays on at " + place);
            }
        }
        within("spine", "blade.spine");
        within("edge", "blade.edge.behind");
        within("length", "blade.length");
        within("height", "blade.height");
        within("bolster", "bolster.length");
        within("angle", "blade.edge.each-side");
        within("grip", "handle.rivets.grip");
        within("scale", "handle.scales.thickness");
        within("counterbore", "handle.scales.counterbore");
        within("width", "handle.width");
        within("handle", "handle.length");
        within("depth", "blade.scallops.depth");
        within("teeth", "blade.edge.serrations.pitch");
        within("deep", "blade.edge.serrations.depth");
        Figure.Number asked = job.number("blade.straightness", "mm");
        if (asked != null && (bow == null || bow.most() > asked.most() + EPS)) {
            reading.add("OP220", -1, "blade.straightness", bow == null ? "nothing makes it straight at last" : "bow " + bow.most());
        }
    }

    private List<String> places() {
        return reading.job.spec().get("blade.spine") instanceof Figure.Along along ? along.places().keySet().stream().sorted().toList()
                : List.of("");
    }

    private void step(int i, Job.Step step) {
        switch (step.operation()) {
            case "forge" -> {
                along(i, step, false);
                set(i, step, "edge-to", "edge", false);
                set(i, step, "tang-to", "tang", false);
                set(i, step, "bolster-to", "bolster", false);
            }
            case "soft-pregrind" -> {
                along(i, step, true);
                set(i, step, "edge-to", "edge", true);
                set(i, step, "tang-to", "tang", true);
                set(i, step, "bolster-to", "bolster", true);
            }
            case "taper-grind", "hollow-grind" -> {
                along(i, step, true);
                set(i, step, "edge-to", "edge", true);
                bow = bowOf(step, 0.6);
            }
            case "flat-grind" -> {
                set(i, step, "thick-to", "tang", true);
                Figure.Number to = step.number("thick-to", "mm");
                if (to != null) {
                    size.replaceAll((k, v) -> {
                        if (!k.startsWith("spine") && !k.equals("edge") || v.most() <= to.most()) {
                            return v;
                        }
                        skin.off(k, (v.least() - to.most()) / 2);
                        return to;
                    });
                }
            }
            case "grind-tang" -> set(i, step, "tang-to", "tang", true);
            case "finish-bolster", "weld-bolster", "laser-weld-bolster" -> set(i, step, "bolster-to", "bolster",
                    step.operation().startsWith("finish"));
            case "cut-outline", "blank-strip", "laser-cut-outline" -> outline(step);
            case "grind-outline" -> {
                set(i, step, "height-to", "height", true);
                set(i, step, "length-to", "length", true);
            }
            case "sharpen-in-cell", "sharpen-on-stone" -> sharpened(i, step, 0.1, 0.4);
            case "sharpen-on-belt" -> sharpened(i, step, 0.1, 0.3);
            case "grind-serrations" -> {
                plain(step, "pitch-to", "teeth");
                plain(step, "deep-to", "deep");
                angle(step);
            }
            case "scallop" -> plain(step, "depth", "depth");
            case "satin-finish", "mirror-polish", "stonewash", "light-blast", "descale" -> off(step);
            case "harden", "harden-on-belt" -> {
                if (size.containsKey("edge") && size.get("edge").least() < 0.8 - EPS) {
                    reading.add("R15", i, "", "edge " + size.get("edge").least() + " mm goes into the furnace");
                }
                bow = bowOf(step, 1.2);
            }
            case "quench-gas", "quench-plates", "quench-oil" -> bow = bowOf(step, 0.6);
            case "trim-hot" -> bow = new Figure.Number(0, 1, 1.5, "mm");
            case "straighten", "clamp-temper", "flatten", "roll-flat" -> bow = step.number("bow-to", "mm");
            case "level-strip" -> {
                Figure.Number width = step.number("width-to", "mm");
                Figure.Number bought = reading.job.thing(reading.job.word("stock"), "width", "mm");
                if (width != null && bought != null && width.middle() > bought.most() + EPS) {
                    reading.add("OP090", true, i, "width-to", "the coil is " + bought.most() + " mm wide");
                }
            }
            case "test-hardness" -> {
                Figure.Number spot = step.number("spot-off", "mm");
                if (skin.of("tang") > (spot == null ? 0.15 : spot.least()) + EPS) {
                    reading.add("R23", true, i, "spot-off", skin.of("tang") + " mm of soft skin is deeper than what is ground off");
                }
            }
            case "make-scales" -> {
                plain(step, "thickness-to", "scale");
                plain(step, "counterbore-to", "counterbore");
            }
            case "rivet-scales", "bond-scales" -> grip(i, step);
            case "grind-handle", "turn-handle" -> plain(step, "width-to", "width");
            case "mould-handle" -> {
                plain(step, "length-to", "handle");
                Figure.Number shut = step.number("shut-off", "mm");
                Figure.Number tang = size.get("tang");
                if (shut != null && tang != null && (tang.least() < shut.least() - EPS || tang.most() > shut.most() + EPS)) {
                    reading.add("R52", i, "shut-off", "the tang is " + tang.least() + ".." + tang.most());
                }
            }
            case "weld-handle", "fit-wood" -> plain(step, "length-to", "handle");
            default -> { }
        }
    }

    /** What the centre is known to leave of bow. */
    private Figure.Number bowOf(Job.Step step, double usual) {
        Figure.Number known = reading.job.thing(step.centre(), "bow", "mm");
        return known != null ? known : new Figure.Number(0, usual / 2, usual, "mm");
    }

    /** A limit that no piece can meet where it is measured. */
    private void limits(int i, Job.Step step) {
        step.measures().forEach((measured, figure) -> {
            Figure.Number limit = figure instanceof Figure.Number n ? n.in("mm") : null;
            boolean ofBlade = reading.operation(i).part().equals("blade");
            Figure.Number found = measured.equals("straightness") ? bow : ofBlade ? size.get(MEASURED.getOrDefault(measured, "")) : null;
            if (measured.equals("width")) {
                found = size.get("width");
            }
            if (measured.equals("spine")) {
                found = size.get("spine heel");
            }
            if (limit != null && found != null && (found.least() > limit.most() + EPS || found.most() < limit.least() - EPS)) {
                reading.add("measured", i, measured, "is " + found.least() + ".." + found.most() + " where " + limit.least() + ".."
                        + limit.most() + " is allowed");
            }
        });
    }

    private void outline(Job.Step step) {
        Figure.Number more = step.number("allowance", "mm");
        double least = more == null ? 0 : more.least();
        double most = more == null ? 0 : more.most();
        for (String of : List.of("length", "height")) {
            Figure.Number asked = reading.job.number("blade." + of, "mm");
            if (asked != null) {
                size.put(of, new Figure.Number(asked.middle() + least, asked.middle() + (least + most) / 2, asked.middle() + most, "mm"));
            }
        }
    }

    private void sharpened(int i, Job.Step step, double least, double most) {
        Figure.Number off = step.number("height-off", "mm");
        Figure.Number height = size.get("height");
        if (height != null) {
            size.put("height", new Figure.Number(height.least() - (off == null ? most : off.most()), height.middle(),
                    height.most() - (off == null ? least : off.least()), "mm"));
        }
        if (size.containsKey("edge") && size.get("edge").most() > 0.6 + EPS) {
            reading.add("OP520", i, "", "the edge is " + size.get("edge").most() + " mm thick before sharpening");
        }
        angle(step);
    }

    private void angle(Job.Step step) {
        Figure.Number angle = step.number("angle-to", "°");
        size.remove("angle");
        if (angle != null) {
            size.put("angle", angle);
        }
    }

    private void along(int i, Job.Step step, boolean down) {
        if (step.settings().get("spine-to") instanceof Figure.Along along) {
            along.places().forEach((place, number) -> put(i, "spine-to", "spine " + place, number.in("mm"), down));
        }
    }

    private void set(int i, Job.Step step, String setting, String of, boolean down) {
        put(i, setting, of, step.number(setting, "mm"), down);
    }

    private void put(int i, String setting, String of, Figure.Number to, boolean down) {
        if (to == null) {
            return;
        }
        Figure.Number from = size.get(of);
        // an outline is ground to a template: where nothing is left nothing is ground
        boolean outline = setting.startsWith("height") || setting.startsWith("length");
        if (down && from != null && (outline ? from.middle() < to.middle() - EPS : from.least() < to.most() - EPS)) {
            reading.add("stock", i, setting, of + " comes with " + from.least() + " mm at least, " + to.most() + " is to be left");
        }
        if (down && from != null && WORN.containsKey(of) && from.middle() > WORN.get(of) * to.middle()) {
            reading.add("stock", i, setting, of + " comes with " + from.middle() + " mm, " + to.middle() + " is to be left");
        }
        if (down && from != null) {
            skin.off(of, (from.least() - to.most()) / 2);
        }
        size.put(of, to);
    }

    private void plain(Job.Step step, String setting, String of) {
        Figure.Number to = step.number(setting, "mm");
        size.remove(of);
        if (to != null) {
            size.put(of, to);
        }
    }

    /** What is taken off both faces. */
    private void off(Job.Step step) {
        Figure.Number off = step.number("off", "mm");
        double[] usual = switch (step.operation()) {
            case "descale" -> new double[] {0.01, 0.03};
            case "mirror-polish" -> new double[] {0.003, 0.015};
            case "light-blast" -> new double[] {0.002, 0.010};
            default -> new double[] {0.001, 0.004};
        };
        double least = off == null ? usual[0] : off.least();
        double most = off == null ? usual[1] : off.most();
        // shot and beads reach the tang, belts and stones are kept off it
        boolean tang = step.operation().equals("descale") || step.operation().equals("light-blast");
        size.keySet().forEach(of -> skin.off(of, of.equals("tang") && !tang ? 0 : least));
        size.replaceAll((k, v) -> k.startsWith("spine") || k.equals("edge")
                ? new Figure.Number(v.least() - 2 * most, v.middle() - least - most, v.most() - 2 * least, "mm") : v);
    }

    private void grip(int i, Job.Step step) {
        Figure.Number scale = size.get("scale");
        Figure.Number bore = size.get("counterbore");
        Figure.Number tang = size.get("tang");
        if (scale == null || bore == null || tang == null) {
            return;
        }
        double glue = step.operation().equals("bond-scales") ? 0.2 : 0;
        Figure.Number grip = new Figure.Number(2 * (scale.least() - bore.most()) + tang.least(), 0,
                2 * (scale.most() - bore.least()) + tang.most() + glue, "mm");
        size.put("grip", grip);
        String rivet = step.settings().get("rivet") instanceof Figure.Word w ? w.word() : reading.job.word("handle.rivets.rivet");
        Figure.Number takes = reading.job.thing(rivet, "grip", "mm");
        if (step.operation().equals("rivet-scales") && takes != null
                && (grip.least() < takes.least() - EPS || grip.most() > takes.most() + EPS)) {
            reading.add("R48", i, "rivet", "the stack is " + grip.least() + ".." + grip.most() + ", the pair takes " + takes.least() + ".."
                    + takes.most());
        }
    }

    /** Whether the size that is left lies in the limit that is asked, with its tolerances. */
    private void within(String of, String path) {
        if (reading.job.spec().get(path) instanceof Figure.Along along) {
            along.places().forEach((place, limit) -> within(of + " " + place, path, limit.in("mm")));
        } else {
            within(of, path, reading.job.number(path, path.equals("blade.edge.each-side") ? "°" : "mm"));
        }
    }

    private void within(String of, String path, Figure.Number limit) {
        Figure.Number found = size.get(of);
        if (limit != null && found != null && (found.least() < limit.least() - EPS || found.most() > limit.most() + EPS)) {
            reading.add("size", -1, path, of + " ends with " + found.least() + ".." + found.most() + ", asked " + limit.least() + ".."
                    + limit.most());
        }
    }
}
