package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.words.TestWords;
import org.ricasso.dsl.words.Words;

/** A set in several languages: each page leads to itself in the others, and what is in another language says so. */
class LanguagesTest {
    private static final Map<String, String> SET =
            Pages.of(TestHouses.small(), "Small Knife Works", SmallHouseInGerman.WORDS, "en", "de");
    private static final Pattern BORROWED = Pattern.compile("<span class=\"borrowed\" lang=\"en\">(.*?)</span>");

    @Test
    void theFirstLanguageLiesAtTheTopAndTheOthersInFolders() {
        Map<String, String> english = Pages.html(Pages.of(TestHouses.small()));
        assertThat(Pages.html(SET)).hasSize(2 * english.size());
        english.keySet().forEach(path -> {
            assertThat(SET.get(path)).as(path).contains("<html lang=\"en\">");
            assertThat(SET.get("de/" + path)).as(path).contains("<html lang=\"de\">");
        });
        Map<String, String> turned = Pages.of(TestHouses.small(), "Small Knife Works", SmallHouseInGerman.WORDS, "de", "en");
        assertThat(turned.get("index.html")).contains("<html lang=\"de\">", "href=\"en/index.html\"");
        assertThat(turned.get("en/ab-2120/step-170.html")).contains("href=\"../../ab-2120/step-170.html\"");
    }

    /** From any page the switch leads to the same page in the other language, and from there back. */
    @Test
    void theSwitchLeadsToTheSamePageAndBack() {
        Pattern other = Pattern.compile("<a href=\"([^\"]*)\" hreflang=\"(..)\"");
        int seen = 0;
        for (Map.Entry<String, String> page : Pages.html(SET).entrySet()) {
            List<MatchResult> links = other.matcher(page.getValue()).results().toList();
            assertThat(links).as(page.getKey()).hasSize(1);
            String target = URI.create(page.getKey()).resolve(links.get(0).group(1)).getPath();
            assertThat(target).isEqualTo(page.getKey().startsWith("de/") ? page.getKey().substring(3) : "de/" + page.getKey());
            assertThat(SET.get(target)).contains("<html lang=\"" + links.get(0).group(2) + "\">");
            seen++;
        }
        assertThat(seen).isEqualTo(30);
        assertThat(Pages.of(TestHouses.small()).get("index.html")).doesNotContain("hreflang");
    }

    @Test
    void aPageInGermanReadAloud() {
        assertThat(Pages.text(SET.get("de/ab-2120/step-170.html"))).containsSubsequence("English Deutsch", "170 Anlassen",
                "an temper-3 Anlassofen 3", "AB-2120", "Kochmesser, 200 mm", "Änderungsstand C", "Freigegeben 2026-09-14",
                "Kommt von 155 Abschrecken", "Geht zu 200 Härte prüfen", "Vor dem Beginn", "W017 Warnung vor heißer Oberfläche",
                "Das Gestell ist heiß – wenn es schwarz aussieht – Zange benutzen", "Fragen an: die Arbeitsvorbereitung",
                "Was ankommt", "Angelassen wird nur eine gehärtete Klinge.", "gezählt ab Schritt 155 Abschrecken",
                "Einstellen", "Temperatur 180 ± 5 °C", "Haltezeit 2 h", "Zyklen 1 Vorgabe", "Rüsten: 15 min.",
                "Laufzeit: 4 h je Charge berechnet", "180 ± 5 °C für 2 h einstellen",
                "Härte 56,2 bis 57,1 HRC berechnet, mit Streuung 54,7 bis 58,6 HRC");
    }

    /** SI Brochure, 5.4.3 (space before the unit), and DIN 1333 (decimal comma); from memory. */
    @Test
    void numbersAreInTheReadersForm() {
        NumberForm german = Tongue.of(Words.NONE, null, "de").numbers();
        assertThat(german.number("55..58 HRC")).isEqualTo("55\u00A0bis\u00A058\u202FHRC");
        assertThat(german.number("0.30 ± 0.05 mm")).isEqualTo("0,30\u00A0±\u00A00,05\u202Fmm");
        assertThat(german.number("45 (+0.5/-0.3) mm")).isEqualTo("45 (+0,5/−0,3)\u202Fmm");
        assertThat(german.number("max 0.4 µm")).isEqualTo("höchstens\u00A00,4\u202Fµm");
        assertThat(german.number("-78.5..-60.0 °C")).isEqualTo("−78,5\u00A0bis\u00A0−60,0\u202F°C");
        assertThat(german.number("20 %")).isEqualTo("20\u202F%");
        assertThat(german.typeset("1.4116 bei 3.5 mm")).as("a text's own signs stay").isEqualTo("1.4116\u00A0bei 3.5\u00A0mm");
        String step = SET.get("de/ab-2120/step-170.html");
        assertThat(step).contains("<strong>180\u00A0±\u00A05\u00A0°C</strong> für <strong>2\u00A0h</strong> einstellen",
                "über 0.5\u00A0h hinaus", "2026-09-14");
    }

