package org.ricasso.dsl.bakery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.answer.Calculator;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.CheckedStep;
import org.ricasso.dsl.walk.Judgement;
import org.ricasso.dsl.walk.Outcome;

/** The language knows no trade: a bakery's vocabulary is checked and walked as the shipped one is, with that one absent. */
class BakeryTest {
    private static final String RISE = "40 rise at room-1 { room: 27 ± 1 °C; hold: 70 ± 5 min }";

    @Test
    void theBakeryHolds() {
        CheckedHouse house = Bakery.checked().checked();
        assertThat(house.diagnostics()).isEmpty();
        assertThat(house.products()).extracting(p -> p.product().name()).containsExactly("rye-loaf", "tin-loaf");
        CheckedProduct tin = house.products().get(1);
        assertThat(tin.outcomes()).extracting(Outcome::entry).containsExactly("dough.portion", "dough.wetness",
                "loaf.height", "loaf.firmness", "loaf.crust", "loaf.core", "loaf.slices");
        assertThat(tin.outcomes().subList(0, 6)).extracting(Outcome::made).containsOnly(Outcome.Made.PROVED);
        // the slicer's play of 0.8 mm may carry 11 ± 0.4 mm out of 11 ± 1 mm, so it is measured
        assertThat(outcome(tin, "loaf.slices").made()).isEqualTo(Outcome.Made.AIMED);
        assertThat(outcome(tin, "loaf.slices").measuredAt()).containsExactly(70);
        assertThat(outcome(tin, "loaf.height").measuredAt()).containsExactly(80);
    }

    /** A rule for measurements finds the block that is called as the limit's dimension, whatever the thing is called. */
    @Test
    void aThermometerIsHeldAgainstTheLimit() {
        Diagnostic found = Bakery.checked(Map.of("\"0.1 °C\"; temperature { off: 0.5 K }", "\"0.1 °C\"; temperature { off: 2 K }",
                "temperature { off: 1.5 K }", "temperature { off: 0.75 K }")).checked().diagnostics().get(0);
        assertThat(found.name()).isEqualTo("warmth-is-told");
        assertThat(found.primary().text()).isEqualTo("probe is off by 2 K, core has 4.0 K to lie in");
        assertThat(found.remedies()).extracting(Remedy::text).containsExactly("read it with glass");
    }

    /** A rule for settings is for whatever thing a setting names that has what it reads, and offers others of the kind. */
    @Test
    void aTinOfAnotherLoafIsExchanged() {
        Map<String, String> other = Map.of("tin:       long-tin", "tin:       round-tin");
        Diagnostic found = one(other, "tin-fits");
        assertThat(marked(found)).isEqualTo("round-tin");
        assertThat(found.primary().text()).isEqualTo("round-tin is for rye-loaf, not for tin-loaf");
        assertThat(found.others()).extracting(m -> m.text()).containsExactly("fits of round-tin", "this is tin-loaf");
        assertThat(found.remedies()).extracting(Remedy::text).containsExactly("set tin of step 50 to long-tin");
        assertThat(mended(other, found)).isEmpty();
    }

    /** By hand: 3000 ± 10 g of water to 5000 ± 10 g of flour, each dosed to ± 5 g. */
    @Test
    void wetnessIsWaterToFlour() {
        Value.Num found = (Value.Num) outcome(product(Bakery.checked(), "tin-loaf"), "dough.wetness").found();
        assertThat(found.quantity().aim().least()).isCloseTo(2990.0 / 5010, within(1e-12));
        assertThat(found.quantity().aim().most()).isCloseTo(3010.0 / 4990, within(1e-12));
        assertThat(found.quantity().reach().least()).isCloseTo(2985.0 / 5015, within(1e-12));
        assertThat(found.quantity().reach().most()).isCloseTo(3015.0 / 4985, within(1e-12));
    }

    /** By hand: doubles in 83.3 min at 26 °C and in 66.7 min at 28 °C, straight between the rows 24 and 30 °C. */
    @Test
    void theDoughGrowsByTheTable() {
        CheckedStep rise = step(product(Bakery.checked(), "tin-loaf"), 40);
        Value.Num grown = (Value.Num) rise.handOver().stream().filter(h -> h.path().equals("loaf.growth")).findFirst()
                .orElseThrow().value();
        assertThat(grown.quantity().aim().least()).isCloseTo(1 + 65 / (100 - 50 * 2 / 6.0), within(1e-9));
        assertThat(grown.quantity().aim().most()).isCloseTo(1 + 75 / (100 - 50 * 4 / 6.0), within(1e-9));
        assertThat(grown.quantity().reach().most()).isGreaterThan(grown.quantity().aim().most());
    }

