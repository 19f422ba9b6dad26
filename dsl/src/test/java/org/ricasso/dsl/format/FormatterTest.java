package org.ricasso.dsl.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ricasso.dsl.source.SourceFile;

/**
 * Each text under {@code cases} is laid out as the file beside it. With {@code -Dricasso.golden=write} those files are
 * written anew, and the test fails so that they are read by somebody.
 */
class FormatterTest {
    private static final Path CASES = Path.of("src", "test", "resources", "org", "ricasso", "dsl", "format", "cases");

    static List<Path> cases() throws IOException {
        try (Stream<Path> files = Files.list(CASES)) {
            return files.filter(f -> f.toString().endsWith(".ricasso")).sorted().toList();
        }
    }

    private static Path partner(Path text) {
        return text.resolveSibling(text.getFileName().toString().replace(".ricasso", ".laid"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isLaidOutAsWritten(Path text) throws IOException {
        String laid = Layouts.check(Layouts.read(text));
        if ("write".equals(System.getProperty("ricasso.golden"))) {
            Files.writeString(partner(text), laid);
            throw new AssertionError("written: " + partner(text) + "; read it, then run without the property");
        }
        assertThat(laid).isEqualTo(Layouts.read(partner(text)));
    }

    @Test
    void everyFileHasItsPartner() throws IOException {
        try (Stream<Path> files = Files.list(CASES)) {
            List<Path> partners = files.filter(f -> !f.toString().endsWith(".ricasso")).toList();
            assertThat(partners).containsExactlyInAnyOrderElementsOf(cases().stream().map(FormatterTest::partner).toList());
        }
    }

    static List<Path> repository() {
        return Layouts.repository();
    }

    @ParameterizedTest
    @MethodSource("repository")
    void textsOfTheRepositorySayTheSame(Path text) {
        Layouts.check(Layouts.read(text));
    }

    static List<Path> shipped() {
        return Layouts.repository().stream().filter(p -> p.startsWith(Path.of("..", "shared"))).toList();
    }

    /** As the house does with {@code ricasso:format-check}; what stands otherwise is laid out with the same formatter. */
    @ParameterizedTest
    @MethodSource("shipped")
    void shippedTextsAreLaidOut(Path text) throws IOException {
        String laid = Layouts.format(Layouts.read(text));
        if ("write".equals(System.getProperty("ricasso.golden")) && !laid.equals(Layouts.read(text))) {
            Files.writeString(text, laid);
            throw new AssertionError("laid out: " + text);
        }
        assertThat(Layouts.read(text)).as("lay it out with -Dricasso.golden=write").isEqualTo(laid);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", "\r\n\r\n", " \t\n", ";\n;"})
    void nothingStaysNothing(String text) {
        assertThat(Layouts.format(text)).isEmpty();
    }

    @Test
    void aTextThatCannotBeReadStaysAsItIs() {
        SourceFile broken = new SourceFile("broken.ricasso", "knife   x {\r\n  a: 5mm\r\n}", false);
        Formatted result = Formatter.format(broken);
        assertThat(result.text()).isEqualTo(broken.text());
        assertThat(result.diagnostics()).singleElement().satisfies(d ->
                assertThat(d.primary().span().toString()).isEqualTo("broken.ricasso:2:6"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"knife x { a: 2; b: 2 }", "knife x { a: 1\n}", "knife x { b: 2; a: 1 }", "knife x { a: 1; b: 3 }",
        "knife x { a: 1; b: 2; }\nknife y {}", "// why\nknife x { a: 1; b: 2 }", "knife x { a: 1; b { a: 2 } }"})
    void anotherMeaningIsSeen(String other) {
        assertThatThrownBy(() -> SameMeaning.require(Layouts.file("knife x { a: 1; b: 2 }"), Layouts.file(other)))
                .isInstanceOf(IllegalStateException.class).hasMessageContaining("would say");
    }

    @Test
    void otherBlanksAndSpellingsAreTheSame() {
        SameMeaning.require(Layouts.file("knife x { a: <= 5 mm; b: −2 +/- 1 mm }"),
                Layouts.file("knife x {\n\n  a: max 5 mm\nb:   -2 ± 1 mm;\n}"));
    }
}
