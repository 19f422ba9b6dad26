package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ricasso.dsl.trial.TrialHouse.COOKS;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Severity;

/** Unrelated mistakes in one text are all reported, and nothing that follows from them. */
class SeveralMistakesTest {

    @Test
    void fiveMistakesAreFiveDiagnostics() {
        TrialHouse house = TrialHouse.whole()
                // a name, in a measurement
                .with(COOKS, "billet-mass { gauge: scale-01;", "billet-mass { gauge: scale-10;")
                // a unit
                .with(COOKS, "hold:     8 ± 1 min", "hold:     8 ± 1 kg")
                // the walk: a temper that leaves the blade too soft
                .with(COOKS, "170 temper at temper-3 { temperature: 180 ± 5 °C", "170 temper at temper-3 { temperature: 245 ± 5 °C")
                // the walk: scales that come out too thick
                .with(COOKS, "thickness-to:   7.60 ± 0.05 mm", "thickness-to:   7.90 ± 0.05 mm")
                // the syntax
                .with(COOKS, "            carton: \"box 205\"", "            carton \"box 205\"");
        List<Diagnostic> diagnostics = house.diagnostics();
        assertThat(diagnostics).allMatch(d -> d.severity() == Severity.ERROR);
        assertThat(diagnostics).extracting(d -> d.name() + " " + d.primary().span().text()).containsExactly(
                "unknown-name scale-10",
                "wrong-dimension 8 ± 1 kg",
                "characteristic-missed 245 ± 5 °C",
                "characteristic-missed 7.90 ± 0.05 mm",
                "colon-missing ");
    }
}
