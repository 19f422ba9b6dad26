package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** The spec sheet, the rule report and the overview say what the check found. */
class SpecSheetTest {
    private static final Map<String, String> PAGES = Pages.of(TestHouses.small());

    @Test
    void eachCharacteristicSaysWhatBecameOfIt() {
        assertThat(Pages.text(PAGES.get("ab-2120/index.html"))).containsSubsequence(
                "3 characteristics: 2 proved, 1 aimed.", "Proved: all that", "Aimed: the aim is inside", "Looks zones A and B as LS-07", "Blade",
                "Steel 1.4116 X50CrMoV15",
                "Hardness 55 to 58 HRC", "56.2 to 57.1 HRC computed, with scatter 54.7 to 58.6 HRC", "Aimed.",
                "Made at 170 Temper", "Measured at 200 Test the hardness",
                "Spine at heel 2.8 ± 0.1 mm at tip − 10 mm 1.2 ± 0.1 mm", "Proved.",
                "Grind flat default", "Edge", "Behind 0.30 ± 0.05 mm");
    }

    @Test
    void anEntryThatIsNotWrittenIsNotShown() {
        assertThat(Pages.text(PAGES.get("ab-2120/index.html"))).doesNotContain("Roughness");
    }

    @Test
    void aRuleThatWasNotJudgedIsNoPass() {
        assertThat(Pages.text(PAGES.get("ab-2120/rules.html"))).containsSubsequence(
                "Does not hold", "A quenched blade does not wait", "155 Quench : waits up to 5 h",
                "Not judged", "That is not a pass.", "The last belt leaves the roughness",
                "The product as a whole: blade.roughness is not written",
                "Holds", "A blade is quenched before it is tempered", "170 Temper",
                "The edge keeps its thickness", "155 Quench : 0.07 mm to spare with scatter 0.02 mm to spare");
        assertThat(Pages.text(PAGES.get("index.html"))).contains("Rules not judged: 1");
    }

    @Test
    void theRuleReportSaysHowFarACharacteristicIsFromItsLimit() {
        assertThat(Pages.text(PAGES.get("ab-2120/rules.html"))).containsSubsequence("Characteristics",
                "Blade, hardness", "55 to 58 HRC", "Aimed", "to spare", "with scatter", "0.6 HRC beyond",
                "Blade, edge, behind", "0.30 ± 0.05 mm", "Proved", "0.02 mm to spare");
    }

    @Test
    void aFindingIsShownWhole() {
        assertThat(Pages.text(PAGES.get("index.html"))).containsSubsequence(
                "warning roughness-not-written", "no step is asked for a roughness",
                "knives/cooks-200.ricasso:2:1", "the blade stands here", "knives/cooks-200.ricasso:1:1",
                "also the finish is satin", "because a belt leaves what it leaves", "remedy write the roughness",
                "source common practice");
    }

    @Test
    void aForeignVocabularyIsShownAsPlainTables() {
        Map<String, String> bakery = Pages.of(TestHouses.bakery());
        assertThat(Pages.text(bakery.get("farmhouse/index.html"))).containsSubsequence("farmhouse", "Farmhouse loaf",
                "Status not stated", "Flour Rye flour", "Crust", "Colour brown", "Proved.",
                "Made and measured at 10 Bake");
        assertThat(Pages.text(bakery.get("farmhouse/step-10.html"))).containsSubsequence("10 Bake",
                "at oven-1 Deck oven", "Dough risen", "Heat 235 ± 5 °C", "Nose The baker's nose",
                "Smells of bread", "Stone chamotte");
    }

    @Test
    void manyProductsAreFoldedAndEachHasItsFolder() {
        var small = TestHouses.small();
        var many = new org.ricasso.dsl.walk.CheckedHouse(
                java.util.Collections.nCopies(7, small.products().get(0)), java.util.List.of(), java.util.List.of());
        Map<String, String> pages = Pages.html(Pages.of(many));
        assertThat(pages).hasSize(1 + 7 * 7);
        assertThat(pages.get("index.html")).contains("<details>").doesNotContain("<details open>");
        assertThat(PAGES.get("index.html")).contains("<details open>");
    }
}
