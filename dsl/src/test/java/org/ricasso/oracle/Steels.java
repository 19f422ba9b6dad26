package org.ricasso.oracle;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The steel: that of the stock, its windows in the table of grades, and the hardness that the points of the literature give. */
final class Steels {
    private static final Map<String, Map<String, String>> GRADES = Table.rows("grades.csv").stream()
            .collect(Collectors.toMap(r -> r.get("grade"), Function.identity(), (a, b) -> a));
    private static final String BLADE = "2-3 mm blade";
    /** Points of blades; of a steel that has none those of thicker pieces, since what hardens through thick does so thin. */
    private static final List<Map<String, String>> POINTS = points(Table.rows("tempering.csv"));

    private Steels() {}

    private static List<Map<String, String>> points(List<Map<String, String>> rows) {
        Set<String> blades = rows.stream().filter(r -> r.get("section").equals(BLADE)).map(r -> r.get("grade")).collect(Collectors.toSet());
        return rows.stream().filter(r -> r.get("section").equals(BLADE) || !r.get("section").isEmpty() && !blades.contains(r.get("grade"))
                && r.get("austenitise_C").matches("[0-9]+")).toList();
    }

    static void judge(Reading reading) {
        Job job = reading.job;
        String steel = job.word("blade.steel");
        String bought = job.thingWord(job.word("stock"), "steel");
        if (!bought.isEmpty() && !bought.equals(steel)) {
            reading.add("R01", true, -1, "blade.steel", steel + " is asked for, the stock is " + bought);
        }
        Map<String, String> grade = GRADES.get(steel);
        if (grade == null) {
            reading.add("R01", true, -1, "blade.steel", "nothing is known of " + steel);
            return;
        }
        for (int i = 0; i < job.steps().size(); i++) {
            Job.Step step = job.steps().get(i);
            switch (step.operation()) {
                case "harden" -> window(reading, i, grade, "austenitise_min_C", "austenitise_max_C", 10);
                // one to four minutes at heat: 1050..1080 °C for 1.4116, so 20 to 30 K more than in a batch
                case "harden-on-belt" -> window(reading, i, grade, "austenitise_min_C", "austenitise_max_C", 30);
                case "temper" -> window(reading, i, grade, "temper_min_C", "temper_max_C", 0);
                case "soft-anneal" -> window(reading, i, grade, "soft_anneal_min_C", "soft_anneal_max_C", 0);
                case "passivate" -> {
                    if (steel.startsWith("1.1") || steel.startsWith("1.2")) {
                        reading.add("R41", i, "", "acid on steel that is not stainless");
                    }
                }
                default -> { }
            }
        }
        hardness(reading, steel);
    }

    private static void window(Reading reading, int i, Map<String, String> grade, String least, String most, double more) {
        Figure.Number set = reading.job.steps().get(i).number("temperature", "°C");
        if (set == null || grade.get(least).isEmpty() || grade.get(most).isEmpty()) {
            return;
        }
        double from = Double.parseDouble(grade.get(least));
        double to = Double.parseDouble(grade.get(most)) + more;
        if (set.middle() < from - 1e-9 || set.middle() > to + 1e-9) {
            reading.add("grade", false, i, "temperature", set.middle() + " °C is outside " + from + ".." + to + " of "
                    + grade.get("grade"));
        }
    }

    /** From the points as quenched and as tempered, straight between them, over the tolerances of both temperatures. */
    private static void hardness(Reading reading, String steel) {
        Job job = reading.job;
        Figure.Number asked = job.number("blade.hardness", "HRC");
        int harden = reading.last("harden", "harden-on-belt");
        int temper = reading.last("temper");
        if (asked == null || harden < 0 || temper < harden) {
            return;
        }
        Figure.Number hardened = job.steps().get(harden).number("temperature", "°C");
        Figure.Number tempered = job.steps().get(temper).number("temperature", "°C");
        int chill = reading.last("sub-zero");
        boolean chilled = chill > harden && chill < temper;
        if (hardened == null || tempered == null) {
            return;
        }
        TreeMap<Double, Double> quenched = curve(steel, chilled, true);
        TreeMap<Double, Double> left = curve(steel, chilled, false);
        double hardenedThere = POINTS.stream().filter(r -> isOf(r, steel, chilled, false))
                .mapToDouble(r -> Double.parseDouble(r.get("austenitise_C"))).findFirst().orElse(Double.NaN);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double hot : new double[] {hardened.least(), hardened.most()}) {
            for (double warm : new double[] {tempered.least(), tempered.most()}) {
                // where nothing is known of other hardening temperatures the points count for the grade's whole window
                double more = quenched.isEmpty() ? 0 : at(quenched, hot) - at(quenched, hardenedThere);
                double hrc = more + at(left, warm);
                if (Double.isNaN(hrc)) {
                    // the literature has no point there: the shop would ask
                    reading.add("grade", false, temper, "temperature", "no points for " + steel + " hardened at " + hot
                            + ", tempered at " + warm + (chilled ? ", chilled" : ""));
                    return;
                }
                least = Math.min(least, hrc);
                most = Math.max(most, hrc);
            }
        }
        if (least < asked.least() - 1e-9 || most > asked.most() + 1e-9) {
            reading.add("hardness", true, temper, "temperature", "the points give " + least + ".." + most + " HRC, asked "
                    + asked.least() + ".." + asked.most());
        }
    }

    private static boolean isOf(Map<String, String> row, String steel, boolean chilled, boolean quenched) {
        return row.get("grade").equals(steel) && row.get("subzero_C").isEmpty() != chilled
                && row.get("temper_C").equals("none") == quenched;
    }

    private static TreeMap<Double, Double> curve(String steel, boolean chilled, boolean quenched) {
        TreeMap<Double, Double> curve = new TreeMap<>();
        POINTS.stream().filter(r -> isOf(r, steel, chilled, quenched)).forEach(r -> curve.put(
                Double.parseDouble(r.get(quenched ? "austenitise_C" : "temper_C")), Double.parseDouble(r.get("hardness_HRC"))));
        return curve;
    }

    private static double at(TreeMap<Double, Double> curve, double x) {
        Map.Entry<Double, Double> below = curve.floorEntry(x);
        Map.Entry<Double, Double> above = curve.ceilingEntry(x);
        if (below == null || above == null) {
            return Double.NaN;
        }
        double width = above.getKey() - below.getKey();
        return width == 0 ? below.getValue()
                : below.getValue() + (above.getValue() - below.getValue()) * (x - below.getKey()) / width;
    }
}
