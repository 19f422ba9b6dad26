package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ricasso.shared.calculation.Definition.define;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.shared.Shipped;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.quantity.Measure;

/** A language that no Java knows: the sheets for its translators, filled in, are all that a bakery's pages need. */
class ThirdLanguageTest {
    private static final List<Calculation> CALCULATIONS = List.of(define("dough-water", "water for a dough of a wanted warmth")
            .rises("dough", Measure.TEMPERATURE, 273.15, 320).falls("flour", Measure.TEMPERATURE, 250, 320)
            .falls("room", Measure.TEMPERATURE, 250, 320).falls("work", Measure.TEMPERATURE_DIFFERENCE, 0, 30)
            .gives(Measure.TEMPERATURE, "common practice of bakers", a -> 3 * a[0] - a[1] - a[2] - a[3]));
    private static final String PAGES = "ricasso/words/en/pages.ricasso";
    /** A line to fill in below the text that it is for. */
    private static final Pattern EMPTY = Pattern.compile("// (.*)\n(.*)\"\"");
    private static final Map<String, String> FRENCH = Map.of("ltr", "rtl", ".", "·");

    private static SourceFile text(String name) {
        try (InputStream in = ThirdLanguageTest.class.getResourceAsStream("/bakery/" + name)) {
            return new SourceFile(name, new String(in.readAllBytes(), StandardCharsets.UTF_8), false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Texts bakery(Map<String, String> words) {
        List<SourceFile> files = new ArrayList<>(List.of(new SourceFile(PAGES, Shipped.texts().get(PAGES), true)));
        for (String name : List.of("units", "kinds", "workpiece", "tables", "operations", "rules", "house")) {
            files.add(text(name + ".ricasso"));
        }
        words.forEach((name, sheet) -> files.add(new SourceFile("words-" + name, sheet, false)));
        return new Texts(files, Map.of("rising.csv", text("rising.csv")));
    }

    /** Each text turned round between marks, its holes as they are. */
    private static String turned(String text) {
        StringBuilder result = new StringBuilder("‹");
        Matcher piece = Pattern.compile("\\{[^}]*}|[^{]+").matcher(text);
        while (piece.find()) {
            result.append(piece.group().startsWith("{") ? piece.group()
                    : new StringBuilder(piece.group().replace("\"", "")).reverse().toString());
        }
        return result + "›";
    }

    private static Map<String, String> filledIn() {
        Map<String, String> sheets = new TreeMap<>();
        Ricasso.wordsToWrite(bakery(Map.of()), CALCULATIONS, "zz").forEach((name, sheet) -> sheets.put(name,
                EMPTY.matcher(sheet).replaceAll(found -> Matcher.quoteReplacement(found.group(2) + "\""
                        + FRENCH.getOrDefault(found.group(1), turned(found.group(1))) + "\""))));
        return sheets;
    }

    @Test
    void sheetsThatAreFilledInMakeALanguage() {
        Map<String, String> sheets = filledIn();
        assertThat(sheets).isNotEmpty();
        Ricasso ricasso = Ricasso.check(bakery(sheets), CALCULATIONS, Set.of(), Set.of("zz"));
        assertThat(ricasso.checked().diagnostics()).as("whole").isEmpty();
        assertThat(ricasso.words().languages()).containsExactly("en", "zz");

        Map<String, String> pages = Pages.html(Pages.texts(new PageRenderer().render(ricasso.checked(), "AB", ricasso.words(),
                ricasso.house().vocabulary(), List.of("zz"))));
        assertThat(pages).hasSizeGreaterThan(8);
        pages.forEach((path, page) -> {
            assertThat(page).as(path).contains("<html lang=\"zz\" dir=\"rtl\">").doesNotContain("borrowed");
            // what stands between marks is the language's own; what is left are numbers, units and names as written
            String rest = Pages.text(page);
            for (String shorter = ""; !shorter.equals(rest); ) {
                shorter = rest;
                rest = rest.replaceAll("‹[^‹›]*›", " ");
            }
            assertThat(rest.replaceAll("[0-9a-f]{12}|\\b(mixer-1|oven-1|deck-1|[a-z]+-\\d+)\\b", " ")).as(path)
                    .doesNotContainPattern("(?<![\\p{L}\\p{N}-])\\p{Lu}\\p{Ll}{2,}");
        });
        assertThat(pages.get("tin-loaf/step-10.html")).contains("·");
    }
}
