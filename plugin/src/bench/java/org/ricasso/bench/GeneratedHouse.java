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
import java.util.stream.Stream;
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
    private static final Set<Integer> LEFT_OUT = Set.of(10, 100, 160, 165, 190, 210, 220, 225);
    private static final Pattern UNASKED = Pattern.compile("(?m)^ {8}rework \\d.*\\n|^ {4}(?: {8})?mark +\\{[^}]*\\}\\n|^ {8}straightness:.*\\n"
            + "|^ {12}straightness \\{[^}]*sample: +(?:13 per lot|5 per hundred)[^}]*\\}\\n");

    private static final Pattern TEMPER = Pattern.compile(
            "temperature: +(?:180 ± 5 °C|solve\\(hardness, within: 5 °C\\))(?:;|\\n) *hold: +120");
    /** A text with something of this is of a knife, or has words for readers of another language. */
    private static final Pattern NOT_OF_THE_WORKS = Pattern.compile("(?m)^(?:knife|family|route|words) ");

    private GeneratedHouse() {}

    /**
     * @param file the demonstration text to copy, such as {@code paring-90.ricasso}
     * @param shorter whether to leave out what the strip-cut knife can do without, so that 26 steps are left
     */
    static Texts of(String file, boolean shorter, int knives) throws IOException {
        List<SourceFile> files = works();
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

    /** What every size has its own of, with values that are as right for the shorter strip-cut knife as its own. */
    private static final String[][] SIZED = {{"stock", "strip-180"}, {"blade.length", "90 ± 0.8 mm"},
        {"blade.height", "20 ± 0.5 mm"}, {"blade.spine.heel", "1.60 ± 0.08 mm"}, {"blade.spine.middle", "1.45 ± 0.08 mm"},
        {"blade.spine.before-tip", "0.90 ± 0.08 mm"}, {"blade.edge.behind", "0.25 ± 0.05 mm"},
        {"handle.length", "100 ± 0.5 mm"}, {"mass", "47 ± 3 g"}, {"balance", "-38 ± 4 mm"}, {"guard", "blister-guard-95"},
        {"route.30.tool", "B-1109"}, {"route.140.deflection", "12 ± 2 mm"}, {"route.140.over", "80 mm"},
        {"route.150.program", "TG-1109-v5"}, {"route.150.spine-to.heel", "1.63 ± 0.04 mm"},
        {"route.150.spine-to.middle", "1.48 ± 0.04 mm"}, {"route.150.spine-to.before-tip", "0.93 ± 0.04 mm"},
        {"route.150.edge-to", "0.27 ± 0.03 mm"}, {"route.170.length-to", "90 ± 0.3 mm"},
        {"route.170.height-to", "20.2 ± 0.3 mm"}, {"route.250.length-to", "100 ± 0.3 mm"}, {"route.350.carton", "blister-90"}};

    /**
     * As many of the shorter strip-cut knives, from families: each hundred is a knife that is written out and a family with
     * the others as its rows, which are tempered and numbered each in its own way.
     */
    static Texts families(int knives) throws IOException {
        List<SourceFile> files = works();
        // a column names a place along the blade that is there in every size
        String text = shortened(Files.readString(HOUSE.resolve("paring-90.ricasso")))
                .replaceAll("\\| 45 mm +\\|", "| middle |").replaceAll("\\| tip - 10 mm +\\|", "| before-tip |");
        for (int i = 0; i < knives; i += 100) {
            StringBuilder family = new StringBuilder(copy(text, i)).append("\nfamily sizes-").append(i).append(" like paring-90-")
                    .append(i).append(" {\n    sizes:\n")
                    .append("        | knife | title | number | route.110.temperature | route.110.hold |");
            for (String[] column : SIZED) {
                family.append(' ').append(column[0]).append(" |");
            }
            for (int k = i + 1; k < Math.min(knives, i + 100); k++) {
                family.append(String.format(Locale.ROOT,
                        "\n        | size-%d | \"Paring knife %d\" | \"AB-X%d\" | %d ± 5 °C | %d (+20/0) min |", k, k, k,
                        176 + k % 7, 110 + k % 11));
                for (String[] column : SIZED) {
                    family.append(' ').append(column[1]).append(" |");
                }
            }
            files.add(new SourceFile("family-" + i + ".ricasso", family.append("\n}\n").toString(), false));
        }
        return Ricasso.withShipped(new Texts(files, Map.of()));
    }

    /** The texts of the demonstration house that hold no knife. */
    private static List<SourceFile> works() throws IOException {
        List<SourceFile> files = new ArrayList<>();
        try (Stream<Path> texts = Files.list(HOUSE)) {
            for (Path path : texts.filter(p -> p.toString().endsWith(".ricasso")).sorted().toList()) {
                // the tools fit all of them
                String text = Files.readString(path).replaceAll("(; )?fits: +[a-z0-9-]+(, [a-z0-9-]+)*", "");
                if (!NOT_OF_THE_WORKS.matcher(text).find()) {
                    files.add(new SourceFile(path.getFileName().toString(), text, false));
                }
            }
        }
        return files;
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
        Matcher temper = TEMPER.matcher(copy);
        if (!temper.find()) {
            throw new IllegalStateException("the demonstration knife is not tempered as this copy expects");
        }
        return temper.replaceFirst(String.format(Locale.ROOT, "temperature: %d ± 5 °C\n            hold: %d", 176 + i % 7, 110 + i % 11));
    }
}
