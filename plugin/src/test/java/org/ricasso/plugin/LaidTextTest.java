package org.ricasso.plugin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.format.Formatter;
import org.ricasso.dsl.source.SourceFile;

/** A text on the disk and its layout. */
class LaidTextTest {
    @TempDir
    private Path folder;

    private LaidText text(String written) throws IOException {
        Path path = Files.writeString(folder.resolve("x.ricasso"), written);
        byte[] bytes = Files.readAllBytes(path);
        SourceFile file = DecodedFile.of("x.ricasso", bytes).file();
        return new LaidText(path, file, bytes, Formatter.format(file));
    }

    /** The place and words of what is found; {@code ~} is CR, {@code /} a line feed, {@code ^} a byte order mark. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "belt P80 { grit: 80 }/; none; none",
        "belt P80 { grit:  80 }/; 1:18; the layout differs from here on",
        "belt P80 { grit: 80 }/belt P90 {grit: 90}/; 2:11; the layout differs from here on",
        "belt P80 { grit: 80 }; 1:22; the last line has no end",
        "belt P80 { grit: 80 }///; 2:1; nothing stands behind the last line",
        "belt P80 { grit: 80 }~/; 1:22; a line ends in CR or CR LF here, not in LF",
        "^belt P80 { grit: 80 }/; 1:1; a byte order mark stands before the text"
    })
    void whereItDiffers(String written, String place, String words) throws IOException {
        LaidText text = text(written.replace('~', '\r').replace('/', '\n').replace('^', '\uFEFF'));
        List<Diagnostic> found = text.finding("do it").stream().toList();
        if (place.equals("none")) {
            assertThat(found).isEmpty();
            assertThat(text.differs()).isFalse();
        } else {
            assertThat(found).singleElement().satisfies(d -> {
                assertThat(d.primary().span().toString()).isEqualTo("x.ricasso:" + place);
                assertThat(d.primary().text()).isEqualTo(words);
                assertThat(d.remedies()).singleElement().satisfies(r -> assertThat(r.text()).isEqualTo("do it"));
            });
        }
    }

    @Test
    void blanksAreShown() throws IOException {
        assertThat(text("belt P80 {\n\tgrit:  80\n}\n").finding("do it").orElseThrow().because())
                .containsExactly("the line stands as   →grit:··80", "it is laid out as    ····grit:·80");
    }

    @Test
    void writtenItIsLaidOutAndNothingElseIsLeft() throws IOException {
        LaidText text = text("\uFEFFbelt   P80 { grit: 80 } // ±\r\n");
        text.write();
        assertThat(folder.resolve("x.ricasso")).hasBinaryContent(
                "belt P80 { grit: 80 }    // ±\n".getBytes(StandardCharsets.UTF_8));
        assertThat(folder.toFile().list()).containsExactly("x.ricasso");
    }

    @Test
    void whoMayReadItStaysAndALinkStaysALink() throws IOException {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        text("belt   P80 { grit: 80 }");
        Path path = folder.resolve("x.ricasso");
        Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rw-r-----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.ricasso"), path);
        byte[] bytes = Files.readAllBytes(link);
        SourceFile file = DecodedFile.of("link.ricasso", bytes).file();
        new LaidText(link, file, bytes, Formatter.format(file)).write();
        assertThat(link).isSymbolicLink();
        assertThat(path).hasContent("belt P80 { grit: 80 }");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(path))).isEqualTo("rw-r-----");
    }

    @Test
    void aWriteProtectedTextIsRefused() throws IOException {
        LaidText text = text("belt   P80 { grit: 80 }");
        assumeTrue(text.path().toFile().setWritable(false) && !Files.isWritable(text.path()));
        assertThatThrownBy(text::write).isInstanceOf(AccessDeniedException.class);
        assertThat(text.path()).hasContent("belt   P80 { grit: 80 }");
        assertThat(text.path().toFile().setWritable(true)).isTrue();
    }
}
