package org.ricasso.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.SourceFile;

class SourceReaderTest {
    @TempDir
    private Path module;
    private Path sources;

    @BeforeEach
    void folder() throws IOException {
        sources = Files.createDirectories(module.resolve("src/main/ricasso"));
    }

    private SourceReader.Reading read() throws IOException {
        return new SourceReader(module).read(sources);
    }

    private void write(String name, byte[] bytes) throws IOException {
        Path file = sources.resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }

    private void write(String name, String text) throws IOException {
        write(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] bytes(Object... parts) {
        ByteArrayOutputStream result = new ByteArrayOutputStream();
        for (Object part : parts) {
            byte[] more = part instanceof Integer one ? new byte[] {one.byteValue()}
                    : ((String) part).getBytes(StandardCharsets.UTF_8);
            result.write(more, 0, more.length);
        }
        return result.toByteArray();
    }

    @Test
    void readsTextsAndTablesBelowTheFolderInTheOrderOfTheirNames() throws IOException {
        write("z.ricasso", "z");
        write("knives/b.ricasso", "b");
        write("a/deep/c.ricasso", "c");
        write("Big.ricasso", "B");
        write("tables/loss.csv", "t");
        write("notes.txt", "no");
        SourceReader.Reading reading = read();
        assertThat(reading.texts().files()).extracting(SourceFile::name).containsExactly(
                "src/main/ricasso/Big.ricasso", "src/main/ricasso/a/deep/c.ricasso",
                "src/main/ricasso/knives/b.ricasso", "src/main/ricasso/z.ricasso");
        assertThat(reading.texts().data()).containsOnlyKeys("src/main/ricasso/tables/loss.csv");
        assertThat(reading.texts().data().get("src/main/ricasso/tables/loss.csv").text()).isEqualTo("t");
        assertThat(reading.texts().files()).noneMatch(SourceFile::shipped);
        assertThat(reading.count()).isEqualTo(4);
        assertThat(reading.diagnostics()).isEmpty();
    }

    @Test
    void passesOverWhatEditorsAndVersionControlKeep() throws IOException {
        write(".#a.ricasso", "lock");
        write(".history/a.ricasso", "old");
        write("a.ricasso", "a");
        assertThat(read().texts().files()).extracting(SourceFile::name).containsExactly("src/main/ricasso/a.ricasso");
    }

    @Test
    void aFolderNamedLikeATextIsNoText() throws IOException {
        write("odd.ricasso/inside.ricasso", "x");
        assertThat(read().texts().files()).extracting(SourceFile::name)
                .containsExactly("src/main/ricasso/odd.ricasso/inside.ricasso");
    }

    @Test
    void aMissingFolderHoldsNothing() throws IOException {
        SourceReader.Reading reading = new SourceReader(module).read(module.resolve("nowhere"));
        assertThat(reading.count()).isZero();
        assertThat(reading.diagnostics()).isEmpty();
    }

    @Test
    void aFolderOutsideTheModuleIsNamedFromTheModule() throws IOException {
        Path inner = Files.createDirectories(module.resolve("inner"));
        write("a.ricasso", "a");
        assertThat(new SourceReader(inner).read(sources).texts().files()).extracting(SourceFile::name)
                .containsExactly("../src/main/ricasso/a.ricasso");
    }

    @Test
    void keepsLineEndsAndDropsTheByteOrderMark() throws IOException {
        write("a.ricasso", "\uFEFFknife x {\r\n}\r\n");
        SourceFile file = read().texts().files().get(0);
        assertThat(file.text()).isEqualTo("knife x {\r\n}\r\n");
        assertThat(file.lineText(1)).isEqualTo("knife x {");
        assertThat(file.column(file.text().indexOf('{'))).isEqualTo(9);
    }

    @Test
    void keepsCharactersOutsideTheBasicPlane() throws IOException {
        write("a.ricasso", "// \uD83D\uDD2A ± °C µm ⌀");
        assertThat(read().texts().files().get(0).text()).isEqualTo("// \uD83D\uDD2A ± °C µm ⌀");
        assertThat(read().diagnostics()).isEmpty();
    }

    @Test
    void aByteThatIsNotUtf8IsAFindingAtItsPlace() throws IOException {
        write("a.ricasso", bytes("\uFEFF", "steel x {\n  t: 20 ", 0xB0, "C\n}\n"));
        Diagnostic finding = read().diagnostics().get(0);
        assertThat(finding.name()).isEqualTo("not-utf-8");
        assertThat(finding.primary().span()).hasToString("src/main/ricasso/a.ricasso:2:9");
        assertThat(finding.primary().span().text()).isEqualTo("\uFFFD");
        assertThat(finding.primary().text()).isEqualTo("the byte 0xB0 is not UTF-8 here");
        assertThat(finding.because()).singleElement().asString().endsWith("this byte is °");
        assertThat(finding.also()).isEmpty();
        assertThat(finding.remedies()).singleElement()
                .satisfies(remedy -> assertThat(remedy.text()).contains("UTF-8"));
    }

    @Test
    void aFileWithManyWrongBytesGivesOneFinding() throws IOException {
        write("a.csv", bytes("a", 0xB0, "b", 0xB1, "c", 0xC3));
        write("b.ricasso", bytes("ok"));
        SourceReader.Reading reading = read();
        assertThat(reading.diagnostics()).singleElement()
                .satisfies(d -> assertThat(d.also()).containsExactly("the file holds 2 more such places"));
        assertThat(reading.texts().data().get("src/main/ricasso/a.csv").text()).isEqualTo("a\uFFFDb\uFFFDc\uFFFD");
    }

    @Test
    void overlongAndSurrogateFormsAreRefused() throws IOException {
        write("a.ricasso", bytes(0xC0, 0xAF));
        write("b.ricasso", bytes(0xED, 0xA0, 0x80));
        assertThat(read().diagnostics()).hasSize(2);
    }

    @Test
    void utf16IsNamed() throws IOException {
        write("a.ricasso", "\uFEFFknife".getBytes(StandardCharsets.UTF_16LE));
        assertThat(read().diagnostics()).singleElement()
                .satisfies(d -> assertThat(d.because()).containsExactly(
                        "the file begins with the byte order mark of UTF-16"));
    }

    @Test
    void anEmptyTextIsAText() throws IOException {
        write("a.ricasso", "");
        assertThat(read().count()).isEqualTo(1);
    }
}
