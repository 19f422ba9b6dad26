package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** All links lead to something in the set; nothing is asked for outside of it. */
class LinksTest {
    private static final Pattern HREF = Pattern.compile("href=\"([^\"]*)\"");

    @Test
    void everyLinkResolves() {
        Map<String, String> files = Pages.of(TestHouses.small());
        int links = 0;
        for (Map.Entry<String, String> page : Pages.html(files).entrySet()) {
            for (MatchResult found : HREF.matcher(page.getValue()).results().toList()) {
                String href = found.group(1);
                if (href.equals("data:,")) {
                    continue;
                }
                links++;
                URI target = URI.create(page.getKey()).resolve(href);
                String path = target.getPath().isEmpty() ? page.getKey() : target.getPath();
                assertThat(files).as("%s in %s", href, page.getKey()).containsKey(path);
                if (target.getFragment() != null) {
                    assertThat(files.get(path)).as(href).contains("id=\"" + target.getFragment() + "\"");
                }
            }
        }
        assertThat(links).isGreaterThan(50);
    }

    @Test
    void everyPageIsReachedFromTheFirst() {
        Map<String, String> files = Pages.of(TestHouses.small());
        java.util.Set<String> reached = new java.util.TreeSet<>();
        java.util.Deque<String> open = new java.util.ArrayDeque<>(java.util.List.of("index.html"));
        while (!open.isEmpty()) {
            String page = open.pop();
            if (!reached.add(page) || !page.endsWith(".html")) {
                continue;
            }
            HREF.matcher(files.get(page)).results()
                    .map(r -> r.group(1))
                    .filter(href -> !href.startsWith("#") && !href.equals("data:,"))
                    .forEach(href -> open.push(URI.create(page).resolve(href).getPath()));
        }
        assertThat(reached).isEqualTo(files.keySet());
    }

    @Test
    void nothingIsAskedForOutside() {
        Pages.of(TestHouses.small()).forEach((path, text) -> assertThat(text).as(path)
                .doesNotContainPattern("(?i)https?:|//[a-z]|@import|url\\(|<script|<img|<iframe|<object|src="));
    }
}
