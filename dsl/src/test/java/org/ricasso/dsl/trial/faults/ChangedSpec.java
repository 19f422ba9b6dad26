package org.ricasso.dsl.trial.faults;

import static org.ricasso.dsl.trial.faults.Fault.places;
import static org.ricasso.dsl.trial.faults.Fault.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.ricasso.oracle.Figure;

/** Mistakes in what is asked of a knife: another grade, handle, thickness, finish, mark, and limits moved. */
final class ChangedSpec {
    private final WrittenKnife knife;
    private final List<Fault> faults = new ArrayList<>();

    private ChangedSpec(WrittenKnife knife) {
        this.knife = knife;
    }

    /** @param things names of steels and of materials for handles */
    static List<Fault> of(WrittenKnife knife, Random random, Map<String, List<String>> things) {
        ChangedSpec seeds = new ChangedSpec(knife);
        String stock = knife.spec().get("stock");
        for (String steel : some(things.get("steel"), random)) {
            seeds.change("grade", "blade.steel", steel, "grade " + steel + ", stock as it was");
            seeds.add("grade", "grade " + steel + ", stock too", knife.with("blade.steel", steel).with("stock",
                    Things.stockOf(stock, steel)), "blade.steel", "stock");
        }
        for (String material : some(things.get("material"), random)) {
            seeds.change("handle material", "handle.material", material, "handle of " + material);
        }
        for (String variant : Things.THICKNESSES) {
            seeds.change("thickness", "stock", stock + variant, "stock " + variant.substring(1));
        }
        for (String finish : List.of("ground", "satin", "mirror", "stonewashed")) {
            seeds.change("finish", "blade.finish", finish, "finish " + finish);
        }
        seeds.roughness();
        for (String method : List.of("laser-annealed", "laser-engraved", "etched", "printed")) {
            seeds.change("mark", "mark.method", method, "mark " + method);
        }
        seeds.limits();
        return seeds.faults;
    }

    /** About half of them. */
    private static List<String> some(List<String> all, Random random) {
        return all.stream().filter(one -> random.nextBoolean()).toList();
    }

    private void roughness() {
        if (knife.spec().containsKey("blade.roughness") && Plain.number(knife.spec().get("blade.roughness")) != null) {
            double most = Plain.number(knife.spec().get("blade.roughness")).most();
            change("finish", "blade.roughness", String.format(Locale.ROOT, "max %.3f µm", most / 3), "a third of the roughness");
            change("finish", "blade.roughness", String.format(Locale.ROOT, "max %.3f µm", most * 1.2), "rougher by a fifth");
        }
    }

    /** Limits of sizes and hardness: moved right off, narrowed to a tenth, widened a little. */
    private void limits() {
        for (String path : List.of("blade.length", "blade.height", "blade.edge.behind", "blade.edge.each-side", "bolster.length",
                "blade.hardness", "handle.width", "handle.length", "handle.rivets.grip", "handle.scales.thickness",
                "handle.scales.counterbore")) {
            Figure.Number limit = knife.spec().containsKey(path) ? Plain.number(knife.spec().get(path)) : null;
            if (limit == null || limit.most() == limit.least()) {
                continue;
            }
            double way = (limit.most() - limit.least()) / 2;
            limit("limit", path, limit, 3 * way, way, "limit moved up by three tolerances");
            limit("limit", path, limit, -3 * way, way, "limit moved down by three tolerances");
            limit("limit", path, limit, 0, way / 10, "a tenth of the tolerance");
            limit("limit within", path, limit, 0, 1.1 * way, "a little more tolerance");
        }
        if (Plain.figure(knife.spec().getOrDefault("blade.spine", "")) instanceof Figure.Along) {
            List<String> lines = knife.spec().get("blade.spine").lines().toList();
            for (double by : new double[] {0.4, -0.4}) {
                List<String> other = new ArrayList<>(lines);
                String[] cells = lines.get(2).split("\\|");
                Figure.Number here = Plain.number(cells[2].strip());
                other.set(2, cells[0] + "|" + cells[1] + "| " + text(here.middle() + by, (here.most() - here.least()) / 2, "mm") + " |");
                change("thickness", "blade.spine", String.join("\n", other), "spine " + by + " mm");
            }
        }
    }

    private void limit(String kind, String path, Figure.Number limit, double by, double way, String what) {
        change(kind, path, text(limit.middle() + by, way, limit.unit()), path + ": " + what);
    }

    private static String text(double middle, double way, String unit) {
        return unit.equals("HRC") ? String.format(Locale.ROOT, "%.1f..%.1f %s", middle - way, middle + way, unit)
                : String.format(Locale.ROOT, "%.3f ± %.3f %s", middle, way, unit);
    }

    private void change(String kind, String path, String value, String what) {
        if (knife.spec().containsKey(path) && !knife.spec().get(path).equals(value)) {
            add(kind, what, knife.with(path, value), path);
        }
    }

    private void add(String kind, String what, WrittenKnife changed, String... paths) {
        if (!changed.spec().equals(knife.spec())) {
            faults.add(new Fault(kind, what, changed, places(java.util.Arrays.stream(paths).map(p -> spec(p)).toArray(String[]::new)), true));
        }
    }
}
