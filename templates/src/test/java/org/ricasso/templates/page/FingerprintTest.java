package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The fingerprint tells whether a page still says the same. */
class FingerprintTest {
    private static final Pattern PRINTED = Pattern.compile("Fingerprint of this page: <code>([0-9a-f]{12})</code>");

    @Test
    void aChangedWordChangesItsPageAndThoseThatListIt() {
        Map<String, String> before = Pages.html(Pages.of(TestHouses.small()));
        Map<String, String> after = Pages.html(Pages.of(TestHouses.of(
                text -> text.replace("Load the rack so that no blade", "Load the rack so that no tang"))));
        List<String> changed = before.keySet().stream()
                .filter(path -> !printed(before.get(path)).equals(printed(after.get(path))))
                .toList();
        assertThat(changed).containsExactly("ab-1109/index.html", "ab-1109/step-170.html", "ab-2120/index.html",
                "ab-2120/step-170.html", "index.html");
    }

    @Test
    void theSpecSheetListsThoseOfItsInstructions() {
        Map<String, String> pages = Pages.html(Pages.of(TestHouses.small()));
        assertThat(pages.get("ab-2120/index.html")).contains(printed(pages.get("ab-2120/step-155.html")),
                printed(pages.get("ab-2120/step-170.html")), printed(pages.get("ab-2120/step-200.html")));
        assertThat(pages.get("index.html")).contains(printed(pages.get("ab-2120/index.html")));
    }

    @Test
    void whereATextEndsIsPartOfIt() {
        assertThat(Fingerprint.of(new Fact("ab", Shown.of("c")))).isNotEqualTo(
                Fingerprint.of(new Fact("a", Shown.of("bc"))));
    }

    private static String printed(String page) {
        Matcher matcher = PRINTED.matcher(page);
        assertThat(matcher.find()).isTrue();
        return matcher.group(1);
    }
}
