package org.ricasso.dsl.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;

/** The guideline in the catalogue's head, as far as a machine can tell, over all messages of catalogue and golden files. */
class MessageFormTest {
    /** A mark's text, or a labelled line, as printed. */
    private static final Pattern PRINTED = Pattern.compile("^ +\\| *(?:\\^+|-+) (.+)$|^  (?:because|remedy|also) +(.+)$");
    private static final List<String> NOT_SAID = List.of("illegal", "invalid", "token", "syntax", "parse", "unexpected",
            "error", "bad", "forgot", "you", "your", "please", "sorry");

    private static List<String> texts(String printed) {
        List<String> result = new ArrayList<>();
        for (String line : printed.lines().toList()) {
            Matcher matcher = PRINTED.matcher(line);
            if (matcher.matches()) {
                result.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
            }
        }
        return result;
    }

    private static Set<String> ofTheCatalogue() {
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
        Set<String> result = new TreeSet<>();
        for (CatalogueEntry entry : CatalogueTest.examples()) {
            for (Diagnostic diagnostic : LittleHouse.findings(entry.gives(), entry.files())) {
                result.addAll(texts(printer.print(diagnostic)));
            }
        }
        return result;
    }

    private static Set<String> ofTheGoldenFiles() throws IOException {
        Set<String> result = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src", "test", "resources"))) {
            for (Path file : files.filter(f -> f.toString().matches(".*\\.(expected|txt)")).toList()) {
                result.addAll(texts(Files.readString(file, StandardCharsets.UTF_8)));
            }
        }
        return result;
    }

    private static void keepsToTheGuideline(String text) {
        String plain = text.replaceAll("`[^`]*`", "x").replaceAll("\"[^\"]*\"", "x");
        // the name of a die or a program, as the works wrote it, may stand first
        assertThat(plain).as(text).matches("(?:[a-z0-9({-]|[A-Z]+-[A-Za-z0-9-]+ ).*[^.!]").doesNotContain("!");
        for (String word : NOT_SAID) {
            assertThat(plain.toLowerCase(java.util.Locale.ROOT)).as(text).doesNotMatch(".*\\b" + word + "\\b.*");
        }
    }

    @Test
    void messagesOfTheCatalogueKeepToTheGuideline() {
        assertThat(ofTheCatalogue()).hasSizeGreaterThan(100).allSatisfy(MessageFormTest::keepsToTheGuideline);
    }

    @Test
    void messagesOfTheGoldenFilesKeepToTheGuideline() throws IOException {
        assertThat(ofTheGoldenFiles()).hasSizeGreaterThan(100).allSatisfy(MessageFormTest::keepsToTheGuideline);
    }

    @Test
    void anotherFormIsSeen() {
        for (String text : List.of("This is bad", "it stops here.", "stop!", "you forgot a unit", "invalid unit")) {
            org.assertj.core.api.Assertions.assertThatThrownBy(() -> keepsToTheGuideline(text)).isInstanceOf(AssertionError.class);
        }
    }
}
