package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ricasso.dsl.trial.TrialHouse.COOKS;
import static org.ricasso.dsl.trial.TrialHouse.WORKS;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ricasso.dsl.diagnostics.Diagnostic;

/** A spec cannot prove itself: what an operation leaves comes from its settings and its centre's scatter. */
class SpecProvesNothingTest {
    private static final String TAPER = "ricasso/operations/taper-grind.ricasso";
    private static final String SHARPEN = "ricasso/operations/sharpen-in-cell.ricasso";

    @ParameterizedTest
    @ValueSource(strings = {"knife.blade.spine", "set-to(knife.blade.spine, by: centre.scatter)",
            "knife.blade.spine.between(0 mm, 20 mm)", "min(knife.blade.spine.least, knife.blade.spine.most)",
            "if knife.blade.spine.least > 0 mm then spine-to else spine-to", "spine-to + knife.blade.spine.width"})
    void limitsInLeavesAreALoadError(String value) {
        TrialHouse house = TrialHouse.single().with(TAPER, "set-to(spine-to, by: centre.scatter)", value);
        List<Diagnostic> errors = house.errors();
        assertThat(errors).isNotEmpty().allSatisfy(error -> {
            assertThat(error.name()).isEqualTo("spec-proves-itself");
            assertThat(error.primary().span().file().name()).isEqualTo(TAPER);
            assertThat(error.primary().span().text()).isEqualTo("knife.blade.spine");
        });
    }

    @Test
    void limitsInAnInBetweenValueAreALoadError() {
        assertThat(TrialHouse.single().with(TAPER, "let face: (spine - spine-to) / 2", "let face: (spine - knife.blade.spine) / 2")
                .errors()).extracting(Diagnostic::name).contains("spec-proves-itself");
    }

    @ParameterizedTest
    @CsvSource({"knife.blade.edge.each-side, 1", "knife.blade.edge.each-side.least, 1",
            "knife.blade.edge.each-side.nominal, 0", "knife.blade.edge.each-side.middle, 0"})
    void aDefaultReadsTheNominalOnly(String value, int errors) {
        assertThat(TrialHouse.single().with(SHARPEN, "default knife.blade.edge.each-side.nominal", "default " + value).errors())
                .hasSize(errors).allMatch(e -> e.name().equals("spec-proves-itself"));
    }

    @Test
    void aSettingDoesNotReadLimits() {
        assertThat(TrialHouse.single().with(COOKS, "angle-to: 15.0 ± 0.5 °", "angle-to: knife.blade.edge.each-side").errors())
                .singleElement().satisfies(e -> assertThat(e.name()).isEqualTo("spec-proves-itself"));
    }

    @Test
    void aStartDoesNotReadLimits() {
        assertThat(TrialHouse.single().with("ricasso/vocabulary/workpiece.ricasso", "edge-angle:   angle\n",
                "edge-angle:   angle starts knife.blade.edge.each-side\n").errors())
                .singleElement().satisfies(e -> assertThat(e.name()).isEqualTo("spec-proves-itself"));
    }

    /** With twice the scatter the wheel cannot hold what the route asks of it, so the knife must fail. */
    @Test
    void twiceTheScatterOfACentreFailsTheKnife() {
        TrialHouse house = TrialHouse.single().with(WORKS, "speed: 20..36 m/s; scatter: 0.025 mm; longest: 320 mm",
                "speed: 20..36 m/s; scatter: 0.05 mm; longest: 320 mm");
        assertThat(house.errors()).isNotEmpty().allSatisfy(error -> {
            assertThat(error.name()).endsWith("-can-be-held");
            assertThat(error.primary().span().file().name()).isEqualTo(COOKS);
            assertThat(error.primary().text()).contains("taper-4, which scatters by ± 0.05 mm");
        });
        assertThat(house.errors()).extracting(e -> e.primary().span().text()).anyMatch("0.33 ± 0.03 mm"::equals);
    }

    /** The furnace's load is within ± 6 K of its setting, asked for is ± 8 K: twice that is too much. */
    @Test
    void twiceTheScatterOfAFurnaceFailsTheKnife() {
        assertThat(TrialHouse.single().with(WORKS, "temperature: 400..1250 °C; uniformity: 6 K",
                "temperature: 400..1250 °C; uniformity: 12 K").errors())
                .singleElement().satisfies(e -> assertThat(e.name()).isEqualTo("temperature-can-be-held"));
    }
}
