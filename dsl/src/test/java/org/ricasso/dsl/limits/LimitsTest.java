package org.ricasso.dsl.limits;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.ricasso.dsl.catalogue.Catalogue;
import org.ricasso.dsl.catalogue.LittleHouse;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.Limits;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.ParseResult;
import org.ricasso.dsl.syntax.Parser;

/** At each limit a text is read as any other; one beyond it there is one finding, and neither stack nor memory runs out. */
@Timeout(120)
class LimitsTest {
    private static final String STEEL = "steel 1.4110 \"X55CrMo14\" { hardens: 1050 °C }\n";

    /** The little house with this text holds at the limit and gives this one finding beyond it. */
    private static void holdsAt(int limit, String name, IntFunction<String> text) {
        assertThat(LittleHouse.findings(text.apply(limit), Map.of())).isEmpty();
        assertThat(LittleHouse.findings(text.apply(limit + 1), Map.of())).extracting(Diagnostic::name).containsExactly(name);
    }

    private static String times(int count, IntFunction<String> part) {
        return IntStream.range(0, count).mapToObj(part).collect(Collectors.joining());
    }

    private static String knife(String block) {
        return "knife short like paring { " + block + " }\n";
    }

    /** The table of the language's reference has all limits, in the order of {@link Limits}. */
    @Test
    void areToldInTheLanguagesReference() throws Exception {
        String reference = Files.readString(Path.of("LANGUAGE.md"), StandardCharsets.UTF_8);
        String table = reference.substring(reference.indexOf("## Limits"));
        List<Integer> told = Pattern.compile("(?m)\\| (\\d+) \\|$").matcher(table).results()
                .map(m -> Integer.valueOf(m.group(1))).toList();
        List<Integer> held = new ArrayList<>();
        for (Field limit : Limits.class.getFields()) {
            held.add(limit.getInt(null));
        }
        assertThat(told).containsExactlyElementsOf(held);
    }

    /** Where the catalogue tells a limit, it is that limit. */
    @Test
    void areToldInTheCatalogue() throws Exception {
        List<Integer> held = new ArrayList<>();
        for (Field limit : Limits.class.getFields()) {
            held.add(limit.getInt(null));
        }
        Catalogue.shipped().themes().stream().filter(theme -> theme.name().equals("limits")).flatMap(t -> t.entries().stream())
                .forEach(entry -> assertThat(Pattern.compile("\\d+").matcher(String.join(" ", entry.meaning())).results()
                        .map(m -> Integer.valueOf(m.group())).toList()).as(entry.name()).isNotEmpty().isSubsetOf(held));
    }

    @Test
    void charactersOfATextAndOfATable() {
        holdsAt(Limits.FILE_CHARACTERS, "file-too-large",
                size -> STEEL + "//".repeat((size - STEEL.length()) / 2) + (size % 2 == 0 ? "" : "\n"));
        String table = """
                table scale "Scale" {
                    columns { heat: temperature key between; scale: length found }
                    from: "scale.csv"
                }
                """;
        String csv = "heat °C,scale mm\n900,0.1\n";
        for (int more : new int[] {0, 1}) {
            String padded = csv + "\n".repeat(Limits.FILE_CHARACTERS - csv.length() + more);
            assertThat(LittleHouse.findings(table, Map.of("scale.csv", padded))).extracting(Diagnostic::name)
                    .isEqualTo(more == 0 ? List.of() : List.of("file-too-large"));
        }
    }

    @Test
    void wordsOfAText() {
        // kind k { a: text ; … }: a line is 4 words with its end, the frame 4
        for (int words : new int[] {Limits.FILE_WORDS, Limits.FILE_WORDS + 1}) {
            String text = "kind k{\n" + times((words - 5) / 4, i -> "a" + i + ":text\n") + "}" + ";".repeat((words - 5) % 4);
            ParseResult result = Parser.parse(new SourceFile("words", text, false));
            assertThat(result.diagnostics()).extracting(Diagnostic::name)
                    .isEqualTo(words == Limits.FILE_WORDS ? List.of() : List.of("file-too-large"));
        }
    }

    @Test
    void nestingOfBracketsAndOperators() {
        // the blocks around it are two deep
        holdsAt(Limits.NESTING - 2, "nested-too-deep",
                depth -> knife("blade { length: " + "(".repeat(depth) + "80 mm" + ")".repeat(depth) + " }"));
        holdsAt(Limits.NESTING - 2, "nested-too-deep",
                depth -> knife("blade { length: 10 mm" + times(depth, i -> " + 1 mm") + " }"));
        holdsAt(Limits.NESTING - 4, "nested-too-deep", depth -> knife("blade { length: "
                + times(depth, i -> "if known(knife.steel) then 80 mm else ") + "90 mm }"));
    }

    @Test
    void wordsOfAnEntry() {
        // x : ( 1 ) and three for each further length
        IntFunction<String> list = words -> "kind k \"K\" { x: list of length }\nk a \"A\" { x: (1"
                + times((words - 5) / 3, i -> ", 1 mm") + ") }\n";
        assertThat((Limits.LINE_WORDS - 5) % 3).isZero();
        assertThat(LittleHouse.findings(list.apply(Limits.LINE_WORDS), Map.of())).isEmpty();
        assertThat(LittleHouse.findings(list.apply(Limits.LINE_WORDS).replace("x: (1", "x: ((1)"), Map.of())).extracting(Diagnostic::name)
                .containsExactly("line-too-long");
    }

