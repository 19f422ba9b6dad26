package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.evaluate.Margin;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.Judgement;
import org.ricasso.dsl.walk.Outcome;

/** A margin says on which side of its limit a number lies, and by how much; by hand from the texts of the house. */
class MarginsTest {
    private static final CheckedHouse HOUSE = TrialHouse.whole().check();

    private static List<Margin> margins(CheckedHouse house, String rule, int step) {
        CheckedProduct cooks = house.products().stream().filter(p -> p.product().name().equals("cooks-200")).findFirst()
                .orElseThrow();
        return cooks.judgements().stream().filter(j -> j.rule().equals(rule) && j.step() == step).findFirst().orElseThrow()
                .margins();
    }

    @Test
    void aMarginIsTheDistanceToWhereTheVerdictChanges() {
        // 180 °C in the grade's window of 150 to 220 °C
        assertThat(margins(HOUSE, "temper-in-the-window", 170)).extracting(Margin::shownAim).containsExactly("30.0 K", "40.0 K");
        assertThat(margins(HOUSE, "temper-in-the-window", 170)).extracting(Margin::text).containsExactly(
                "step.temperature.middle >= window.least", "step.temperature.middle <= window.most");
        // 15 ± 1 ° on each side, 40 ° at most for both
        assertThat(margins(HOUSE, "included-angle", 0).get(0).shownAim()).isEqualTo("8.0 °");
        // 200 ± 1 mm, and the washer takes 350 mm
        assertThat(margins(HOUSE, "blade-goes-in", 110).get(0).shownAim()).isEqualTo("149.0 mm");
    }

    @Test
    void beyondTheLimitItIsNegative() {
        for (int temperature : new int[] {200, 219, 221, 240}) {
            CheckedHouse moved = TrialHouse.whole().with(TrialHouse.ROUTE, "temperature: 180 ± 5 °C; hold: 120 (+20/0) min",
                    "temperature: " + temperature + " ± 5 °C; hold: 120 (+20/0) min").check();
            assertThat(margins(moved, "temper-in-the-window", 170).get(1).aim()).isCloseTo(220 - temperature, within(1e-9));
        }
    }

    @Test
    void allJudgementsAndOutcomesAgreeWithTheirMargins() {
        int compared = 0;
        CheckedHouse worse = TrialHouse.whole().with(TrialHouse.ROUTE, "temperature: 180 ± 5 °C; hold: 120 (+20/0) min",
                "temperature: 245 ± 5 °C; hold: 120 (+20/0) min").check();
        for (CheckedHouse house : List.of(HOUSE, worse)) {
            for (CheckedProduct product : house.products()) {
                for (Judgement judgement : product.judgements()) {
                    compared += judgement.margins().size();
                    if (judgement.verdict() == Judgement.Verdict.HOLDS) {
                        assertThat(judgement.margins()).as(judgement.rule()).allMatch(m -> m.aim() >= -1e-9);
                    }
                    assertThat(judgement.margins()).as(judgement.rule()).allMatch(m -> m.reach() <= m.aim() + 1e-12);
                }
                for (Outcome outcome : product.outcomes()) {
                    Margin margin = Margin.inside(outcome.asked(), outcome.found());
                    if (margin != null) {
                        compared++;
                        assertThat(outcome.made()).as(outcome.entry()).isEqualTo(margin.reach() >= -1e-9
                                ? Outcome.Made.PROVED : margin.aim() >= -1e-9 ? Outcome.Made.AIMED : Outcome.Made.MISSED);
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(300);
    }
}
