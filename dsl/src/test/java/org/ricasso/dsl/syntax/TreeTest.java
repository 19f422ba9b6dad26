package org.ricasso.dsl.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ricasso.dsl.source.SourceFile;

/** Trees say what the text says, wherever and however its lines end. */
class TreeTest {

    static List<SourceFile> texts() {
        return Samples.repository();
    }

    private static SourceFile text(String text) {
        return new SourceFile("text", text, false);
    }

    /** The tree of a sample, as it stands beside it; {@code -Dricasso.golden=write} writes it anew and fails. */
    @ParameterizedTest
    @ValueSource(strings = {"2-operations", "5-odd-values", "6-routes"})
    void treesAreAsWritten(String name) throws IOException {
        Path folder = Samples.RESOURCES.resolve("samples");
        String found = TreeText.of(Parser.parse(Samples.read(folder.resolve(name + ".ricasso"))).tree());
        Path expected = folder.resolve(name + ".tree");
        if ("write".equals(System.getProperty("ricasso.golden"))) {
            Files.writeString(expected, found);
            throw new AssertionError("written: " + expected + "; read it, then run without the property");
        }
        assertThat(found).isEqualTo(Files.readString(expected));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void lineEndsDoNotMatter(SourceFile file) {
        String lf = file.text().replace("\r\n", "\n");
        String tree = TreeText.of(Parser.parse(text(lf)).tree());
        assertThat(TreeText.of(Parser.parse(text(lf.replace("\n", "\r\n"))).tree())).isEqualTo(tree);
        assertThat(TreeText.of(Parser.parse(text(lf.replace("\n", "\r"))).tree())).isEqualTo(tree);
        assertThat(TreeText.of(Parser.parse(text("\uFEFF" + lf)).tree())).isEqualTo(tree);
        assertThat(TreeText.of(Parser.parse(text(lf.stripTrailing())).tree())).isEqualTo(tree);
    }

    @Test
    void lineEndsDoNotMatterToFindings() {
        String lf = Samples.read(Samples.RESOURCES.resolve("cases").resolve("five-unrelated.ricasso")).text();
        for (String end : List.of("\r\n", "\r")) {
            assertThat(Parser.parse(text(lf.replace("\n", end))).diagnostics())
                    .extracting(d -> d.primary().span().line(), d -> d.primary().span().column(), d -> d.name())
                    .isEqualTo(Parser.parse(text(lf)).diagnostics().stream()
                            .map(d -> org.assertj.core.groups.Tuple.tuple(d.primary().span().line(),
                                    d.primary().span().column(), d.name())).toList());
        }
    }

    /** What an expression's span covers is that expression: read alone it gives the same tree. */
    @ParameterizedTest
    @MethodSource("texts")
    void spansCoverWhatTheyAreOf(SourceFile file) {
        TreeText.expressions(Parser.parse(file).tree().declarations(), expression -> {
            ExpressionResult alone = Parser.parseExpression(text(expression.span().text()));
            assertThat(alone.diagnostics()).as(expression.span().text()).isEmpty();
            assertThat(TreeText.of(alone.expression())).isEqualTo(TreeText.of(expression));
        });
    }

    @Test
    void spansAreCharacterOffsetsBehindAnEmoji() {
        SourceFile file = text("\uFEFF// \uD83D\uDD2A knife\nknife a { b: \"\uD83D\uDD2A {c.d}\" }");
        ParseResult result = Parser.parse(file);
        assertThat(result.diagnostics()).isEmpty();
        Declaration.ThingDeclaration thing = (Declaration.ThingDeclaration) result.tree().declarations().get(0);
        assertThat(thing.head().name().span().text()).isEqualTo("a");
        Block.Item.Entry entry = (Block.Item.Entry) thing.block().items().get(0);
        Text text = ((Expression.TextLiteral) entry.value()).text();
        assertThat(text.written()).isEqualTo("\uD83D\uDD2A {c.d}");
        assertThat(((Text.Hole) text.pieces().get(1)).expression().span().text()).isEqualTo("c.d");
    }

    /** Of a damaged text everything else is read. */
    @Test
    void linesThatFitMakeTheTree() {
        ParseResult result = Parser.parse(
                Samples.read(Samples.RESOURCES.resolve("cases").resolve("five-unrelated.ricasso")));
        assertThat(TreeText.of(result.tree())).contains("number", "AB-2120", "1.4116", "each-side", "RV-5x13", "(Step 10",
                "(Step 30").doesNotContain("(Step 20", "200,5", "behind");
    }
}
