package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The same house gives the same bytes, wherever and however often it is rendered. */
class SamePagesEverywhereTest {
    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @AfterEach
    void home() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    @Test
    void neitherLocaleNorTimeZoneIsSeen() {
        Map<String, String> pages = Pages.of(TestHouses.small());
        for (List<String> place : List.of(List.of("tr-TR", "Asia/Istanbul"), List.of("ar-EG", "Pacific/Apia"),
                List.of("hi-IN-u-nu-deva", "America/St_Johns"))) {
            Locale.setDefault(Locale.forLanguageTag(place.get(0)));
            TimeZone.setDefault(TimeZone.getTimeZone(place.get(1)));
            // a renderer of its own, so that nothing made before is used again
            PageRenderer renderer = new PageRenderer(new TemplateEngine(
                    new freemarker.cache.ClassTemplateLoader(PageRenderer.class, "/pages")));
            Map<String, byte[]> there = renderer.render(TestHouses.small(), "Small Knife Works").files();
            assertThat(there.keySet()).isEqualTo(pages.keySet());
            there.forEach((path, bytes) -> assertThat(new String(bytes, java.nio.charset.StandardCharsets.UTF_8))
                    .as("%s in %s", path, place).isEqualTo(pages.get(path)));
        }
    }

    @Test
    void linesEndWithALineFeed() {
        Pages.of(TestHouses.small()).forEach((path, text) -> assertThat(text).as(path).doesNotContain("\r"));
    }
}
