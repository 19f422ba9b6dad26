package org.ricasso.shared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShippedTest {
    private static final Path SOURCE = Path.of("src/main/resources/ricasso");

    @TempDir
    Path folder;

    @Test
    void theIndexListsExactlyTheTextsOutsideTheDataFolderInOrder() throws IOException {
        List<String> expected;
        try (Stream<Path> files = Files.walk(SOURCE)) {
            expected = files.filter(Files::isRegularFile)
                    .map(file -> SOURCE.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> name.endsWith(".ricasso") || name.endsWith(".csv"))
                    .filter(name -> !name.startsWith("data/")).sorted().toList();
        }
        try (InputStream in = Shipped.class.getResourceAsStream("/ricasso/index.txt")) {
            String index = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(index.lines().filter(line -> !line.isBlank())).containsExactlyElementsOf(expected);
        }
        assertThat(Shipped.texts().keySet()).containsExactlyElementsOf(
                expected.stream().map(name -> "ricasso/" + name).toList());
    }

    @Test
    void eachTextIsReadAsItStandsInTheSource() throws IOException {
        for (var text : Shipped.texts().entrySet()) {
            Path file = SOURCE.resolve(text.getKey().substring("ricasso/".length()));
            assertThat(text.getValue()).isEqualTo(Files.readString(file));
        }
    }

    @Test
    void textsOfAnotherLibraryAreFoundBesideOurs() throws IOException {
        write("ricasso/index.txt", "vocabulary/ovens.ricasso\n");
        write("ricasso/vocabulary/ovens.ricasso", "// ofen für 180 °C\n");
        try (URLClassLoader loader = loader(Shipped.class.getClassLoader())) {
            assertThat(Shipped.texts(loader)).containsEntry("library/ricasso/vocabulary/ovens.ricasso", "// ofen für 180 °C\n")
                    .containsAllEntriesOf(Shipped.texts());
        }
    }

    @Test
    void anIndexThatNamesAMissingTextIsRefused() throws IOException {
        write("ricasso/index.txt", "gone.ricasso\n");
        try (URLClassLoader loader = loader(null)) {
            assertThatThrownBy(() -> Shipped.texts(loader)).isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("gone.ricasso");
        }
    }

    private URLClassLoader loader(ClassLoader parent) throws IOException {
        return new URLClassLoader(new URL[] {folder.toUri().toURL()}, parent);
    }

    private void write(String path, String text) throws IOException {
        Path file = folder.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