    @Test
    void aTextWithoutWordsIsMarkedAndThePageSaysSo() {
        String step = SET.get("de/ab-2120/step-170.html");
        assertThat(step).contains("<span class=\"borrowed\" lang=\"en\">Load the rack so that no blade touches another.</span>",
                "Text mit einem kleinen „en“ dahinter ist nicht übersetzt.");
        assertThat(SET.get("style.css")).contains(".borrowed::after { content: attr(lang)");
        assertThat(SET.get("de/ab-2120/step-155.html")).contains("<span class=\"borrowed\" lang=\"en\">Structure</span>");
        assertThat(Pages.html(SET).entrySet()).filteredOn(page -> !page.getKey().startsWith("de/"))
                .allSatisfy(page -> assertThat(page.getValue()).doesNotContain("borrowed"));
    }

    /** With no words at all nothing but codes is left when all that is marked is taken away. */
    @Test
    void noTextIsSilentlyInAnotherLanguage() {
        Map<String, String> none = Pages.of(TestHouses.small(), "AB", TestWords.of("xx", Map.of(), Map.of()), "xx");
        int marked = 0;
        for (Map.Entry<String, String> page : Pages.html(none).entrySet()) {
            marked += (int) BORROWED.matcher(page.getValue()).results().count();
            String rest = Pages.inItsLanguage(page.getValue(), "xx");
            assertThat(Pages.text(rest).replaceAll("\\bstyle\\b|AB-\\d+|temper-3|hardness-bench|1\\.4116|[0-9a-f]{12}"
                    // rules by name, as findings speak of them
                    + "|quench-before-temper|edge-behind|roughness-reached|delay", " "))
                    .as(page.getKey()).doesNotContainPattern("(?<![\\p{L}\\p{N}])\\p{L}\\p{Ll}{2,}");
        }
        assertThat(marked).isGreaterThan(400);
    }

    @Test
    void findingsStayInTheirLanguageAndSayWhich() {
        String overview = SET.get("de/index.html");
        assertThat(overview).contains("<article class=\"finding\" lang=\"en\">", "Befunde stehen auf Englisch");
        assertThat(SET.get("de/ab-2120/rules.html")).contains("<span lang=\"en\">blade.roughness is not stated</span>"
                .replace("not stated", "not written"));
        assertThat(SET.get("index.html")).contains("<article class=\"finding\">").doesNotContain("Findings are in English");
    }

    /** What an attribute or a title holds is text alone. */
    @Test
    void marksNeverStandInsideATag() {
        Map<String, String> none = Pages.of(TestHouses.small(), "AB", TestWords.of("xx", Map.of(), Map.of()), "xx");
        none.forEach((path, page) -> {
            assertThat(page).as(path).doesNotContainPattern("<title>[^<]*<(?!/title>)").doesNotContainPattern("=\"[^\"]*<span");
            assertThat(page).as(path).doesNotContainPattern("[\uFDD0-\uFDD2]");
        });
    }

    @Test
    void aProductMayBeNamedLikeALanguage() {
        var small = TestHouses.small();
        assertThat(Slugs.of(List.of("de", "DE", "fr"), List.of("de"))).doesNotContain("de").contains("fr");
        assertThat(small.products()).isNotEmpty();
    }

    @Test
    void eachLanguageHasFingerprintsOfItsOwn() {
        Pattern printed = Pattern.compile("<code>([0-9a-f]{12})</code></p>\n</footer>");
        Map<String, String> pages = Pages.html(SET);
        List<String> all = pages.values().stream().flatMap(page -> printed.matcher(page).results()).map(r -> r.group(1)).toList();
        assertThat(all).hasSize(30).doesNotHaveDuplicates();
    }
}
