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
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
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
            assertThatThrownBy(() -> Shipped.texts(loader)).isInstanceOf(LibraryException.class)
                    .hasMessageContaining("gone.ricasso");
        }
    }

    @Test
    void aJarNamesItsTextsAndSoDoesTheModuleThatIsBuilt() throws IOException {
        Path jar = folder.resolve("works-vocabulary-1.2.jar");
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
            out.putNextEntry(new JarEntry("ricasso/index.txt"));
            out.write("ovens.ricasso\n".getBytes(StandardCharsets.UTF_8));
            out.putNextEntry(new JarEntry("ricasso/ovens.ricasso"));
            out.write("// an oven\n".getBytes(StandardCharsets.UTF_8));
        }
        write("works-rules/target/classes/ricasso/index.txt", "rules.ricasso\n");
        write("works-rules/target/classes/ricasso/rules.ricasso", "// a rule\n");
        URL[] urls = {jar.toUri().toURL(), folder.resolve("works-rules/target/classes/").toUri().toURL()};
        try (URLClassLoader loader = new URLClassLoader(urls, Shipped.class.getClassLoader())) {
            assertThat(Shipped.texts(loader)).containsEntry("works-vocabulary-1.2/ricasso/ovens.ricasso", "// an oven\n")
                    .containsEntry("works-rules/ricasso/rules.ricasso", "// a rule\n");
        }
    }

    @Test
    void oursIsOursWhereverItStandsOnTheClassPath() throws IOException {
        write("works/target/classes/ricasso/index.txt", "ovens.ricasso\n");
        write("works/target/classes/ricasso/ovens.ricasso", "// an oven\n");
        URL ours = Shipped.class.getProtectionDomain().getCodeSource().getLocation();
        URL[] urls = {folder.resolve("works/target/classes/").toUri().toURL(), ours};
        // one loader for both, as a plugin has: its dependencies come first
        try (URLClassLoader loader = new URLClassLoader(urls, ClassLoader.getPlatformClassLoader())) {
            java.util.SortedMap<?, ?> texts = (java.util.SortedMap<?, ?>) loader.loadClass(Shipped.class.getName())
                    .getMethod("texts").invoke(null);
            assertThat(texts.size()).isEqualTo(Shipped.texts().size() + 1);
            assertThat(texts.containsKey("works/ricasso/ovens.ricasso")).isTrue();
            assertThat(texts.containsKey("ricasso/vocabulary/units.ricasso")).isTrue();
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void twoLibrariesOfOneNameWithTheSameTextAreRefused() throws IOException {
        List<URL> urls = new ArrayList<>();
        for (String place : List.of("a", "b")) {
            write(place + "/works/target/classes/ricasso/index.txt", "ovens.ricasso\n");
            write(place + "/works/target/classes/ricasso/ovens.ricasso", "// an oven\n");
            urls.add(folder.resolve(place + "/works/target/classes/").toUri().toURL());
        }
        try (URLClassLoader loader = new URLClassLoader(urls.toArray(URL[]::new), null)) {
            assertThatThrownBy(() -> Shipped.texts(loader)).isInstanceOf(LibraryException.class)
                    .hasMessage("two libraries are named works, and both bring ricasso/ovens.ricasso: give one of them "
                            + "another name, or list it once");
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
