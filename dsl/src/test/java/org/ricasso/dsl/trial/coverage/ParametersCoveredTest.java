package org.ricasso.dsl.trial.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.trial.TrialHouse;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.Unit;

/**
 * The reference's 367 parameters of 61 operations ({@code operation-parameters.csv}, a copy with its sources stands beside the second opinion):
 * {@code parameters.csv} says of each which setting, entry, rule or table holds it. Where a setting does, what it may be set to holds the
 * reference's window. The column {@code unit} says which unit of ours the reference means where it writes another, a stroke where window and
 * setting are no numbers of one kind; a reason behind a number says why the window's lower end is left out.
 */
class ParametersCoveredTest {
    private static final List<Map<String, String>> MAP = Rows.of("/org/ricasso/dsl/trial/coverage/parameters.csv");
    private static final List<Map<String, String>> REFERENCE = Rows.of("/org/ricasso/oracle/operation-parameters.csv");
    private static final Vocabulary VOCABULARY = TrialHouse.whole().vocabulary(new Findings());

    @Test
    void everyParameterStandsThereOnce() {
        assertThat(MAP).hasSize(367);
        assertThat(MAP.stream().map(row -> row.get("op") + " " + row.get("parameter"))).doesNotHaveDuplicates()
                .containsExactlyElementsOf(REFERENCE.stream().map(row -> row.get("op_id") + " " + row.get("parameter")).toList());
    }

    @Test
    void whatHoldsThemIsThere() {
        assertThat(MAP.stream().flatMap(row -> Holder.in(row.get("held by")).stream()).filter(holder -> !holder.exists(VOCABULARY))).isEmpty();
    }

    /** What nothing holds has a reason, and these are few. */
    @Test
    void whatIsLeftOutHasAReason() {
        List<Map<String, String>> out = MAP.stream().filter(row -> row.get("held by").isEmpty()).toList();
        assertThat(out).allMatch(row -> row.get("why").length() > 40).hasSizeLessThanOrEqualTo(8);
    }

    @Test
    void whatASettingMayBeHoldsTheWindow() {
        List<String> wrong = new ArrayList<>();
        int compared = 0;
        for (int i = 0; i < MAP.size(); i++) {
            Map<String, String> row = MAP.get(i);
            for (Holder holder : Holder.in(row.get("held by"))) {
                if (holder.what().equals("setting") && !row.get("unit").equals("-")) {
                    compared++;
                    String unit = row.get("unit").isEmpty() ? REFERENCE.get(i).get("unit") : row.get("unit");
                    compare(holder, REFERENCE.get(i), unit, !row.get("why").isEmpty()).forEach(says -> wrong.add(holder + ": " + says));
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(compared).isGreaterThan(250);
    }

    private static List<String> compare(Holder holder, Map<String, String> parameter, String sign, boolean upperAlone) {
        EntryType setting = holder.setting(VOCABULARY);
        Unit unit = sign.equals("1") ? Unit.NONE : VOCABULARY.units().find(sign).orElse(null);
        if (unit == null || !(setting.type() instanceof Type.Measured of) || !of.measure().dimension().equals(unit.dimension())) {
            return List.of("it does not measure what " + sign + " does");
        }
        boolean point = of.measure().point();
        double least = unit.toCoherent(Double.parseDouble(parameter.get("min")), point);
        double most = unit.toCoherent(Double.parseDouble(parameter.get("max")), point);
        List<String> wrong = new ArrayList<>();
        if (setting.within() == null && setting.usual() == null) {
            wrong.add("it has no range");
        }
        for (Quantity range : new Quantity[] {setting.within(), setting.usual()}) {
            if (range != null) {
                Interval may = range.aim();
                double slack = 1e-9 * Math.max(Math.abs(most), 1e-6);
                if (may.most() < most - slack || !upperAlone && may.least() > least + slack) {
                    wrong.add(parameter.get("parameter") + " " + parameter.get("min") + ".." + parameter.get("max") + " " + sign
                            + " is not inside " + may.least() + ".." + may.most());
                } else if (upperAlone && may.least() <= least + slack) {
                    wrong.add("its lower end needs no reason");
                }
            }
        }
        return wrong;
    }
}
