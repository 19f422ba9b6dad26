package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages of the small house in two languages are those that were looked at. Written anew only with {@code -Dricasso.golden=write}. */
class GoldenPagesTest {
    private static final Path GOLDEN = Path.of("src", "test", "resources", "golden");

    @Test
    void theSmallHouseLooksAsItWasAgreed() throws IOException {
        Map<String, String> pages = Pages.html(Pages.of(TestHouses.small(), "Small Knife Works", SmallHouseInGerman.WORDS, "en", "de"));
        if ("write".equals(System.getProperty("ricasso.golden"))) {
            write(pages);
            fail("golden pages written; look at them, then run the tests without -Dricasso.golden");
        }
        assertThat(read()).isEqualTo(pages);
    }

    private static void write(Map<String, String> pages) throws IOException {
        for (String old : read().keySet()) {
            Files.delete(GOLDEN.resolve(old));
        }
        for (Map.Entry<String, String> page : pages.entrySet()) {
            Path file = GOLDEN.resolve(page.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(file, page.getValue());
        }
    }

    private static Map<String, String> read() throws IOException {
        Map<String, String> result = new TreeMap<>();
        if (Files.isDirectory(GOLDEN)) {
            try (Stream<Path> files = Files.walk(GOLDEN)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    result.put(GOLDEN.relativize(file).toString().replace('\\', '/'),
                            Files.readString(file, StandardCharsets.UTF_8));
                }
            }
        }
        return result;
    }
}
