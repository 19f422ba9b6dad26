package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever stands in a text comes out as text: it adds no tag, no attribute, no formula, and is not lost. */
class HostileTextTest {
    @ParameterizedTest
    @ValueSource(strings = {
            "<script>alert(1)</script>",
            "\"><img src=x onerror=alert(1)>",
            "' onclick='alert(1)",
            "</style><script>1</script>",
            "\"; } body { display: none } /*",
            "<!-- --> ]]> &amp; &lt;b&gt; <![CDATA[",
            "${7*7} #{7*7} <#if true>x</#if> [=7*7] <@x/>",
            "\u202Eesrever\u2066\u2069 \u05E9\u05DC\u05D5\u05DD \u0645\u0631\u062D\u0628\u0627",
            "\u0000\u0007\u001B[31m\u007F\u0085\uFFFE\uFFFF\uD800 \uDC00",
            "line\r\nbreak\ttab\u2028\u2029",
            "a-very-long-word-without-a-blank-and-without-mercy-a-very-long-word-without-a-blank-and-without-mercy",
            ""})
    void everyTextStaysText(String hostile) {
        Map<String, String> plain = Pages.html(Pages.of(TestHouses.small()));
        Map<String, String> pages = Pages.html(Pages.of(TestHouses.of(text -> text + hostile), "House" + hostile));

        assertThat(pages).hasSameSizeAs(plain);
        var expected = plain.values().iterator();
        for (Map.Entry<String, String> page : pages.entrySet()) {
            assertThat(page.getKey()).matches("[a-z0-9-]+(/[a-z0-9-]+)?\\.html");
            assertThat(String.join("\n", Pages.tags(page.getValue()))).as(page.getKey())
                    .isEqualTo(String.join("\n", Pages.tags(expected.next())));
            assertThat(page.getValue()).doesNotContainPattern("[\\x00-\\x08\\x0B-\\x1F\\x7F-\\x9F\\u202A-\\u202E\\uFFFE]");
        }
        String overview = Pages.text(pages.get("index.html"));
        String shown = PlainText.of("House" + hostile).replaceAll("[\\s\u00A0]+", " ").strip();
        assertThat(overview).contains(shown);
    }

    @Test
    void aTextCannotLeaveItsStringInTheStyle() {
        String escaped = CssText.escaped("\"}</style><b>\\ \n é");
        assertThat(escaped).matches("[A-Za-z0-9 \\\\]*");
    }

    @Test
    void whatCannotBeShownIsSeenToBeThere() {
        assertThat(PlainText.of("a\u0000b\u202Ec\uD800d")).isEqualTo("a\uFFFDb\uFFFDc\uFFFDd");
        assertThat(PlainText.of("\uD83D\uDD2A é 200 µm")).isEqualTo("\uD83D\uDD2A é 200 µm");
    }
}
