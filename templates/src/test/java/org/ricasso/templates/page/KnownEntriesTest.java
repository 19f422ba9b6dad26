package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Only one class names entries of the shipped vocabulary. */
class KnownEntriesTest {
    @Test
    void noOtherClassNamesAnEntry() throws IOException {
        Path sources = Path.of("src", "main", "java");
        String known = Files.readString(sources.resolve("org/ricasso/templates/page/KnownEntries.java"));
        List<String> names = Pattern.compile("\"([a-z]+(?:-[a-z]+)*)\"").matcher(known).results()
                .map(r -> r.group(1)).distinct().toList();
        assertThat(names).contains("number", "wear", "cautions", "gauge");
        try (Stream<Path> files = Files.walk(sources)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java"))
                    .filter(f -> !f.endsWith("KnownEntries.java")).collect(Collectors.toList())) {
                String text = Files.readString(file);
                for (String name : names) {
                    assertThat(text).as("%s in %s", name, file).doesNotContain("\"" + name + "\"");
                }
            }
        }
    }
}
