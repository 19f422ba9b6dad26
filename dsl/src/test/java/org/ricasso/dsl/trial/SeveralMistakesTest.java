package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ricasso.dsl.trial.TrialHouse.COOKS;
import static org.ricasso.dsl.trial.TrialHouse.ROUTE;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Severity;

/** Unrelated mistakes in one text are all reported, and nothing that follows from them. */
class SeveralMistakesTest {
    /** Pairs in which only one can be said, and why. */
    private static final Map<String, String> ONE = Map.ofEntries(
            Map.entry("tempered-at-245 + misspelt-steel", "the hardness of an unknown steel is unknown"),
            Map.entry("tempered-at-350 + misspelt-steel", "the hardness of an unknown steel is unknown"),
            Map.entry("misspelt-steel + beyond-the-grade", "the reach of an unknown steel is unknown"),
            Map.entry("tempered-at-245 + fahrenheit", "hardened at an unknown temperature the hardness is unknown"),
            Map.entry("tempered-at-350 + fahrenheit", "hardened at an unknown temperature the hardness is unknown"),
            Map.entry("tempered-at-245 + beyond-the-grade", "the hardness asked is missed by one temper"),
            Map.entry("deep-scallop + soft-skin", "the scallop is ground into a flank that is said to be wrong"),
            Map.entry("fahrenheit + beyond-the-furnace", "one value"),
            Map.entry("beyond-the-furnace + narrow-temperature", "one value"));
    /** Pairs of which the second is no change of the house with the first: both write the same place. */
    private static final Set<String> NONE = Set.of("tempered-at-245 + tempered-at-350",
            "unmeasured-angle + angle-measured-early", "fahrenheit + narrow-temperature");

    @Test
    void twoMistakesAreTwoErrors() {
        List<Mistake> all = Mistakes.all();
        List<String> wrong = IntStream.range(0, all.size()).boxed().parallel().flatMap(i -> IntStream.range(i + 1, all.size())
                .mapToObj(j -> judged(all.get(i), all.get(j)))).filter(s -> !s.isEmpty()).sorted().toList();
        assertThat(wrong).isEmpty();
    }

    private static String judged(Mistake first, Mistake second) {
        String pair = first.id() + " + " + second.id();
        if (NONE.contains(pair)) {
            return "";
        }
        List<Diagnostic> errors = second.make().apply(first.house()).errors();
        int asked = ONE.containsKey(pair) ? 1 : 2;
        return errors.size() == asked ? "" : pair + ": " + errors.stream().map(Diagnostic::name).toList();
    }

    @Test
    void fiveMistakesAreFiveDiagnostics() {
        TrialHouse house = TrialHouse.single()
                // a name, in a measurement
                .with(ROUTE, "billet-mass { gauge: scale-01;", "billet-mass { gauge: scale-10;")
                // a unit
                .with(ROUTE, "hold:     8 ± 1 min", "hold:     8 ± 1 kg")
                // the walk: a temper that leaves the blade too soft
                .with(ROUTE, "170 temper at temper-3 { temperature: 180 ± 5 °C", "170 temper at temper-3 { temperature: 245 ± 5 °C")
                // the walk: scales that come out too thick
                .with(COOKS, "thickness-to:   7.60 ± 0.05 mm", "thickness-to:   7.90 ± 0.05 mm")
                // the syntax
                .with(COOKS, "            carton: box-205", "            carton box-205");
        List<Diagnostic> diagnostics = house.diagnostics();
        assertThat(diagnostics).allMatch(d -> d.severity() == Severity.ERROR);
        assertThat(diagnostics).extracting(d -> d.name() + " " + d.primary().span().text()).containsExactly(
                "characteristic-missed 7.90 ± 0.05 mm",
                "colon-missing ",
                "unknown-name scale-10",
                "wrong-dimension 8 ± 1 kg",
                "characteristic-missed 245 ± 5 °C");
    }
}
