package org.ricasso.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ricasso.dsl.source.SourceFile;

class PatternsTest {
    private static final List<SourceFile> FILES = List.of(file("cooks-200.ricasso"), file("knives/cooks-230.ricasso"),
            file("knives/paring.ricasso"));

    private static SourceFile file(String name) {
        return new SourceFile(name, "", false);
    }

    private static List<String> chosen(List<String> patterns) {
        return new Patterns(patterns).chosen(FILES, f -> Path.of(f.name())).stream().map(SourceFile::name).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "cooks-200.ricasso; cooks-200.ricasso",
        "**/cooks-*.ricasso; cooks-200.ricasso knives/cooks-230.ricasso",
        "knives/*; knives/cooks-230.ricasso knives/paring.ricasso",
        "*, knives/p*; cooks-200.ricasso knives/paring.ricasso",
        "Cooks*; ''"
    })
    void patternsChoose(String patterns, String names) {
        assertThat(chosen(Arrays.asList(patterns.split(",")))).isEqualTo(names.isEmpty() ? List.of() : List.of(names.split(" ")));
    }

    @Test
    void noPatternMeansAll() {
        assertThat(chosen(List.of())).hasSize(3);
        assertThat(chosen(null)).hasSize(3);
    }
}
