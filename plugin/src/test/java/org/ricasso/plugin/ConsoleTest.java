package org.ricasso.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.logging.SystemStreamLog;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

class ConsoleTest {
    private static final SourceFile FILE = new SourceFile("a.ricasso", "temperature: 245 ± 5 °C\n", false);

    private static final class Recorder extends SystemStreamLog {
        private final List<String> records = new ArrayList<>();

        @Override
        public void error(CharSequence content) {
            records.add("error|" + content);
        }

        @Override
        public void warn(CharSequence content) {
            records.add("warn|" + content);
        }

        @Override
        public void info(CharSequence content) {
            records.add("info|" + content);
        }
    }

    private final Recorder log = new Recorder();

    private static Diagnostic finding(Severity severity) {
        return new Diagnostic("too-hot", severity, new Mark(new Span(FILE, 13, 23), "no more than 220 °C"), List.of(),
                List.of(), List.of(), List.of(), List.of());
    }

    @Test
    void aFindingIsOneRecordAtItsOwnLevel() {
        Console console = new Console(log, StandardCharsets.UTF_8, false);
        for (Severity severity : Severity.values()) {
            console.print(finding(severity));
        }
        assertThat(log.records).hasSize(3);
        assertThat(log.records.get(0)).startsWith("error|error: too-hot\n  a.ricasso:1:14\n")
                .endsWith("^^^^^^^^^^ no more than 220 °C");
        assertThat(log.records.get(1)).startsWith("warn|warning: too-hot");
        assertThat(log.records.get(2)).startsWith("info|note: too-hot");
    }

    @Test
    void colourOnlyWhereItIsWanted() {
        new Console(log, StandardCharsets.UTF_8, false).print(finding(Severity.ERROR));
        new Console(log, StandardCharsets.UTF_8, true).print(finding(Severity.ERROR));
        assertThat(log.records.get(0)).doesNotContain("\u001B");
        assertThat(log.records.get(1)).contains("\u001B[");
    }

    @Test
    void aConsoleWithoutTheSignsGetsAscii() {
        Console console = new Console(log, StandardCharsets.US_ASCII, false);
        console.print(finding(Severity.ERROR));
        console.print(List.of("185 ± 5 °C → 56 HRC"));
        assertThat(log.records).allMatch(record -> record.chars().allMatch(c -> c < 128));
        assertThat(log.records.get(0)).contains("245 +/- 5 degC");
        assertThat(log.records.get(1)).isEqualTo("info|185 +/- 5 degC -> 56 HRC");
    }
}