    @Test
    void stepsSayWhatTheirPageNeeds() {
        CheckedStep bake = step(product(Bakery.checked(), "tin-loaf"), 50);
        assertThat(bake.title()).isEqualTo("Bake");
        assertThat(bake.works()).isEqualTo("Loaf");
        assertThat(bake.instruct()).first().isEqualTo("Oven at 225 ± 5 °C, loaf in for 48 ± 2 min.");
        assertThat(bake.arrival()).extracting(CheckedStep.Arrival::condition).containsExactly("risen");
        assertThat(bake.attributes()).containsEntry("warms", Value.Words.of("yes"));
        assertThat(bake.measured()).singleElement().satisfies(m -> {
            assertThat(m.entries()).containsOnlyKeys("with", "often", "if-wrong");
            assertThat(m.characteristic()).isTrue();
        });
    }

    @Test
    void aClockThatTheRouteCannotProveIsADuty() {
        CheckedStep.Arrival rested = step(product(Bakery.checked(), "tin-loaf"), 40).arrival().stream()
                .filter(a -> a.name().equals("rested")).findFirst().orElseThrow();
        assertThat(rested.isDuty()).isTrue();
        assertThat(rested.since()).isEqualTo(20);
        assertThat(rested.condition()).isEqualTo("max 30 min");
        assertThat(rested.complaint()).isEqualTo("a dough left lying gets a skin and tears");
    }

    @Test
    void aClockThatTheRouteOverrunsIsAnError() {
        Diagnostic late = one(Map.of(RISE, "35 rest { hold: 40 min }\n        " + RISE), "need-unmet");
        assertThat(late.primary().text()).isEqualTo("rested is at least 40 min, rise needs max 30 min");
        assertThat(marked(late)).isEqualTo("rise");
        assertThat(late.others()).extracting(m -> m.span().text()).containsExactly("knead");
    }

    @Test
    void aStepLeftOutIsFoundWhereItsWorkIsNeeded() {
        Diagnostic flat = one(Map.of("        " + RISE + "\n", ""), "need-unmet");
        assertThat(marked(flat)).isEqualTo("bake");
        assertThat(flat.primary().text()).isEqualTo("stage is kneaded, bake needs risen");
        assertThat(flat.because()).containsExactly("a loaf that has not risen stays a brick");
        assertThat(flat.others()).extracting(m -> m.span().text()).containsExactly("knead");
    }

    @Test
    void aStepAtTheWrongPlaceIsMoved() {
        Map<String, String> raw = Map.of("        " + RISE + "\n", "", "        60 cool at rack-1 { hold: 100 ± 10 min }",
                "        55 " + RISE.substring(3) + "\n        60 cool at rack-1 { hold: 100 ± 10 min }");
        Diagnostic late = one(raw, "need-unmet");
        assertThat(late.remedies()).extracting(Remedy::text).containsExactly("move step 50 bake before step 60, as step 57");
        assertThat(mended(raw, late)).isEmpty();
    }

    @Test
    void aPropertyOfTheWholePieceIsNeededAsThatOfAPart() {
        Map<String, String> bare = Map.of("        30 flour-tray\n        " + RISE, "        " + RISE);
        Diagnostic sticks = one(bare, "need-unmet");
        assertThat(sticks.primary().text()).isEqualTo("tray is bare, rise needs floured");
        assertThat(sticks.remedies()).extracting(Remedy::text).containsExactly("insert 30 flour-tray before step 40");
        assertThat(mended(bare, sticks)).isEmpty();
    }

    @Test
    void aCharacteristicThatIsMissedIsMarkedAtItsSetting() {
        Map<String, String> wet = Map.of("water-mass: 3000 ± 10 g", "water-mass: 3300 ± 10 g");
        Diagnostic missed = one(wet, "characteristic-missed");
        assertThat(marked(missed)).isEqualTo("3300 ± 10 g");
        assertThat(missed.primary().text()).contains("leaves wetness 65.6..66.4 %", "asked for 58..62 %");
        assertThat(mended(wet, missed)).isEmpty();
    }

    @Test
    void aCharacteristicMeasuredTooEarlyIsFound() {
        String height = "            height  { with: ruler; often: 3 per load; if-wrong: \"to the crumbs\" }\n";
        String core = "            core { with: probe; often: 2 per load; if-wrong: \"five minutes more\" }\n        }\n"
                + "        60 cool at rack-1 { hold: 100 ± 10 min }";
        String bubbles = "            bubbles { with: ruler; often: 1 per load; if-wrong: \"tell the baker\" }\n";
        String crust = "            crust   { with: colour-card; often: each; if-wrong: \"to the crumbs\" }\n";
        String rye = "bread rye-loaf";
        Map<String, String> hasty = Map.of(core, height + core, crust + height + bubbles + "        }\n    }\n}\n\n" + rye,
                crust + bubbles + "        }\n    }\n}\n\n" + rye);
        Diagnostic early = one(hasty, "measured-too-early");
        assertThat(marked(early)).isEqualTo("height");
        assertThat(early.primary().text()).isEqualTo("height is measured here, but step 60 cool can change it after that");
        assertThat(early.others()).extracting(m -> m.span().text()).contains("cool");
        assertThat(early.remedies()).extracting(Remedy::text)
                .containsExactly("measure height in step 80 look-over, not in step 50");
        assertThat(mended(hasty, early)).isEmpty();
    }