    @Test
    void digitsOfANumber() {
        holdsAt(Limits.DIGITS, "number-too-long", digits -> knife("blade { length: 80." + "0".repeat(digits - 3) + "1 mm }"));
        holdsAt(Limits.DIGITS, "number-too-long", digits -> knife("blade { length: 80 ± 0.000" + "1".repeat(digits) + " mm }"));
        assertThat(LittleHouse.findings(knife("blade { length: " + "9".repeat(400) + " mm }"), Map.of()))
                .extracting(Diagnostic::name).containsExactly("number-too-long");
    }

    @Test
    void findingsOfAText() {
        for (int count : new int[] {Limits.SYNTAX_FINDINGS, Limits.SYNTAX_FINDINGS + 2}) {
            List<Diagnostic> found = Parser.parse(new SourceFile("braces", "}\n".repeat(count), false)).diagnostics();
            assertThat(found).hasSize(Limits.SYNTAX_FINDINGS);
            assertThat(found.get(found.size() - 1).also()).isEqualTo(count == Limits.SYNTAX_FINDINGS ? List.of()
                    : List.of("2 further findings in this file are not told"));
        }
    }

    @Test
    void rowsOfATable() {
        holdsAt(Limits.TABLE_ROWS, "table-too-long", rows -> "table scale \"Scale\" {\n"
                + "    columns { heat: temperature key between; scale: length found }\n    rows:\n        | heat | scale |\n"
                + times(rows, i -> "        | " + i + " °C | 1 mm |\n") + "}\n");
        String csv = """
                table scale "Scale" {
                    columns { heat: temperature key between; scale: length found }
                    from: "scale.csv"
                    expect: scale(heat: 20.5 °C).scale = 1 mm
                }
                """;
        for (int rows : new int[] {Limits.TABLE_ROWS, Limits.TABLE_ROWS + 1}) {
            Map<String, String> file = Map.of("scale.csv", "heat °C,scale mm\n" + times(rows, i -> i + ",1\n"));
            assertThat(LittleHouse.findings(csv, file)).extracting(Diagnostic::name)
                    .isEqualTo(rows == Limits.TABLE_ROWS ? List.of() : List.of("table-too-long"));
        }
        // rows of the works' own count as well; the little house's table has three
        holdsAt(Limits.TABLE_ROWS - 3, "table-too-long", rows -> "table ours {\n    before: loss\n    rows:\n"
                + "        | tempered | loss |\n" + times(rows, i -> "        | " + (100 + i / 10 + "." + i % 10) + " °C | 4 HRC |\n") + "}\n");
    }

    @Test
    void pointsOfALookUp() {
        String table = "table scale \"Scale\" {\n    columns { heat: temperature key between; hold: duration key between;"
                + " scale: length found }\n    rows:\n        | heat | hold | scale |\n";
        // rows that share no lines make more points than rows
        IntFunction<String> scattered = rows -> table + times(rows, i -> "        | " + i + " °C | " + i + " min | 1 mm |\n")
                + "    expect: scale(heat: 0.." + (rows - 1) + " °C, hold: 0.." + (rows - 1) + " min).scale = 1 mm\n}\n";
        List<Diagnostic> found = LittleHouse.findings(scattered.apply(Limits.TABLE_ROWS), Map.of());
        assertThat(found).extracting(Diagnostic::name).containsExactly("expectation-missed");
        assertThat(found.get(0).because()).anyMatch(reason -> reason.contains("more than " + Limits.LOOK_UP_POINTS + " points"));
    }

    private static String route(int steps, String also) {
        return knife("route { " + times(steps, i -> "add " + (100 + i) + " wipe; ") + also + " }");
    }

    @Test
    void stepsOfARoute() {
        // the knife that is taken over has three
        holdsAt(Limits.ROUTE_STEPS - 3, "route-too-long", steps -> route(steps, ""));
        // and here the part has one, and one joins it
        holdsAt(Limits.ROUTE_STEPS - 5, "route-too-long", steps -> route(steps + 1, "part scales like scales; add 99 rivet")
                .replace("add 110 wipe; ", ""));
    }

    @Test
    void stepsOfRework() {
        // 800 steps back, three times: 2,400 a loop, four loops make 9,600, a shorter one fills up
        String measured = " { bow { gauge: \"feeler\"; sample: each; limit: max 0.6 mm } }; ";
        IntFunction<String> text = last -> knife("route { " + times(800, i -> "add " + (100 + i) + " straighten" + measured)
                + times(4, i -> "rework 899 to 100 { when: bow; times: 3 }; ") + "rework 899 to " + (900 - last)
                + " { when: bow; times: 1 } }");
        holdsAt(Limits.REWORK_STEPS - 4 * 3 * 800, "route-too-long", text);
    }

    @Test
    void depthOfLike() {
        IntFunction<String> things = depth -> "steel s0 \"S\" { hardens: 1050 °C }\n"
                + times(depth, i -> "steel s" + (i + 1) + " \"S\" like s" + i + " {}\n");
        holdsAt(Limits.LIKE, "like-too-deep", things);
        holdsAt(Limits.LIKE, "like-too-deep", depth -> "route r0 \"R\" { 10 wipe }\n"
                + times(depth, i -> "route r" + (i + 1) + " \"R\" like r" + i + " {}\n"));
        assertThat(LittleHouse.findings(things.apply(20_000), Map.of())).extracting(Diagnostic::name)
                .containsExactly("like-too-deep");
    }

    @Test
    void aLongRing() {
        String ring = times(20_000, i -> "steel s" + i + " \"S\" like s" + (i + 1) % 20_000 + " {}\n");
        assertThat(LittleHouse.findings(ring, Map.of())).extracting(Diagnostic::name).containsExactly("like-too-deep");
    }
}
