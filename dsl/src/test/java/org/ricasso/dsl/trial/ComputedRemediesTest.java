package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Remedy;

/** Remedies are computed from the tables as they stand: with other rows another setting is offered, and it holds. */
class ComputedRemediesTest {
    private static final String AS_QUENCHED = "ricasso/materials/as-quenched.csv";
    private static final String LOSS = "ricasso/materials/tempering-loss.csv";
    private static final String TABLES = "ricasso/materials/heat-treatment.ricasso";

    /** One point more is lost in each temper, so a cooler one is offered, though none that the second temper would undo. */
    @Test
    void withMoreLostByTemperingACoolerTemperIsOffered() {
        TrialHouse other = raised(TrialHouse.single(), LOSS, "loss HRC", "tempering-loss");
        assertThat(offered(TrialHouse.single(), "245 ± 5 °C")).isEqualTo("180 ± 5 °C");
        assertThat(offered(other, "245 ± 5 °C")).isEqualTo("176 ± 5 °C");
    }

    /** The steel comes one point harder from the quench, so a hotter temper is offered. */
    @Test
    void withMoreLeftByTheQuenchAHotterTemperIsOffered() {
        TrialHouse other = raised(TrialHouse.single(), AS_QUENCHED, "hardness HRC", "as-quenched");
        assertThat(offered(TrialHouse.single(), "350 ± 5 °C")).isEqualTo("180 ± 5 °C");
        assertThat(offered(other, "350 ± 5 °C")).isEqualTo("240 ± 5 °C");
        assertThat(errors(Mistakes.tempered(other, "245 ± 5 °C"))).isEmpty();
    }

    /** What the first remedy of a badly tempered blade writes; that it holds is proved. */
    private static String offered(TrialHouse house, String temperature) {
        TrialHouse bad = Mistakes.tempered(house, temperature);
        List<Diagnostic> errors = errors(bad);
        assertThat(errors).hasSize(1);
        Remedy remedy = errors.get(0).remedies().get(0);
        assertThat(errors(bad.with(remedy.edits()))).isEmpty();
        return remedy.edits().get(0).replacement();
    }

    /** Errors of the cook's knife; with other rows the other knife has its own. */
    private static List<Diagnostic> errors(TrialHouse house) {
        return house.errors().stream().filter(d -> d.primary().span().file().name().equals(TrialHouse.ROUTE)).toList();
    }

    /** The house with one column of a table one point higher in each row, and what is expected of the table with it. */
    private static TrialHouse raised(TrialHouse house, String rows, String column, String table) {
        return house.with(rows, text -> {
            List<String> lines = text.lines().toList();
            int index = List.of(lines.get(0).split(",")).indexOf(column);
            assertThat(index).isPositive();
            return IntStream.range(0, lines.size()).mapToObj(i -> i == 0 ? lines.get(0) : raised(lines.get(i), index))
                    .collect(Collectors.joining("\n", "", "\n"));
        }).with(TABLES, text -> text.lines().map(line -> line.contains("expect: " + table + "(") ? raised(line) : line)
                .collect(Collectors.joining("\n", "", "\n")));
    }

    private static String raised(String row, int column) {
        String[] cells = row.split(",", column + 2);
        cells[column] = new BigDecimal(cells[column]).add(BigDecimal.ONE).toPlainString();
        return String.join(",", cells);
    }

    /** {@code … = 2.0 HRC} becomes {@code … = 3.0 HRC}. */
    private static String raised(String expectation) {
        int from = expectation.lastIndexOf("= ") + 2;
        int to = expectation.indexOf(" HRC", from);
        return expectation.substring(0, from)
                + new BigDecimal(expectation.substring(from, to)).add(BigDecimal.ONE).toPlainString()
                + expectation.substring(to);
    }
}