    @Test
    void aCharacteristicNobodyMeasuresIsFound() {
        Diagnostic unmeasured = one(Map.of(
                "            slices { with: ruler; often: 1 per load; if-wrong: \"set the fence\" }\n", ""), "unmeasured");
        assertThat(marked(unmeasured)).isEqualTo("11 ± 1 mm");
        // nothing in the house shows how slices are measured
        assertThat(unmeasured.remedies()).isEmpty();
    }

    @Test
    void rulesOfAnOperationAStepTheProductAndAKindAreJudged() {
        CheckedProduct rye = product(Bakery.checked(), "rye-loaf");
        assertThat(rye.judgements()).extracting(Judgement::rule, Judgement::step, Judgement::verdict).containsExactly(
                tuple("water-is-right", 10, Judgement.Verdict.HOLDS),
                tuple("crust-not-bitter", 50, Judgement.Verdict.HOLDS),
                tuple("not-over-risen", 50, Judgement.Verdict.HOLDS),
                tuple("crumb-is-set", 0, Judgement.Verdict.HOLDS),
                tuple("warmth-is-told", 50, Judgement.Verdict.HOLDS));

        Map<String, String> hot = Map.of("oven:       255 ± 4 °C", "oven:       268 ± 4 °C");
        Diagnostic bitter = one(hot, "crust-not-bitter");
        assertThat(marked(bitter)).isEqualTo("268 ± 4 °C");
        assertThat(bitter.remedies()).extracting(Remedy::text).containsExactly("set oven of step 50 to 266 ± 4 °C");
        assertThat(mended(hot, bitter)).isEmpty();

        Diagnostic fallen = one(Map.of("hold: 70 ± 5 min", "hold: 110 ± 5 min"), "not-over-risen");
        assertThat(marked(fallen)).isEqualTo("bake");
        assertThat(fallen.others()).extracting(m -> m.span().text()).containsExactly("rise");

        Map<String, String> raw = Map.of("hold:      48 ± 2 min", "hold:      35 ± 2 min");
        List<Diagnostic> paste = Bakery.checked(raw).checked().diagnostics();
        assertThat(paste).allSatisfy(d -> assertThat(List.of("94..98 °C", "35 ± 2 min")).contains(marked(d)));
        assertThat(paste).flatExtracting(Diagnostic::remedies).extracting(Remedy::text)
                .contains("set hold of step 50 to 50 ± 2 min (leaves core 96..97 °C)");

        Diagnostic wheat = one(Map.of("protein: 9 %", "protein: 13 %"), "rye-is-weak");
        assertThat(wheat.severity()).isEqualTo(Severity.WARNING);
        assertThat(marked(wheat)).isEqualTo("13 %");
    }

    /** The table has no row for a room as warm, so nothing is guessed. */
    @Test
    void aTableIsNotReadBeyondItsRows() {
        Map<String, String> warm = Map.of("room: 27 ± 1 °C", "room: 33 ± 1 °C");
        Diagnostic refused = one(warm, "cannot-be-told");
        assertThat(marked(refused)).isEqualTo("33 ± 1 °C");
        assertThat(refused.primary().text()).contains("rising has rows from 20..30 °C for warmth, asked for 32..34 °C");
        assertThat(mended(warm, refused)).isEmpty();
    }

    @Test
    void namesAndDimensionsAreCheckedAgainstThisVocabulary() {
        Map<String, String> swapped = Map.of("flour: rye-1150", "flour: rye-1510");
        Diagnostic unknown = one(swapped, "unknown-name");
        assertThat(unknown.primary().text()).isEqualTo("no flour is named rye-1510");
        assertThat(mended(swapped, unknown)).isEmpty();

        Diagnostic warm = one(Map.of("hold:      48 ± 2 min", "hold:      48 ± 2 °C"), "wrong-dimension");
        assertThat(marked(warm)).isEqualTo("48 ± 2 °C");

        Diagnostic elsewhere = one(Map.of("bake at oven-1 {\n            oven:      225", "bake at rack-1 {\n            oven:      225"),
                "wrong-centre");
        assertThat(elsewhere.remedies()).extracting(Remedy::text).containsExactly("write oven-1");
    }

