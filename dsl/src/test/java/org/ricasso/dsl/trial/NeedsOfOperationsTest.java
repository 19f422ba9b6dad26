package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;

/**
 * Operations that neither the cook's knives nor the paring knife use: each stands in a
 * valid route, and for each of its needs there is a route in which a step before it spoils that need and no other. The
 * routes and spoiled values are invented.
 */
class NeedsOfOperationsTest {
    private static final List<String> PARTS = List.of("blank-and-blade", "handles-and-edges");
    private static final List<SourceFile> ROUTES = PARTS.stream()
            .map(p -> new SourceFile(p + ".ricasso", resource(p + ".ricasso"), false)).toList();
    private static final List<Row> ROWS = PARTS.stream()
            .flatMap(p -> resource(p + "-needs.csv").lines().skip(1)).map(Row::of).toList();

    /** One need, the knife whose route has the operation, the step's number, and what a step right before it does. */
    private record Row(String operation, String need, String knife, int step, String works, String spoils) {
        static Row of(String line) {
            String[] cells = line.split(",", 6);
            return new Row(cells[0], cells[1], cells[2], Integer.parseInt(cells[3]), cells[4], cells[5]);
        }

        /** The last part of the need's path, as findings name it. */
        String property() {
            return need.substring(need.lastIndexOf('.') + 1);
        }

        String text() {
            String name = operation + "-" + property();
            return """
                    operation spoil-%s "Spoil" {
                        purpose: "Spoils one property."
                        at: rack
                        works: %s
                        %s
                        instruct { "Spoil it." }
                    }
                    knife faulty-%s "Faulty" like %s { route { add %d spoil-%s at rack-1 {} } }
                    """.formatted(name, works, spoils, name, knife, step - 1, name);
        }

        /** Whether a finding says that this need of this operation is unmet, and no other. */
        boolean isIn(Diagnostic finding) {
            List<String> said = said(finding);
            return said.size() == 1 && said.get(0).startsWith(property() + " ");
        }

        /** What is said of the operation's needs, where it is marked or together with what has the same remedy. */
        List<String> said(Diagnostic finding) {
            return Stream.of(Stream.of(finding.primary().text()), finding.others().stream().map(Mark::text), finding.also().stream())
                    .flatMap(s -> s).filter(text -> text.contains(", " + operation + " needs ")).toList();
        }
    }

    @Test
    void routesAreValid() {
        List<String> errors = house("").errors().stream().map(d -> d.primary().span() + " " + d.primary().text()).toList();
        assertThat(errors).isEmpty();
    }

    @Test
    void everyNeedIsTried() {
        Map<String, Long> tried = new TreeMap<>(ROWS.stream().collect(Collectors.groupingBy(Row::operation, Collectors.counting())));
        Map<String, Long> written = new TreeMap<>();
        tried.keySet().forEach(o -> written.put(o, TrialHouse.whole().file("ricasso/operations/" + o + ".ricasso").text().lines()
                .filter(l -> l.contains(" else \"")).count()));
        assertThat(tried).isEqualTo(written).hasSize(42);
    }

    /** Findings at one place are told once; so each house has one fault of an operation at most. */
    @Test
    void eachNeedIsFoundAlone() {
        List<List<Row>> houses = new ArrayList<>();
        Map<String, Integer> counted = new HashMap<>();
        for (Row row : ROWS) {
            int house = counted.merge(row.operation(), 1, Integer::sum) - 1;
            if (house == houses.size()) {
                houses.add(new ArrayList<>());
            }
            houses.get(house).add(row);
        }
        List<String> wrong = houses.stream().flatMap(rows -> wrong(rows).stream()).toList();
        assertThat(wrong).isEmpty();
    }

    private static List<String> wrong(List<Row> rows) {
        List<Diagnostic> errors = house(rows.stream().map(Row::text).collect(Collectors.joining("\n"))).errors();
        List<String> wrong = new ArrayList<>();
        for (Row row : rows) {
            List<Diagnostic> of = errors.stream().filter(d -> !row.said(d).isEmpty()).toList();
            if (of.size() != 1 || !row.isIn(of.get(0))) {
                wrong.add(row.operation() + " " + row.need() + ": " + of.stream().map(row::said).toList());
            }
        }
        return wrong;
    }

    private static TrialHouse house(String faults) {
        Texts whole = TrialHouse.single().fitsAll().texts();
        List<SourceFile> files = new ArrayList<>(whole.files());
        files.addAll(ROUTES);
        files.add(new SourceFile("faults.ricasso", faults, false));
        return TrialHouse.of(new Texts(files, whole.data(), whole.lock()));
    }

    private static String resource(String name) {
        try (InputStream in = NeedsOfOperationsTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
