package org.ricasso.dsl.trial.faults;

import java.util.List;
import java.util.Map;
import org.ricasso.dsl.house.Thing;
import org.ricasso.oracle.Figure;

/** What the trial adds to the works: copies of stocks in other grades and thicknesses, copies of centres. */
final class Things {
    static final List<String> THICKNESSES = List.of("-thin", "-thick", "-trifle");

    private Things() {}

    static String stockOf(String stock, String steel) {
        return stock + "-of-" + steel.replace('.', '-');
    }

    static String text(Iterable<Thing> stocks, Iterable<Thing> centres, Iterable<Thing> steels) {
        StringBuilder out = new StringBuilder();
        for (Thing stock : stocks) {
            for (Thing steel : steels) {
                boolean soft = Plain.entries(steel).get("annealed") instanceof Figure.Number n && n.most() < 250;
                out.append("stock ").append(stockOf(stock.name(), steel.name())).append(" \"\" like ").append(stock.name())
                        .append(" { steel: ").append(steel.name()).append(soft ? "; hardness: 150..170 HB" : "").append(" }\n");
            }
            if (Plain.entries(stock).get("thickness") instanceof Figure.Number thick) {
                Map.of("-thin", 0.7, "-thick", 3.0, "-trifle", 1.003).entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(v ->
                        out.append("stock ").append(stock.name()).append(v.getKey()).append(" \"\" like ").append(stock.name())
                                .append(String.format(java.util.Locale.ROOT, " { thickness: %.3f..%.3f mm }%n", thick.least() * v.getValue(),
                                        thick.most() * v.getValue())));
            }
        }
        for (Thing centre : centres) {
            Map<String, Figure> entries = Plain.entries(centre);
            out.append("centre ").append(centre.name()).append("-twin \"\" like ").append(centre.name()).append(" {}\n");
            if (entries.containsKey("longest")) {
                out.append("centre ").append(centre.name()).append("-small \"\" like ").append(centre.name()).append(" { longest: 60 mm }\n");
            }
        }
        return out.toString();
    }
}
