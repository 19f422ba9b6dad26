package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;

/** The README's tour shows what the check really prints. */
class ReadmeTest {
    @Test
    void theTourShowsWhatIsPrinted() throws IOException {
        List<Diagnostic> found = TrialHouse.whole()
                .with(TrialHouse.ROUTE, "temperature: 180 ± 5 °C", "temperature: 245 ± 5 °C").diagnostics();
        assertThat(found).hasSize(1);
        String printed = new DiagnosticPrinter(StandardCharsets.UTF_8, false).print(found.get(0))
                .replaceAll("(?m)^  ([a-z0-9-]+[.]ricasso:)", "  src/main/ricasso/$1").strip();
        assertThat(Files.readString(Path.of("..", "README.md")).replace("[ERROR] ", "")).contains(printed);
    }
}
