package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The style keeps what an eye at arm's length needs. */
class StyleTest {
    private static final String WHOLE = Pages.of(TestHouses.bakery()).get("style.css");
    /** What holds on a screen; paper is read nearer. */
    private static final String STYLE = WHOLE.substring(0, WHOLE.indexOf("@media print"));
    private static final double ROOT_PIXELS = 16;

    /** WCAG 2.2, success criterion 1.4.3: at least 4.5 to 1; the formula stands there under "contrast ratio". */
    @Test
    void textHasContrastInLightAndDark() {
        List<String> blocks = Pattern.compile(":root \\{([^}]*)}").matcher(STYLE).results()
                .map(r -> r.group(1)).toList();
        for (String block : List.of(blocks.get(0), blocks.get(1))) {
            Map<String, String> colours = new HashMap<>();
            Pattern.compile("--([a-z]+): (#[0-9a-f]{6})").matcher(block).results()
                    .forEach(r -> colours.put(r.group(1), r.group(2)));
            for (String text : List.of("ink", "soft", "link", "alarm")) {
                assertThat(contrast(colours.get(text), colours.get("paper"))).as(text).isGreaterThan(4.5);
            }
            assertThat(contrast(colours.get("ink"), colours.get("mark"))).as("marked").isGreaterThan(4.5);
        }
        assertThat(contrast("#15181b", "#f9c800")).as("warning").isGreaterThan(4.5);
        assertThat(contrast("#ffffff", "#00508f")).as("mandatory").isGreaterThan(4.5);
        assertThat(contrast("#ffffff", "#00663f")).as("safe").isGreaterThan(4.5);
        assertThat(contrast("#ffffff", "#b3131b")).as("fire").isGreaterThan(4.5);
    }

    /** Worked examples of the formula: black on white is 21, and 4.5 is about #767676 on white. */
    @Test
    void theContrastIsComputedAsWcagSays() {
        assertThat(contrast("#000000", "#ffffff")).isEqualTo(21.0);
        assertThat(contrast("#767676", "#ffffff")).isBetween(4.5, 4.6);
        assertThat(contrast("#777777", "#ffffff")).isLessThan(4.5);
    }

    @Test
    void nothingIsSmallerThanSixteenPixels() {
        int seen = 0;
        for (MatchResult size : Pattern.compile("font(?:-size)?: (?:[0-9]+ )?([0-9.]+)(rem|px)").matcher(STYLE)
                .results().toList()) {
            double pixels = Double.parseDouble(size.group(1)) * (size.group(2).equals("rem") ? ROOT_PIXELS : 1);
            assertThat(pixels).as(size.group()).isGreaterThanOrEqualTo(16);
            seen++;
        }
        assertThat(seen).isGreaterThan(20);
    }

    @Test
    void theWorkAndItsSettingsAreLarge() {
        assertThat(size("\\.instruction \\.body")).isGreaterThanOrEqualTo(24);
        assertThat(size("\\.settings \\.text")).isGreaterThanOrEqualTo(36);
        assertThat(size("\\.limit \\.text")).isGreaterThanOrEqualTo(36);
    }

    private static double size(String selector) {
        Matcher matcher = Pattern.compile("(?m)^\\s*" + selector + " \\{ font-size: ([0-9.]+)rem").matcher(STYLE);
        double least = Double.POSITIVE_INFINITY;
        while (matcher.find()) {
            least = Math.min(least, Double.parseDouble(matcher.group(1)) * ROOT_PIXELS);
        }
        assertThat(least).as(selector).isFinite();
        return least;
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double part = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weights[i] * (part <= 0.04045 ? part / 12.92 : StrictMath.pow((part + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
