package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.source.SourceFile;

/** The demonstration house is whole in German: on none of its pages stands a text that is not translated. */
class DemonstrationInGermanTest {
    private static final Path FOLDER = Path.of("..", "specs", "src", "main", "ricasso");
    /** Words that hardly any English sentence does without, and that are no German. */
    private static final Pattern ENGLISH = Pattern.compile("(?<![\\p{L}\\p{N}.-])(the|of|and|with|is|are|not|to|for|at|from|before|max)(?![\\p{L}\\p{N}-])");
    private static Map<String, String> pages;

    @BeforeAll
    static void render() throws IOException {
        List<SourceFile> files;
        try (Stream<Path> walk = Files.walk(FOLDER)) {
            files = walk.filter(p -> p.toString().endsWith(".ricasso")).sorted().map(DemonstrationInGermanTest::read).toList();
        }
        Ricasso ricasso = Ricasso.check(Ricasso.withShipped(new Texts(files, Map.of(), read(FOLDER.resolve(Lock.NAME)))),
                Ricasso.calculations(Ricasso.class.getClassLoader()), Set.of(), Set.of("de"));
        assertThat(ricasso.checked().diagnostics()).isEmpty();
        assertThat(ricasso.words().languages()).containsExactly("en", "de");
        pages = new TreeMap<>(Pages.html(Pages.texts(new PageRenderer().render(ricasso.checked(), "Alderbeck Knife Works",
                ricasso.words(), ricasso.house().vocabulary(), ricasso.words().languages()))));
    }

    private static SourceFile read(Path path) {
        try {
            return new SourceFile(FOLDER.relativize(path).toString().replace('\\', '/'), Files.readString(path), false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void noTextIsBorrowed() {
        int german = 0;
        Map<String, String> borrowed = new TreeMap<>();
        for (Map.Entry<String, String> page : pages.entrySet()) {
            if (page.getKey().startsWith("de/")) {
                german++;
                Pattern.compile("<span class=\"borrowed\"[^>]*>(.*?)</span>").matcher(page.getValue()).results()
                        .forEach(found -> borrowed.put(found.group(1), page.getKey()));
            }
        }
        assertThat(german).isEqualTo(pages.size() / 2).isGreaterThan(80);
        assertThat(borrowed).isEmpty();
    }

    /** What is at hand stands before what is set: the die of the step, the operation's tooling, what is used up. */
    @Test
    void aStepSaysWhatToHaveReady() {
        assertThat(section(pages.get("ab-2120/step-50.html"))).contains("Have ready", "Tooling", "Die D-2120", "Tongs", "Used up", "Die lubricant");
        assertThat(section(pages.get("de/ab-2120/step-50.html"))).contains("Bereitlegen", "Arbeitsmittel", "Gesenk D-2120", "Zange",
                "Verbrauch", "Gesenkschmierstoff");
    }

    private static String section(String page) {
        int from = page.indexOf("<section aria-labelledby=\"h-ready\">");
        assertThat(from).isPositive().isLessThan(page.indexOf("<section aria-labelledby=\"h-set\">"));
        return page.substring(from, page.indexOf("</section>", from));
    }

    @Test
    void noEnglishIsLeftUnmarked() {
        Map<String, String> left = new TreeMap<>();
        pages.forEach((path, page) -> {
            if (path.startsWith("de/")) {
                // a comparison stands as it is written in its rule, in its own element before the margin
                String text = Pages.text(Pages.inItsLanguage(page.replaceAll("(<span class=\"line\">)<bdi>[^<]*</bdi>: ", "$1"), "de"));
                Matcher found = ENGLISH.matcher(text);
                while (found.find()) {
                    left.put(text.substring(Math.max(0, found.start() - 40), Math.min(text.length(), found.end() + 40)), path);
                }
            }
        });
        assertThat(left).isEmpty();
    }

    /** Read by hand beside the English page of the same step. */
    @Test
    void theTemperingPageReadAloud() {
        assertThat(Pages.text(pages.get("de/ab-2120/step-170.html"))).containsSubsequence("170 Anlassen", "an temper-3 Anlassofen 3",
                "Kochmesser, 200 mm", "Einstellen", "180 ± 5 °C", "120 (+20/0) min 120 bis 140 min", "Laufzeit:", "je Charge",
                "Weitergeben", "Härte", "HRC berechnet, mit Streuung");
        assertThat(pages.get("de/ab-2120/step-170.html")).containsPattern("5\\d,\\d\u00A0bis\u00A05\\d,\\d\u202FHRC");
    }
}
