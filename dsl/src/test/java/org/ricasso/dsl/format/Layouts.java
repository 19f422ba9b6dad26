package org.ricasso.dsl.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.Lexeme;
import org.ricasso.dsl.syntax.Lexemes;
import org.ricasso.dsl.syntax.ParseResult;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.syntax.TreeText;

/** What holds for every text that is laid out. */
final class Layouts {
    private Layouts() {}

    /** All texts of the repository that are meant to be good. Tests run in the module's folder. */
    static List<Path> repository() {
        List<Path> result = new ArrayList<>();
        for (Path folder : List.of(Path.of("..", "shared", "src", "main"), Path.of("..", "specs", "src", "main"),
                Path.of("src", "test", "resources", "bakery"),
                Path.of("src", "test", "resources", "org", "ricasso", "dsl", "syntax", "samples"))) {
            try (Stream<Path> walk = Files.walk(folder)) {
                walk.filter(p -> p.toString().endsWith(".ricasso")).sorted().forEach(result::add);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return result;
    }

    static String read(Path path) {
        try {
            return Files.readString(path).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static SourceFile file(String text) {
        return new SourceFile("text", text, false);
    }

    static String format(String text) {
        Formatted result = Formatter.format(file(text));
        assertThat(result.diagnostics()).isEmpty();
        return result.text();
    }

    /** Checks a text with line feeds and what comes of it, and gives that. */
    static String check(String text) {
        String laid = format(text);
        assertThat(tree(laid)).as("the same tree").isEqualTo(tree(text));
        assertThat(comments(laid)).as("the same comments").isEqualTo(comments(text));
        assertThat(format(laid)).as("the same a second time").isEqualTo(laid);
        assertThat(format(text.replace("\n", "\r\n"))).as("the same of CR LF").isEqualTo(laid);
        assertThat(format(text.replace('\n', '\r'))).as("the same of CR").isEqualTo(laid);
        assertThat(format("\uFEFF" + text)).as("the same behind a byte order mark").isEqualTo(laid);
        assertThat(laid).doesNotContain("\r", "\n\n\n", " \n", "\t\n").doesNotStartWith("\n").doesNotEndWith("\n\n");
        assertThat(laid.isEmpty() || laid.endsWith("\n")).isTrue();
        return laid;
    }

    static String tree(String text) {
        ParseResult result = Parser.parse(file(text));
        assertThat(result.diagnostics()).isEmpty();
        return TreeText.of(result.tree());
    }

    static List<String> comments(String text) {
        return Lexemes.of(file(text)).stream().filter(l -> l.kind() == Lexeme.Kind.COMMENT).map(Lexeme::text).toList();
    }
}
