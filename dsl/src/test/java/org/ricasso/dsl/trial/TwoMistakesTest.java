package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;
import org.ricasso.dsl.source.SourceFile;

/** Routes with two mistakes far apart: both are told, in the order of the text, and nothing that follows from them. */
class TwoMistakesTest {

    static List<TwoMistakes> routes() {
        return TwoMistakes.all();
    }

    @Test
    void areTwelve() {
        assertThat(routes()).hasSize(12).extracting(TwoMistakes::id).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("routes")
    void areBothToldAndNothingElse(TwoMistakes route) {
        List<Diagnostic> found = route.house().diagnostics();
        assertThat(found).as("%s", found.stream().map(d -> d.name() + " " + d.primary().span() + " " + d.primary().text()).toList()).hasSize(2);
        for (int i = 0; i < 2; i++) {
            String told = found.get(i).name() + " " + found.get(i).primary().text() + " " + found.get(i).because() + " " + found.get(i).also();
            assertThat(told).contains(i == 0 ? route.first() : route.second());
        }
    }

    /** The edit of the text and what is printed of it, side by side. */
    @ParameterizedTest
    @MethodSource("routes")
    void arePrintedAsTheyWereLookedAt(TwoMistakes route) {
        TrialHouse house = route.house();
        StringBuilder out = new StringBuilder(route.title()).append("\n\n");
        for (SourceFile file : house.texts().files()) {
            MistakesTest.changed(route.good().file(file.name()), file, out);
        }
        out.append('\n');
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
        house.diagnostics().forEach(d -> out.append(printer.print(d)).append('\n'));
        Golden.check("two-mistakes/" + route.id() + ".txt", out.toString());
    }
}
