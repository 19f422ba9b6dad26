package org.ricasso.dsl.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.dsl.source.SourceFile;

/** Good texts are read whole. */
class GoodTextsTest {

    static List<SourceFile> texts() {
        return Samples.repository();
    }

    @ParameterizedTest
    @MethodSource("texts")
    void isReadWithoutFinding(SourceFile file) {
        ParseResult result = Parser.parse(file);
        assertThat(result.diagnostics()).isEmpty();
        assertThat(result.tree().declarations()).isNotEmpty();
    }

    @Test
    void spansAreCharacterOffsetsBehindAnEmoji() {
        SourceFile file = new SourceFile("a", "\uFEFF// \uD83D\uDD2A knife\nknife a { b: \"\uD83D\uDD2A {c.d}\" }", false);
        ParseResult result = Parser.parse(file);
        assertThat(result.diagnostics()).isEmpty();
        Declaration.ThingDeclaration thing = (Declaration.ThingDeclaration) result.tree().declarations().get(0);
        assertThat(thing.head().name().span().text()).isEqualTo("a");
        Block.Item.Entry entry = (Block.Item.Entry) thing.block().items().get(0);
        Text text = ((Expression.TextLiteral) entry.value()).text();
        assertThat(text.written()).isEqualTo("\uD83D\uDD2A {c.d}");
        assertThat(((Text.Hole) text.pieces().get(1)).expression().span().text()).isEqualTo("c.d");
    }
}
