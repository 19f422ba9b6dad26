package org.ricasso.dsl.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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
}
