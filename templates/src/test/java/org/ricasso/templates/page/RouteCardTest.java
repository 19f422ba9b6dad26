package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** The card that travels with a lot. */
class RouteCardTest {
    private static final Map<String, String> PAGES = Pages.of(TestHouses.small());

    @Test
    void everyStepHasRoomForTheLot() {
        String card = PAGES.get("ab-2120/card.html");
        assertThat(Pages.text(PAGES.get("ab-2120/card.html"))).containsSubsequence("Route card", "AB-2120", "Revision C",
                "Lot", "Pieces issued", "Heat or batch", "155 Quench", "170 Temper", "200 Test the hardness");
        assertThat(card.split("<td data-label=\"Good\"></td>", -1)).hasSize(1 + 3);
        assertThat(card.split("data-label=\"Load, note\"></td>", -1)).hasSize(1 + 3);
        assertThat(card.split("<td data-label=\"Initials\"></td>", -1)).hasSize(1 + 3);
    }

    @Test
    void aTimeThatTheRouteCannotProveHasItsBoxes() {
        assertThat(Pages.text(PAGES.get("ab-2120/card.html"))).containsSubsequence("155 Quench", "Time out of here",
                "170 Temper", "Since quench: max 4 h, counted from step 155.", "Time in here");
    }

    @Test
    void aWayBackSaysWhereToAndHowOften() {
        assertThat(Pages.text(PAGES.get("ab-2120/card.html"))).containsSubsequence("200 Test the hardness",
                "Hardness not right: back to step 170, a piece at most 2 times.", "Pieces sent back");
    }

    @Test
    void aDraftIsADraftOnItsCard() {
        assertThat(Pages.text(PAGES.get("ab-1109/card.html"))).contains("Nobody has released this sheet.");
    }

    @Test
    void isReachedFromTheSpecSheetAndTheOverview() {
        assertThat(PAGES.get("ab-2120/index.html")).contains("<a href=\"card.html\">Route card</a>");
        assertThat(PAGES.get("index.html")).contains("<a href=\"ab-2120/card.html\">Route card</a>");
    }
}
