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
import org.ricasso.shared.Shipped;

/** Only one class names entries of the shipped vocabulary, and those are there. */
class KnownEntriesTest {
    private static final Path SOURCES = Path.of("src", "main", "java");

    @Test
    void noOtherClassNamesAnEntry() throws IOException {
        List<String> names = names();
        assertThat(names).contains("number", "wear", "cautions", "gauge");
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java"))
                    .filter(f -> !f.endsWith("KnownEntries.java")).collect(Collectors.toList())) {
                String text = Files.readString(file);
                for (String name : names) {
                    assertThat(text).as("%s in %s", name, file).doesNotContain("\"" + name + "\"");
                }
            }
        }
    }

    /** An entry that the vocabulary calls otherwise would silently lose its place on the page. */
    @Test
    void theShippedVocabularyHasEachOfThem() throws IOException {
        String vocabulary = Shipped.texts().entrySet().stream()
                .filter(text -> text.getKey().contains("vocabulary/"))
                .map(java.util.Map.Entry::getValue)
                .collect(Collectors.joining("\n"));
        List<String> missing = names().stream()
                .filter(name -> !name.equals(KnownEntries.LIMIT))
                .filter(name -> !Pattern.compile("(?m)(^|[\\s{;])" + name + ":").matcher(vocabulary).find())
                .toList();
        assertThat(missing).as("the limit of a measurement belongs to the language").isEmpty();
    }

    private static List<String> names() throws IOException {
        String known = Files.readString(SOURCES.resolve("org/ricasso/templates/page/KnownEntries.java"));
        return Pattern.compile("\"([a-z]+(?:-[a-z]+)*)\"").matcher(known).results()
                .map(r -> r.group(1)).distinct().toList();
    }
}
