package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;

/**
 * The cook's knife in four sizes from one table: whatever a size must say is asked for at its row. Each cell of the family's
 * table is made empty by itself, and each column is taken away by itself.
 */
class SizedCellsTest {
    private static final String NAME = "knife";
    /** What a size may share with the others: it is not sized, or a limit, which the check of the route holds to the settings. */
    private static final Set<String> SHARED = Set.of("title", "revision", "blade.edge.each-side", "route.20.billet-mass.limit",
            "route.50.blows", "route.120.tang-thickness.limit", "route.220.tang-thickness.limit",
            "route.360.angle-to");

    private record Line(int number, String text, List<String> head) {}

    /** A cell of the table: its row, from 0, and its column among those of the row. */
    private record Cell(Line line, int column) {
        private String size() {
            return cells(line.text()).get(0).strip();
        }

        private String path() {
            return line.head().get(column);
        }

        private String emptied() {
            List<String> cells = new ArrayList<>(cells(line.text()));
            cells.set(column, " ".repeat(cells.get(column).length()));
            return line.text().substring(0, line.text().indexOf('|')) + "|" + String.join("|", cells) + "|";
        }
    }

    private static List<String> cells(String line) {
        return List.of(line.substring(line.indexOf('|') + 1, line.lastIndexOf('|')).split("[|]"));
    }

    private static List<Line> rows() {
        List<String> lines = TrialHouse.whole().file(TrialHouse.SIZES).text().lines().toList();
        List<Line> rows = new ArrayList<>();
        List<String> head = List.of();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).strip().startsWith("| " + NAME)) {
                head = cells(lines.get(i)).stream().map(String::strip).toList();
            } else if (lines.get(i).strip().startsWith("|")) {
                rows.add(new Line(i, lines.get(i), head));
            }
        }
        return rows;
    }

    private static List<Cell> table() {
        return rows().stream().flatMap(line -> Stream.iterate(1, i -> i < line.head().size(), i -> i + 1)
                .map(i -> new Cell(line, i))).toList();
    }

    private static List<Diagnostic> without(Cell cell) {
        return TrialHouse.whole().with(TrialHouse.SIZES, text -> {
            List<String> lines = new ArrayList<>(text.lines().toList());
            lines.set(cell.line().number(), cell.emptied());
            return String.join("\n", lines) + "\n";
        }).diagnostics();
    }

    @Test
    void eachSizedCellIsAskedForAtItsRow() {
        Map<String, List<String>> wrong = new ConcurrentSkipListMap<>();
        List<Cell> sized = table().stream().filter(cell -> !SHARED.contains(cell.path())).toList();
        sized.parallelStream().forEach(cell -> {
            List<Diagnostic> found = without(cell);
            String row = TrialHouse.SIZES + ":" + (cell.line().number() + 1) + ":";
            boolean asked = found.size() == 1 && found.get(0).name().equals("size-missing")
                    && found.get(0).primary().span().toString().startsWith(row)
                    && found.get(0).primary().text().contains(cell.size() + " says nothing of " + cell.path() + ",");
            if (!asked) {
                wrong.put(cell.size() + " " + cell.path(), found.stream().map(d -> d.name() + " " + d.primary().span()).toList());
            }
        });
        assertThat(wrong).isEmpty();
        assertThat(sized).hasSizeGreaterThan(150);
    }

    /** A column that no size has is missing from each of them. */
    @Test
    void eachSizedColumnIsAskedForOfEachSize() {
        Map<String, List<Cell>> columns = table().stream().filter(cell -> !SHARED.contains(cell.path()))
                .collect(Collectors.groupingBy(Cell::path));
        Map<String, List<String>> wrong = new ConcurrentSkipListMap<>();
        columns.entrySet().parallelStream().forEach(column -> {
            Cell first = column.getValue().get(0);
            Set<Integer> numbers = column.getValue().stream().map(cell -> cell.line().number()).collect(Collectors.toSet());
            int head = new TreeSet<>(numbers).first() - 1;
            Function<String, String> cut = line -> {
                List<String> cells = new ArrayList<>(cells(line));
                cells.remove(first.column());
                return "        |" + String.join("|", cells) + "|";
            };
            List<Diagnostic> found = TrialHouse.whole().with(TrialHouse.SIZES, text -> {
                List<String> lines = new ArrayList<>(text.lines().toList());
                numbers.forEach(n -> lines.set(n, cut.apply(lines.get(n))));
                lines.set(head, cut.apply(lines.get(head)));
                return String.join("\n", lines) + "\n";
            }).diagnostics();
            if (found.size() != numbers.size() || found.stream().anyMatch(d -> !d.name().equals("size-missing"))) {
                wrong.put(column.getKey(), found.stream().map(d -> d.name() + " " + d.primary().span()).toList());
            }
        });
        assertThat(wrong).isEmpty();
    }

    /** What is listed as shared really is: no cell of it is asked for. */
    @Test
    void nothingElseIsAskedFor() {
        List<Cell> shared = table().stream().filter(cell -> SHARED.contains(cell.path())).toList();
        assertThat(shared.stream().map(Cell::path).collect(Collectors.toSet())).isEqualTo(SHARED);
        assertThat(shared.parallelStream().flatMap(cell -> without(cell).stream()).map(Diagnostic::name).toList())
                .doesNotContain("size-missing");
    }
}
