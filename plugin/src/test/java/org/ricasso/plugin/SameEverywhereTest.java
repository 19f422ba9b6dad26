package org.ricasso.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.plugin.report.CaseReport;
import org.ricasso.plugin.report.HouseReport;
import org.ricasso.plugin.report.ReportRule;
import org.ricasso.plugin.report.SarifReport;
import org.ricasso.templates.page.PageRenderer;

/**
 * The same texts give the same log, reports and pages byte by byte: under any locale and time zone, whatever the order of the
 * files, with one thread or several. Checked on the demonstration house as it is and with mistakes in it.
 */
class SameEverywhereTest {
    /** Mistakes of several kinds in several files: what stands once, and what stands there instead. */
    private static final List<Map.Entry<String, String>> MISTAKES = List.of(
            Map.entry("170 temper at temper-3 {\n        temperature: 180", "170 temper at temper-3 {\n        temperature: 245"),
            Map.entry("steel:        1.4116\n        hardness:     55..58 HRC", "steel:        1.4161\n        hardness:     55..58 HRC"),
            Map.entry("temperature: solve(hardness, within: 5 °C)", "temperature: 350 ± 5 °C"),
            Map.entry("390 final-inspection at final-bench", "385 final-inspection at final-bench"),
            Map.entry("temperature: 1140 ± 20 °C", "temperature: 1140 ± 20 mm"),
            Map.entry("guard:   guard-205", "guard:   PP guard, 205 mm"));

    private static final Path HOUSE = Path.of("..", "specs", "src", "main", "ricasso");

    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @AfterEach
    void home() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    @Test
    void theHouseIsTheSame() {
        List<SourceFile> files = files(false);
        Map<String, String> expected = made(files);
        assertThat(expected).containsKey("index.html").hasSizeGreaterThan(70);
        everywhere(files, expected);
    }

    @Test
    void findingsAreTheSame() {
        List<SourceFile> files = files(true);
        Map<String, String> expected = made(files);
        assertThat(expected.get("log").lines().filter(l -> l.contains("error: ")).count()).isGreaterThanOrEqualTo(5);
        assertThat(expected).doesNotContainKey("index.html");
        everywhere(files, expected);
    }

    private void everywhere(List<SourceFile> files, Map<String, String> expected) {
        for (List<String> place : List.of(List.of("tr-TR", "Asia/Istanbul"), List.of("de-DE", "Pacific/Apia"),
                List.of("ar-EG-u-nu-arab", "Asia/Istanbul"))) {
            Locale.setDefault(Locale.forLanguageTag(place.get(0)));
            TimeZone.setDefault(TimeZone.getTimeZone(place.get(1)));
            same(place.toString(), made(files), expected);
        }
        home();
        for (long seed = 1; seed <= 3; seed++) {
            List<SourceFile> shuffled = new ArrayList<>(files);
            Collections.shuffle(shuffled, new Random(seed));
            same("shuffled by " + seed, made(shuffled), expected);
        }
        for (int threads : new int[] {1, 2, 5}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            try {
                same(threads + " threads", pool.submit(() -> made(files)).get(), expected);
            } catch (InterruptedException | ExecutionException e) {
                throw new AssertionError(e);
            } finally {
                pool.shutdown();
            }
        }
    }

    static void same(String how, Map<String, String> made, Map<String, String> expected) {
        assertThat(made.keySet()).as(how).isEqualTo(expected.keySet());
        made.forEach((name, text) -> assertThat(text).as("%s, %s", name, how).isEqualTo(expected.get(name)));
    }

    private static SourceFile lock() {
        try {
            return new SourceFile(Lock.NAME, Files.readString(HOUSE.resolve(Lock.NAME)), false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All that a run makes of texts, by name. */
    static Map<String, String> made(List<SourceFile> files) {
        return made(files, true);
    }

    /** @param whole whether values, the other reports and the pages are made as well */
    static Map<String, String> made(List<SourceFile> files, boolean whole) {
        Ricasso ricasso = Ricasso.check(Ricasso.withShipped(new Texts(files, Map.of(), lock())),
                Ricasso.calculations(SameEverywhereTest.class.getClassLoader()), Set.of());
        CheckedHouse house = ricasso.checked();
        Map<String, String> result = new TreeMap<>();
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, true);
        StringBuilder log = new StringBuilder();
        for (Diagnostic diagnostic : house.diagnostics()) {
            log.append(printer.print(diagnostic)).append('\n');
        }
        result.put("log", log.toString());
        result.put("report", new String(new SarifReport(Path.of("/house"), Path.of("/house"), "1",
                ReportRule::named).of(house.diagnostics()), StandardCharsets.UTF_8));
        if (!whole) {
            return result;
        }
        result.put("cases", new String(new CaseReport().of(house), StandardCharsets.UTF_8));
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        try {
            new HouseReport(ricasso).write(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        result.put("house", json.toString(StandardCharsets.UTF_8));
        result.put("values", house.products().toString());
        if (house.holds()) {
            new PageRenderer().render(house, "Alderbeck Knife Works").files()
                    .forEach((name, bytes) -> result.put(name, new String(bytes, StandardCharsets.UTF_8)));
        }
        return result;
    }

    static List<SourceFile> files(boolean wrong) {
        Map<String, Integer> used = new HashMap<>();
        List<SourceFile> result = new ArrayList<>();
        try (Stream<Path> house = Files.list(HOUSE)) {
            for (Path file : house.filter(f -> f.toString().endsWith(".ricasso")).sorted().toList()) {
                String text = Files.readString(file);
                if (wrong) {
                    for (Map.Entry<String, String> mistake : MISTAKES) {
                        if (text.contains(mistake.getKey())) {
                            used.merge(mistake.getKey(), 1, Integer::sum);
                            text = text.replace(mistake.getKey(), mistake.getValue());
                        }
                    }
                }
                result.add(new SourceFile("src/main/ricasso/" + file.getFileName(), text, false));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (wrong) {
            assertThat(used.keySet()).hasSize(MISTAKES.size());
        }
        return result;
    }
}
