package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.source.SourceFile;

/** Each mistake is found once, at its place, with its reason; each remedy that is offered, applied as it stands, holds. */
public class MistakesTest {

    static List<Mistake> mistakes() {
        return Mistakes.all();
    }

    @Test
    void theHouseAsItStandsHasNoError() {
        assertThat(TrialHouse.whole().errors()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void isOneErrorAtItsPlaceWithItsReason(Mistake mistake) {
        TrialHouse house = mistake.house();
        List<Diagnostic> errors = house.errors();
        assertThat(errors).hasSize(1);
        Diagnostic error = errors.get(0);
        assertThat(error.name()).isEqualTo(mistake.name());
        assertThat(error.severity()).isEqualTo(Severity.ERROR);
        assertThat(error.primary().span().toString()).isEqualTo(mistake.place(house));
        assertThat(error.primary().text()).contains(mistake.says());
        List<String> reasons = new ArrayList<>(error.because());
        reasons.addAll(error.also());
        assertThat(String.join("\n", reasons)).contains(mistake.reason());
        assertThat(error.remedies().stream().anyMatch(r -> !r.edits().isEmpty())).isEqualTo(mistake.mends());
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void isMendedByEachRemedyAsItStands(Mistake mistake) {
        TrialHouse house = mistake.house();
        for (Diagnostic diagnostic : house.diagnostics()) {
            for (Remedy remedy : diagnostic.remedies()) {
                if (!remedy.edits().isEmpty()) {
                    assertThat(house.with(remedy.edits()).errors()).as(remedy.text()).isEmpty();
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void isPrintedAsItWasLookedAt(Mistake mistake) {
        TrialHouse house = mistake.house();
        StringBuilder out = new StringBuilder(mistake.title()).append("\n\n");
        for (SourceFile file : house.texts().files()) {
            changed(TrialHouse.single().file(file.name()), file, out);
        }
        out.append('\n');
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
        house.diagnostics().forEach(d -> out.append(printer.print(d)).append('\n'));
        Golden.check("mistakes/" + mistake.id() + ".txt", out.toString());
    }

    /** The lines that are other than in the good text, in the order of the text. */
    public static void changed(SourceFile good, SourceFile bad, StringBuilder out) {
        if (good.text().equals(bad.text())) {
            return;
        }
        List<String> before = good.text().lines().toList();
        List<String> after = bad.text().lines().toList();
        // how many lines of what is left of both are the same, in order
        int[][] same = new int[before.size() + 1][after.size() + 1];
        for (int i = before.size() - 1; i >= 0; i--) {
            for (int j = after.size() - 1; j >= 0; j--) {
                same[i][j] = before.get(i).equals(after.get(j)) ? same[i + 1][j + 1] + 1
                        : Math.max(same[i + 1][j], same[i][j + 1]);
            }
        }
        out.append(good.name()).append('\n');
        int i = 0;
        int j = 0;
        while (i < before.size() || j < after.size()) {
            if (i < before.size() && j < after.size() && before.get(i).equals(after.get(j))) {
                i++;
                j++;
            } else if (i < before.size() && (j == after.size() || same[i + 1][j] >= same[i][j + 1])) {
                out.append("  good ").append(before.get(i++)).append('\n');
            } else {
                out.append("  bad  ").append(after.get(j++)).append('\n');
            }
        }
    }

    @Test
    void aScallopOfRightDepthPasses() {
        assertThat(Mistakes.scalloped(TrialHouse.single(), "0.20 ± 0.05 mm").diagnostics()).isEmpty();
    }
}
