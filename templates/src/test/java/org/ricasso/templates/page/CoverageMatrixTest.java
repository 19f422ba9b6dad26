package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What is specified against the steps that make, change and measure it. */
class CoverageMatrixTest {
    private static final Map<String, String> PAGES = Pages.of(TestHouses.small());
    private static final Pattern SAID = Pattern.compile("aria-label=\"([^\"]*)\"");
    private static final String MATRIX = PAGES.get("ab-2120/coverage.html");

    @Test
    void theStepThatMakesItAndTheOneThatMeasuresItAreMarkedInItsColumn() {
        assertThat(cells("155")).containsExactly("", "made here", "made here");
        assertThat(cells("170")).containsExactly("made here", "can change here", "");
        assertThat(cells("200")).containsExactly("measured here", "", "");
    }

    @Test
    void everyMarkHasWords() {
        assertThat(MATRIX.split("class=\"(?:dot|reading)", -1).length).isEqualTo(MATRIX.split("role=\"img\" aria-label=\"", -1).length);
    }

    @Test
    void saysWhatIsMadeOfEachCharacteristicAndWhatIsAskedOfIt() {
        assertThat(Pages.text(MATRIX)).containsSubsequence("Coverage", "Blade, hardness", "What the route makes of it", "Aimed",
                "What is specified", "Blade, hardness", "55 to 58 HRC");
    }

    @Test
    void listsWhatIsMeasuredForTheProcessAndWhatIsWatched() {
        assertThat(Pages.text(MATRIX)).containsSubsequence("For the process", "170 Temper", "Temperature", "setting", "180 ± 5 °C",
                "200 Test the hardness", "Straightness", "max 0.4 mm");
    }

    /** What is said in each cell of a step's row. */
    private static List<String> cells(String number) {
        int start = MATRIX.indexOf("<span class=\"no\">" + number + "</span>");
        String row = MATRIX.substring(start, MATRIX.indexOf("</tr>", start));
        return Arrays.stream(row.substring(row.indexOf("<td>")).split("</td>"))
                .map(cell -> SAID.matcher(cell).results().map(r -> r.group(1)).collect(Collectors.joining(", "))).toList();
    }
}
