package org.ricasso.plugin.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PublishedSetTest {
    @TempDir
    private Path target;

    /** The program is stopped: nothing behind this runs any more. */
    private static final class Stopped extends Error {
        private static final long serialVersionUID = 1L;
    }

    private Path directory() {
        return target.resolve("instructions");
    }

    private PublishedSet set() {
        return new PublishedSet(directory());
    }

    private static SortedMap<String, byte[]> pages(String... namesAndTexts) {
        SortedMap<String, byte[]> result = new TreeMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            result.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
        }
        return result;
    }

    private static final SortedMap<String, byte[]> OLD = pages("index.html", "old", "AB-1/10.html", "ten");
    private static final SortedMap<String, byte[]> NEW = pages("index.html", "new", "AB-2/20.html", "twenty");

    /** The files below a directory, without the list of digests, with their texts. */
    private static SortedMap<String, String> tree(Path directory) throws IOException {
        SortedMap<String, String> result = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(directory)) {
            for (Path path : walk.filter(Files::isRegularFile).toList()) {
                String name = directory.relativize(path).toString().replace('\\', '/');
                if (!name.equals(Checksums.NAME)) {
                    result.put(name, Files.readString(path));
                }
            }
        }
        return result;
    }

    private static SortedMap<String, String> texts(SortedMap<String, byte[]> pages) {
        SortedMap<String, String> result = new TreeMap<>();
        pages.forEach((name, bytes) -> result.put(name, new String(bytes, StandardCharsets.UTF_8)));
        return result;
    }

    private String[] beside() throws IOException {
        try (Stream<Path> list = Files.list(target)) {
            return list.map(p -> p.getFileName().toString()).sorted().toArray(String[]::new);
        }
    }

    @Test
    void writesTheFirstSet() throws IOException {
        assertThat(set().replace(OLD)).isEqualTo(PublishedSet.Change.REPLACED);
        assertThat(tree(directory())).isEqualTo(texts(OLD));
        assertThat(beside()).containsExactly("instructions");
    }

    @Test
    void aNewSetReplacesAllOfTheOldOne() throws IOException {
        set().replace(OLD);
        assertThat(set().replace(NEW)).isEqualTo(PublishedSet.Change.REPLACED);
        assertThat(tree(directory())).isEqualTo(texts(NEW));
        assertThat(beside()).containsExactly("instructions");
    }

    @Test
    void theSameSetIsNotWrittenAgain() throws IOException {
        set().replace(OLD);
        FileTime long_ago = FileTime.fromMillis(1_000_000_000_000L);
        Files.setLastModifiedTime(directory().resolve("index.html"), long_ago);
        assertThat(set().replace(OLD)).isEqualTo(PublishedSet.Change.UNCHANGED);
        assertThat(Files.getLastModifiedTime(directory().resolve("index.html"))).isEqualTo(long_ago);
    }

    @Test
    void aSetThatSomebodyChangedIsWrittenAgain() throws IOException {
        set().replace(OLD);
        Files.writeString(directory().resolve("index.html"), "odd");
        assertThat(set().replace(OLD)).isEqualTo(PublishedSet.Change.REPLACED);
        Files.writeString(directory().resolve("more.html"), "more");
        assertThat(set().replace(OLD)).isEqualTo(PublishedSet.Change.REPLACED);
        assertThat(tree(directory())).isEqualTo(texts(OLD));
    }

    @Test
    void digestsAreThoseOfThePublishedStandard() {
        // FIPS 180-4 example, SHA-256 of "abc": NIST Cryptographic Standards, Secure Hash examples
        assertThat(new String(Checksums.of(pages("a/b.html", "abc")), StandardCharsets.UTF_8)).isEqualTo(
                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  a/b.html\n");
    }

    @Test
    void stoppedWhileWritingLeavesTheOldSet() throws IOException {
        set().replace(OLD);
        Files.createDirectories(target.resolve("instructions.next"));
        Files.writeString(target.resolve("instructions.next/index.html"), "ne");
        assertThat(tree(directory())).isEqualTo(texts(OLD));
        set().recover();
        assertThat(tree(directory())).isEqualTo(texts(OLD));
        assertThat(beside()).containsExactly("instructions");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void stoppedAtAnyRenameAWholeSetStandsAfterRecovery(int at) throws IOException {
        set().replace(OLD);
        int[] count = {0};
        PublishedSet stopping = new PublishedSet(directory(), (from, to) -> {
            if (++count[0] == at) {
                throw new Stopped();
            }
            Files.move(from, to);
        });
        try {
            stopping.replace(NEW);
        } catch (Stopped e) {
            assertThat(count[0]).isEqualTo(at);
        }
        set().recover();
        // the third rename is never reached: a swap takes two
        assertThat(tree(directory())).isEqualTo(texts(at <= 2 ? OLD : NEW));
        assertThat(beside()).containsExactly("instructions");
    }

    @Test
    void stoppedBeforeTheOldSetWasClearedTheNewOneStands() throws IOException {
        set().replace(NEW);
        Files.createDirectories(target.resolve("instructions.previous"));
        Files.writeString(target.resolve("instructions.previous/index.html"), "old");
        set().recover();
        assertThat(tree(directory())).isEqualTo(texts(NEW));
        assertThat(beside()).containsExactly("instructions");
    }

    @Test
    void aRefusedRenamePutsTheOldSetBack() throws IOException {
        set().replace(OLD);
        PublishedSet refused = new PublishedSet(directory(), (from, to) -> {
            if (from.endsWith("instructions.next")) {
                throw new IOException("in use");
            }
            Files.move(from, to);
        });
        assertThatThrownBy(() -> refused.replace(NEW)).isInstanceOf(IOException.class).hasMessage("in use");
        assertThat(tree(directory())).isEqualTo(texts(OLD));
        assertThat(beside()).containsExactly("instructions");
    }

    @Test
    void aPageThatCannotBeWrittenLeavesTheOldSet() throws IOException {
        set().replace(OLD);
        SortedMap<String, byte[]> bad = pages("a", "file", "a/b.html", "below a file");
        assertThatThrownBy(() -> set().replace(bad)).isInstanceOf(IOException.class);
        assertThat(tree(directory())).isEqualTo(texts(OLD));
        assertThat(beside()).containsExactly("instructions");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../out.html", "a/../../out.html", "/tmp/out.html", "", "."})
    void aPageStaysInsideItsSet(String name) throws IOException {
        set().replace(OLD);
        assertThatThrownBy(() -> set().replace(pages(name, "x"))).isInstanceOf(IOException.class)
                .hasMessageContaining("outside its set");
        assertThat(tree(directory())).isEqualTo(texts(OLD));
        assertThat(beside()).containsExactly("instructions");
    }

    @Test
    void pagesThatDifferInCapitalsAloneAreRefused() throws IOException {
        assertThatThrownBy(() -> set().replace(pages("A.html", "x", "a.html", "y")))
                .isInstanceOf(IOException.class).hasMessageContaining("capitals");
        assertThat(directory()).doesNotExist();
    }

    @Test
    void aFolderOfSomebodyElseIsLeftAlone() throws IOException {
        Files.createDirectories(directory());
        Files.writeString(directory().resolve("thesis.txt"), "years of work");
        assertThatThrownBy(() -> set().replace(NEW)).isInstanceOf(ForeignDirectoryException.class)
                .hasMessageContaining("SHA256SUMS");
        assertThat(tree(directory())).isEqualTo(texts(pages("thesis.txt", "years of work")));
    }

    @Test
    void anEmptyFolderMayBeTaken() throws IOException {
        Files.createDirectories(directory());
        assertThat(set().replace(NEW)).isEqualTo(PublishedSet.Change.REPLACED);
        assertThat(tree(directory())).isEqualTo(texts(NEW));
    }
}
