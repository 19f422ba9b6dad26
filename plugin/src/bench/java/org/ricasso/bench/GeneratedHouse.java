package org.ricasso.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;

/**
 * A house with as many knives as asked, written out in full: copies of the demonstration knives with other names, numbers
 * and values that are as right as theirs. The same count gives the same text.
 */
final class GeneratedHouse {
    private static final Path HOUSE = Path.of("..", "specs", "src", "main", "ricasso");

    /** The route of a text of its own that a demonstration knife is like, and that of a part in it: each copy has its own. */
    private static final String ROUTE = "forged-riveted";
    private static final String PART = "scales-pom";

    private static final Pattern STEP = Pattern.compile(
            "(?m)^ {8,10}(\\d+) [a-z-]+(?:[^\\n]*\\{\\n(?: {9,}[^\\n]*\\n)* {8}\\}\\n|[^\\n]*\\n)");
    /** Steps that the strip-cut knife can do without if it bears no mark and its straightness is neither asked for nor mended. */
    private static final Set<Integer> LEFT_OUT = Set.of(10, 40, 100, 160, 165, 170, 190, 210, 220, 225);
    private static final Pattern UNASKED = Pattern.compile("(?m)^ {8}rework \\d.*\\n|^ {4}(?: {8})?mark +\\{[^}]*\\}\\n|^ {8}straightness:.*\\n"
            + "|^ {12}straightness \\{[^}]*sample: +(?:13 per lot|5 per hundred)[^}]*\\}\\n");

    private GeneratedHouse() {}

    /**
     * @param file the demonstration text to copy, such as {@code paring-90.ricasso}
     * @param shorter whether to leave out what the strip-cut knife can do without, so that 24 steps are left
     */
    static Texts of(String file, boolean shorter, int knives) throws IOException {
        List<SourceFile> files = new ArrayList<>();
        for (String works : List.of("works.ricasso", "stock-and-tools.ricasso")) {
            files.add(new SourceFile(works, Files.readString(HOUSE.resolve(works)), false));
        }
        String text = Files.readString(HOUSE.resolve(file));
        if (shorter) {
            text = shortened(text);
        }
        if (text.contains("route like " + ROUTE)) {
            text += Files.readString(HOUSE.resolve(ROUTE + ".ricasso"));
        }
        for (int i = 0; i < knives; i++) {
            files.add(new SourceFile("knife-" + i + ".ricasso", copy(text, i), false));
        }
        return Ricasso.withShipped(new Texts(files, Map.of()));
    }

    /**
     * As many of the shorter strip-cut knives, from families: each hundred is a knife that is written out and a family with
     * the others as its rows, which are tempered and numbered each in its own way.
     */
    static Texts families(int knives) throws IOException {
        List<SourceFile> files = new ArrayList<>();
        files.add(new SourceFile("works.ricasso", Files.readString(HOUSE.resolve("works.ricasso")), false));
        String text = shortened(Files.readString(HOUSE.resolve("paring-90.ricasso")));
        for (int i = 0; i < knives; i += 100) {
            StringBuilder family = new StringBuilder(copy(text, i)).append("\nfamily sizes-").append(i).append(" like paring-90-")
                    .append(i).append(" {\n    sizes:\n")
                    .append("        | knife | title | number | route.110.temperature | route.110.hold |\n");
            for (int k = i + 1; k < Math.min(knives, i + 100); k++) {
                family.append(String.format(Locale.ROOT,
                        "        | size-%d | \"Paring knife %d\" | \"AB-X%d\" | %d ± 5 °C | %d (+20/0) min |%n", k, k, k,
                        176 + k % 7, 120 + k % 11));
            }
            files.add(new SourceFile("family-" + i + ".ricasso", family.append("}\n").toString(), false));
        }
        return Ricasso.withShipped(new Texts(files, Map.of()));
    }

    private static String shortened(String text) {
        return STEP.matcher(UNASKED.matcher(text).replaceAll("")).replaceAll(
                m -> LEFT_OUT.contains(Integer.valueOf(m.group(1))) ? "" : Matcher.quoteReplacement(m.group()));
    }

    private static String copy(String text, int i) {
        String copy = text.replaceFirst("(?m)^knife ([a-z0-9-]+)", "knife $1-" + i)
                .replaceFirst("\"AB-\\d+\"", "\"AB-X" + i + "\"")
                .replaceAll("(?m)((?:like|^route)) (" + ROUTE + "|" + PART + ")\\b", "$1 $2-" + i);
        // each knife is tempered and marked a little differently, so that nothing can be kept from the last one
        return copy.replaceFirst("temperature: (180 ± 5 °C|solve\\(hardness, within: 5 °C\\)); hold: 120",
                String.format(Locale.ROOT, "temperature: %d ± 5 °C; hold: %d", 176 + i % 7, 120 + i % 11));
    }
}
