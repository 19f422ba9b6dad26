package org.ricasso.dsl.trial.real;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.trial.Golden;
import org.ricasso.dsl.trial.MistakesTest;
import org.ricasso.dsl.trial.TrialHouse;

/**
 * The mistakes that are really made in specifications and routes of knives, each made in the house: all that is found is what a foreman
 * would say of it, at the places where he would point, with the remedy he would give. Each remedy that is offered is written as it stands.
 */
class RealMistakesTest {
    private static final Pattern HEAD = Pattern.compile("^ *((change|add) )?\\d+ [a-z]|^[a-z]|\\{ *$");

    static Stream<RealMistake> mistakes() {
        return Stream.of(SteelMistakes.all(), HeatMistakes.all(), ToolMistakes.all()).flatMap(List::stream);
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void isSaidAtItsPlaceWithItsRemedy(RealMistake mistake) {
        TrialHouse house = mistake.house();
        List<Diagnostic> found = found(house);
        assertThat(found).extracting(d -> d.severity() + " " + d.name())
                .containsExactlyElementsOf(mistake.said().stream().map(s -> s.severity() + " " + s.name()).toList());
        for (int i = 0; i < found.size(); i++) {
            Diagnostic diagnostic = found.get(i);
            Said said = mistake.said().get(i);
            assertThat(isAt(said.at(), diagnostic.primary().span())).as("%s at %s", said.at(), diagnostic.primary().span()).isTrue();
            for (Said.Place mark : said.marks()) {
                assertThat(diagnostic.others().stream().map(Mark::span).anyMatch(span -> isAt(mark, span)))
                        .as("%s among %s", mark, diagnostic.others()).isTrue();
            }
            said.words().forEach(stretch -> assertThat(diagnostic.primary().text()).contains(stretch));
            List<String> reasons = new ArrayList<>(diagnostic.because());
            reasons.addAll(diagnostic.also());
            diagnostic.others().forEach(m -> reasons.add(m.text()));
            said.reasons().forEach(stretch -> assertThat(String.join("\n", reasons)).contains(stretch));
            begins(diagnostic.remedies().stream().filter(r -> !r.edits().isEmpty()).map(Remedy::text).toList(), said.remedies());
            begins(diagnostic.remedies().stream().filter(r -> r.edits().isEmpty()).map(Remedy::text).toList(), said.advice());
            for (Remedy remedy : diagnostic.remedies()) {
                assertThat(remedy.edits().isEmpty() ? List.of() : found(house.with(remedy.edits()))).as(remedy.text()).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void isPrintedAsItWasLookedAt(RealMistake mistake) {
        TrialHouse house = mistake.house();
        StringBuilder out = new StringBuilder(mistake.title()).append("\n\n");
        for (SourceFile file : house.texts().files()) {
            MistakesTest.changed(mistake.good().file(file.name()), file, out);
        }
        out.append('\n');
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
        found(house).forEach(d -> out.append(printer.print(d)).append('\n'));
        assertThat(out.toString()).doesNotContainIgnoringCase("invalid");
        Golden.check("real/" + mistake.id() + ".txt", out.toString());
    }

    /** What is found; words of other languages are not part of a mistake. */
    private static List<Diagnostic> found(TrialHouse house) {
        return house.diagnostics().stream().filter(d -> !d.name().startsWith("words-")).toList();
    }

    private static void begins(List<String> texts, List<String> begins) {
        assertThat(texts).hasSameSizeAs(begins);
        for (int i = 0; i < texts.size(); i++) {
            assertThat(texts.get(i)).startsWith(begins.get(i));
        }
    }

    private static boolean isAt(Said.Place place, Span span) {
        if (!span.text().equals(place.under())) {
            return false;
        }
        String[] lines = span.file().text().substring(0, span.file().text().indexOf('\n', span.end())).split("\n", -1);
        int at = span.line() - 1;
        boolean inLine = lines[at].contains(place.in());
        for (int i = at - 1; i >= 0 && !inLine; i--) {
            if (HEAD.matcher(lines[i]).find()) {
                inLine = lines[i].contains(place.in());
                if (lines[i].matches("^ *((change|add) )?\\d+ [a-z].*|^[a-z].*")) {
                    break;
                }
            }
        }
        return inLine;
    }
}
