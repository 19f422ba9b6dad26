package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.shared.calculation.Definition;
import org.ricasso.shared.quantity.Measure;

/** Pages know no trade: a bakery's house has pages with all it says, in plain tables, and no word of another trade. */
class BakeryPagesTest {
    /** Words of the shipped trade; `temper` also finds `tempered`, but not `temperature`. */
    private static final Pattern OTHER_TRADE = Pattern.compile("(?i)\\b(kni(fe|ves)|blade|steel|bolster|rivet|handle|tang|"
            + "temper(?!ature)\\w*|harden\\w*|hardness|quench\\w*|grind\\w*|hon(e|ing)|forg(e|ing)|sharpen\\w*|edge|scallop|gauge)\\b");

    private static Map<String, String> pages;

    @BeforeAll
    static void render() {
        List<SourceFile> files = Stream.of("units", "kinds", "workpiece", "tables", "operations", "rules", "house")
                .map(name -> text(name + ".ricasso")).toList();
        CheckedHouse house = Ricasso.check(new Texts(files, Map.of("rising.csv", text("rising.csv"))), List.of(
                Definition.define("dough-water", "water for a dough of a wanted warmth")
                        .rises("dough", Measure.TEMPERATURE, 273.15, 320).falls("flour", Measure.TEMPERATURE, 250, 320)
                        .falls("room", Measure.TEMPERATURE, 250, 320)
                        .falls("work", Measure.TEMPERATURE_DIFFERENCE, 0, 30)
                        .gives(Measure.TEMPERATURE, "common practice of bakers", a -> 3 * a[0] - a[1] - a[2] - a[3])),
                Set.of()).checked();
        assertThat(house.diagnostics()).isEmpty();
        pages = Pages.of(house, "Mill Lane Bakery");
    }

    private static SourceFile text(String file) {
        try (InputStream in = BakeryPagesTest.class.getResourceAsStream("/bakery/" + file)) {
            return new SourceFile(file, new String(in.readAllBytes(), StandardCharsets.UTF_8), false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everyProductAndStepHasItsPage() {
        assertThat(pages.keySet()).contains("index.html", "tin-loaf/index.html", "tin-loaf/rules.html",
                "rye-loaf/index.html", "rye-loaf/rules.html");
        for (int step : new int[] {10, 20, 30, 40, 50, 60, 70, 80}) {
            assertThat(pages).containsKey("tin-loaf/step-" + step + ".html");
        }
        assertThat(Pages.text(pages.get("index.html"))).contains("Mill Lane Bakery", "Tin loaf", "Rye loaf");
    }

    @Test
    void noWordOfAnotherTradeIsOnThem() {
        Pages.html(pages).forEach((path, html) -> assertThat(Pages.text(html)).as(path).doesNotContainPattern(OTHER_TRADE));
    }

    /** Nothing of the bakery has a place of its own on a page, so all of it stands in plain tables. */
    @Test
    void whatPagesDoNotKnowStandsInAPlainTable() {
        String spec = Pages.text(pages.get("rye-loaf/index.html"));
        assertThat(spec).contains("Sign R", "Flour rye-1150 Rye flour 1150", "Shelf keeps", "Seeds caraway", "Wetness 68 to 72 %",
                "Core 95 to 99 °C");
        String bake = Pages.text(pages.get("tin-loaf/step-50.html"));
        assertThat(bake).contains("Bake", "Deck oven", "225 ± 5 °C", "48 ± 2 min", "Stage risen",
                "A loaf that has not risen stays a brick.", "The core is read before the loaf leaves the oven.");
        assertThat(bake).as("of the station").contains("oven gloves to the elbow");
        assertThat(bake).as("of the measurement").contains("Probe thermometer", "2 per load", "five minutes more",
                "94 to 98 °C");
        String mix = Pages.text(pages.get("tin-loaf/step-10.html"));
        assertThat(mix).as("a default is said to be one").contains("20 °C").containsIgnoringCase("default");
    }

    @Test
    void aDutyHasABoxOnThePageOfBothSteps() {
        assertThat(Pages.text(pages.get("tin-loaf/step-40.html"))).contains("max 30 min",
                "A dough left lying gets a skin and tears.", "step 20");
    }
}
