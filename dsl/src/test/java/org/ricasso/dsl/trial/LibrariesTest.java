package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.shared.calculation.Calculation;

/** Knowledge of libraries and of the works' own over what is shipped. All names and numbers of the libraries are invented. */
class LibrariesTest {
    private static final String OPERATION = """
            operation polish-tang "Polish the tang" {
                purpose: "It looks better."
                works:   blade
                leaves { burr: 0 mm }
                time { run: 1 s per piece }
                instruct { "Polish." }
            }
            """;
    private static final String ROW = """
            table %s "Ours" {
                before: tempering-loss
                rows:
                    | steel  | chilled | hardened     | tempered | loss  | scatter |
                    | 1.4116 | no      | 1040..1080 °C | 170 °C   | %s HRC | 0 HRC   |
                    | 1.4116 | no      | 1040..1080 °C | 190 °C   | %s HRC | 0 HRC   |
                source: "%s"
            }
            """;
    private static final String ASKED = "tempering-loss(steel: 1.4116, chilled: no, hardened: 1050 °C, tempered: 180 °C).loss";

    private final Map<String, String> texts = new LinkedHashMap<>();

    private void library(String name, String text) {
        texts.put(name + "/ricasso/texts.ricasso", text);
    }

    private void works(String text) {
        texts.put("own.ricasso", text);
    }

    private Ricasso house() {
        Texts shipped = Ricasso.withShipped(new Texts(List.of(), Map.of()));
        List<SourceFile> files = new ArrayList<>(shipped.files());
        texts.forEach((name, text) -> files.add(new SourceFile(name, text, name.contains("/ricasso/"))));
        return Ricasso.check(new Texts(files, shipped.data()), calculations(), Set.of());
    }

    private static List<Calculation> calculations() {
        return Ricasso.calculations(LibrariesTest.class.getClassLoader());
    }

    private static String row(String name, double loss) {
        return ROW.formatted(name, loss, loss, "records of " + name);
    }

    private static List<String> names(Ricasso house) {
        return house.checked().diagnostics().stream().map(Diagnostic::name).toList();
    }

    private static String explained(Ricasso house, String name) {
        return house.explain(name).orElseThrow().stream().collect(Collectors.joining("\n"));
    }

    @Test
    void twoLibrariesThatDeclareOneNameAreAFindingAtBoth() {
        library("felling-1", OPERATION);
        library("gill-2", OPERATION);
        List<Diagnostic> found = house().checked().diagnostics();
        assertThat(found).singleElement().satisfies(d -> {
            assertThat(d.name()).isEqualTo("declared-twice");
            assertThat(d.primary().span().file().name()).isEqualTo("gill-2/ricasso/texts.ricasso");
            assertThat(d.others()).singleElement()
                    .satisfies(m -> assertThat(m.span().file().name()).isEqualTo("felling-1/ricasso/texts.ricasso"));
            assertThat(d.because()).containsExactly("one is from gill-2, the other from felling-1");
            assertThat(d.remedies()).singleElement().satisfies(r -> assertThat(r.text()).contains("polish-tang replaces polish-tang"));
        });
    }

    @Test
    void whatIsDeclaredTwiceInTheWorksAloneNeedsNoReason() {
        works(OPERATION + OPERATION);
        assertThat(house().checked().diagnostics()).singleElement()
                .satisfies(d -> assertThat(d.because()).isEmpty());
    }

    @Test
    void theWorksReplacesWhatALibraryReplaced() {
        library("felling-1", replaced("a library's"));
        works(replaced("our"));
        Ricasso house = house();
        assertThat(names(house)).isEmpty();
        assertThat(explained(house, "deburr")).contains("\"our deburring\"",
                "own.ricasso:1 (the works' own, replaces felling-1/ricasso/texts.ricasso:1, from felling-1)");
    }

    @Test
    void twoLibrariesCannotReplaceTheSame() {
        library("felling-1", replaced("one"));
        library("gill-2", replaced("another"));
        assertThat(house().checked().diagnostics()).singleElement().satisfies(d -> {
            assertThat(d.name()).isEqualTo("declared-twice");
            assertThat(d.primary().text()).isEqualTo("operation deburr is replaced twice");
            assertThat(d.others()).hasSize(1);
        });
    }

    private static String replaced(String whose) {
        return OPERATION.replace("operation polish-tang \"Polish the tang\"",
                "operation deburr \"" + whose + " deburring\" replaces deburr");
    }

    @Test
    void rowsOfTheWorksGoBeforeThoseOfALibraryAndThoseBeforeTheTables() {
        assertThat(house().calculate(ASKED, null).value()).startsWith("1.6");
        library("felling-1", row("felling", 2.5));
        Ricasso house = house();
        assertThat(names(house)).as("what the shipped table expects of itself still holds").isEmpty();
        assertThat(house.calculate(ASKED, null).value()).startsWith("2.5");
        assertThat(house.calculate(ASKED, null).derivation().toString())
                .contains("felling-1/texts.ricasso lines 5, 6 (records of felling)").doesNotContain("derived from hardening-points");
        assertThat(explained(house, "tempering-loss")).contains(
                "before    felling-1/ricasso/texts.ricasso:5 (from felling-1): steel 1.4116, chilled no, hardened 1040..1080 °C, "
                        + "tempered 170 °C, loss 2.5 HRC");
        assertThat(explained(house, "felling")).contains("(from felling-1)", "before    tempering-loss");
        works(row("own", 3.5));
        assertThat(house().calculate(ASKED, null).value()).startsWith("3.5");
        assertThat(names(house())).isEmpty();
    }

    @Test
    void rowsOfTwoLibrariesWithTheSameKeysAreAFinding() {
        library("felling-1", row("felling", 2.5));
        library("gill-2", row("gill", 2.6));
        assertThat(house().checked().diagnostics()).singleElement().satisfies(d -> {
            assertThat(d.name()).isEqualTo("rows-alike");
            assertThat(d.primary().text()).isEqualTo("gill-2/texts.ricasso line 5 has the same keys as felling-1/texts.ricasso line 5");
        });
    }

    @Test
    void examplesOfAShippedRuleSpeakOfTheShippedRows() {
        // the rule's examples rest on the shipped window of a short soak
        works("""
                table own "Ours" {
                    before: hardening-window
                    rows:
                        | steel  | soak       | window       |
                        | 1.4116 | 0.1..600 min | 900..910 °C |
                    source: "invented"
                }
                """);
        assertThat(names(house())).isEmpty();
    }

    @Test
    void aCalculationSaysWhichClassOffersIt() {
        assertThat(explained(house(), "flank-thickness"))
                .contains("from      org.ricasso.shared.geometry.BladeGeometry (shipped)");
    }
}
