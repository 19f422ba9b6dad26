package org.ricasso.dsl.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;
import org.ricasso.dsl.source.SourceFile;

/**
 * Each text under {@code cases} gives the findings that stand in the file beside it. With
 * {@code -Dricasso.golden=write} those files are written anew, and the test fails so that they are read by somebody.
 */
class GoldenTest {
    private static final Path CASES = Samples.RESOURCES.resolve("cases");

    static List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(CASES)) {
            return files.map(f -> f.getFileName().toString()).filter(n -> n.endsWith(".ricasso"))
                    .map(n -> n.substring(0, n.length() - ".ricasso".length())).sorted().toList();
        }
    }

    private static ParseResult parse(String name) {
        return Parser.parse(Samples.read(CASES.resolve(name + ".ricasso")));
    }

    @ParameterizedTest
    @MethodSource("names")
    void findingsAreAsWritten(String name) throws IOException {
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
        String found = parse(name).diagnostics().stream().map(printer::print).collect(Collectors.joining());
        Path expected = CASES.resolve(name + ".expected");
        if ("write".equals(System.getProperty("ricasso.golden"))) {
            Files.writeString(expected, found);
            throw new AssertionError("written: " + expected + "; read it, then run without the property");
        }
        assertThat(expected).exists();
        assertThat(found).isEqualTo(Files.readString(expected));
    }

    @Test
    void everyFileHasItsPartner() throws IOException {
        try (Stream<Path> files = Files.list(CASES)) {
            List<String> expected = files.map(f -> f.getFileName().toString()).filter(n -> !n.endsWith(".ricasso"))
                    .toList();
            assertThat(expected)
                    .containsExactlyInAnyOrderElementsOf(names().stream().map(n -> n + ".expected").toList());
        }
    }

    /** Each name that the catalogue gives is shown by a case. */
    @Test
    void everyFindingHasACase() throws IOException {
        Set<String> shown = new TreeSet<>();
        for (String name : names()) {
            parse(name).diagnostics().stream().map(Diagnostic::name).forEach(shown::add);
        }
        String catalogue = Files.readString(
                Path.of("src", "main", "java", "org", "ricasso", "dsl", "syntax", "SyntaxFindings.java"));
        Set<String> given = new TreeSet<>();
        Matcher matcher = Pattern.compile("error\\(\"([a-z-]+)\"").matcher(catalogue);
        while (matcher.find()) {
            given.add(matcher.group(1));
        }
        assertThat(given).isNotEmpty();
        assertThat(shown).isEqualTo(given);
    }

    @Test
    void fiveUnrelatedMistakesGiveFiveFindings() {
        assertThat(parse("five-unrelated").diagnostics()).extracting(d -> d.primary().span().line())
                .containsExactly(7, 8, 9, 16, 17);
    }

    /** A remedy with an edit is exact: written as it says, its finding is gone, and no more are found than before. */
    @ParameterizedTest
    @MethodSource("names")
    void editsCure(String name) {
        ParseResult result = parse(name);
        SourceFile file = result.tree().file();
        for (Diagnostic diagnostic : result.diagnostics()) {
            diagnostic.remedies().stream().filter(r -> !r.edits().isEmpty()).forEach(remedy -> {
                StringBuilder text = new StringBuilder(file.text());
                remedy.edits().forEach(e -> text.replace(e.span().start(), e.span().end(), e.replacement()));
                ParseResult after = Parser.parse(new SourceFile(file.name(), text.toString(), false));
                assertThat(after.diagnostics()).as("%s: %s", diagnostic.name(), remedy.text())
                        .hasSizeLessThanOrEqualTo(result.diagnostics().size())
                        .noneMatch(d -> d.name().equals(diagnostic.name())
                                && d.primary().span().start() == diagnostic.primary().span().start());
            });
        }
    }

    /** Texts keep to the catalogue's guideline as far as a machine can tell. */
    @ParameterizedTest
    @MethodSource("names")
    void textsKeepToTheGuideline(String name) {
        for (Diagnostic diagnostic : parse(name).diagnostics()) {
            Stream<String> texts = Stream.of(Stream.of(diagnostic.primary().text()),
                    diagnostic.others().stream().map(m -> m.text()), diagnostic.because().stream(),
                    diagnostic.remedies().stream().map(r -> r.text())).flatMap(s -> s);
            assertThat(texts).allSatisfy(text -> assertThat(text.replaceAll("`[^`]*`", "x")).matches("[a-z].*[^.!]")
                    .doesNotContainIgnoringCase("illegal", "invalid", "token", "syntax", "parse", "unexpected", "error"));
        }
    }
}