    @Test
    void theTextsAreExplained() {
        Ricasso bakery = Bakery.checked();
        assertThat(bakery.explain("bake").orElseThrow()).contains("operation bake \"Bake\"", "  runs at   Oven",
                "  rules     crust-not-bitter, tin-fits", "  needs     loaf.stage: risen (else a loaf that has not risen stays a brick)");
        assertThat(bakery.explain("crust-not-bitter").orElseThrow()).contains("  require   oven.most <= bread.flour.scorches",
                "  because   burnt sugar and starch taste bitter", "  source    common practice",
                "  passes    oven: 230 ± 5 °C; bread.flour.scorches: 260 °C");
        assertThat(bakery.explain("bread").orElseThrow()).contains("  things    rye-loaf, tin-loaf");
        assertThat(bakery.explain("rising").orElseThrow()).contains("  rows      5");
        assertThat(bakery.explain("rye-1150").orElseThrow()).first().isEqualTo("flour rye-1150 \"Rye flour 1150\"");
        assertThat(bakery.explain("dough-water").orElseThrow()).contains("  source    common practice of bakers");
        assertThat(bakery.explain("growth").orElseThrow()).contains("  left by   knead, rise");
        assertThat(bakery.near("bakee")).containsExactly("bake");
        for (String ofAnotherTrade : List.of("temper", "knife", "steel", "1.4116", "tempering-loss")) {
            assertThat(bakery.explain(ofAnotherTrade)).as(ofAnotherTrade).isEmpty();
        }
    }

    /** Base temperature by hand: 3 · 26 − 21 − 22 − 4 = 31 °C. */
    @Test
    void expressionsAreCalculated() {
        Ricasso bakery = Bakery.checked();
        assertThat(bakery.calculate("dough-water(dough: 26 °C, flour: 21 °C, room: 22 °C, work: 4 K)", null).value())
                .isEqualTo("31 °C");
        Calculator.Answer answer = bakery.calculate("after.loaf.growth", "tin-loaf");
        assertThat(answer.value()).isEqualTo("1.78..2.125");
        assertThat(answer.derivation()).anyMatch(line -> line.contains("rising(grain: bread.flour.grain, warmth: room)"))
                .anyMatch(line -> line.contains("a baker's bench"));
        assertThat(bakery.calculate("bread.dough.portion - 50 g", "tin-loaf").value()).isEqualTo("830..870 g");
        assertThat(bakery.calculate("knife.blade.steel", "tin-loaf").diagnostics()).extracting(Diagnostic::name)
                .containsExactly("unknown-name");
    }

    private static Outcome outcome(CheckedProduct product, String entry) {
        return product.outcomes().stream().filter(o -> o.entry().equals(entry)).findFirst().orElseThrow();
    }

    private static CheckedProduct product(Ricasso bakery, String name) {
        return bakery.checked().products().stream().filter(p -> p.product().name().equals(name)).findFirst().orElseThrow();
    }

    private static CheckedStep step(CheckedProduct product, int number) {
        return product.steps().stream().filter(s -> s.number() == number).findFirst().orElseThrow();
    }

    private static String marked(Diagnostic diagnostic) {
        return diagnostic.primary().span().text();
    }

    /** The one finding of the bakery with these changes. */
    private static Diagnostic one(Map<String, String> changes, String name) {
        List<Diagnostic> found = Bakery.checked(changes).checked().diagnostics();
        assertThat(found).extracting(Diagnostic::name).as(changes.toString()).containsExactly(name);
        return found.get(0);
    }

    /** What is found once the first remedy has been applied as it stands. */
    private static List<Diagnostic> mended(Map<String, String> changes, Diagnostic diagnostic) {
        assertThat(diagnostic.remedies()).isNotEmpty();
        assertThat(diagnostic.remedies().get(0).edits()).isNotEmpty();
        return Bakery.checked(changes, diagnostic.remedies().get(0).edits()).checked().diagnostics();
    }

    /**
     * The time in the oven that brings the core to the middle of 94 to 98 °C. Of a loaf of 900 g the table says 75 °C at 25, 96 °C at
     * 45 and 99 °C at 70 min: from 45 to 49 min 96 to 96.48 °C, in the middle 96.24; a minute less, from 44 min on, 94.95 to 96.36, in
     * the middle 95.655, is further from 96.
     */
    @Test
    void aBakerSolvesForTheTimeInTheOven() {
        List<Diagnostic> found = Bakery.checked(Map.of("oven:      225 ± 5 °C\n            hold:      48 ± 2 min",
                "oven:      225 ± 5 °C\n            hold:      solve(core, within: 2 min)")).checked().diagnostics();
        assertThat(found).extracting(Diagnostic::name).containsExactly("solve-missing");
        assertThat(found.get(0).primary().text()).contains("hold of step 50 of tin-loaf", "it is 47 ± 2 min (leaves core 96..97 °C)");
    }
}
