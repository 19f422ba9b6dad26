package org.ricasso.dsl.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.ricasso.shared.calculation.Definition.define;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.quantity.Measure;

/** Words of a bakery: each fault is found at its place, and what is out of date is not answered with. */
class WordsTest {
    private static final List<Calculation> CALCULATIONS = List.of(
            define("dough-water", "water for a dough of a wanted warmth")
                    .rises("dough", Measure.TEMPERATURE, 273.15, 320).falls("flour", Measure.TEMPERATURE, 250, 320)
                    .falls("room", Measure.TEMPERATURE, 250, 320).falls("work", Measure.TEMPERATURE_DIFFERENCE, 0, 30)
                    .gives(Measure.TEMPERATURE, "common practice of bakers", a -> 3 * a[0] - a[1] - a[2] - a[3]));
    private static final String KNEAD = """
            words de {
                operation knead "Kneten" {
                    of: "%s"
                    purpose: "Dehnt den Kleber, damit der Teig sein Gas hält."
                    needs.stage: "geknetet wird nur ein gemischter Teig"
                    takes.turn: "Knetzeit"
                    instruct { "%s" }
                }
            }
            """;
    private static final String LINE = "{turn} kneten, in Stücke von {divide-to} teilen.";

    private static SourceFile text(String name) {
        try (InputStream in = WordsTest.class.getResourceAsStream("/bakery/" + name)) {
            return new SourceFile(name, new String(in.readAllBytes(), StandardCharsets.UTF_8), false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Texts bakery(String words, String from, String to) {
        List<SourceFile> files = new ArrayList<>();
        for (String name : List.of("units", "kinds", "workpiece", "tables", "operations", "rules", "house")) {
            SourceFile file = text(name + ".ricasso");
            files.add(new SourceFile(file.name(), file.text().replace(from, to), false));
        }
        files.add(new SourceFile("words.ricasso", words, false));
        return new Texts(files, Map.of("rising.csv", text("rising.csv")));
    }

    private static Ricasso checked(String words) {
        return Ricasso.check(bakery(words, "\u0000", ""), CALCULATIONS, Set.of());
    }

    /** All findings but of what a language that is only begun has no words for. */
    private static List<Diagnostic> found(Ricasso ricasso) {
        return ricasso.checked().diagnostics().stream().filter(d -> !d.name().equals("words-missing")).toList();
    }

    private static List<Diagnostic> found(String words) {
        return found(checked(words));
    }

    private static String digest() {
        String remedy = found(KNEAD.formatted("0000", LINE)).get(0).remedies().get(0).text();
        Matcher matcher = Pattern.compile("of: \"([0-9a-f]{4})\"").matcher(remedy);
        assertThat(matcher.find()).isTrue();
        return matcher.group(1);
    }

    @Test
    void wordsStandForTheirTexts() {
        Ricasso ricasso = checked(KNEAD.formatted(digest(), LINE));
        assertThat(found(ricasso)).isEmpty();
        Dictionary german = ricasso.words().in("de");
        assertThat(german.phrase("operation", "knead", "Knead").written()).isEqualTo("Kneten");
        assertThat(german.phrase("operation", "knead", "only a mixed dough is kneaded").written())
                .isEqualTo("geknetet wird nur ein gemischter Teig");
        Phrase work = german.phrase("operation", "knead", "Knead for {turn}, divide into {divide-to}.");
        assertThat(work.pieces()).containsExactly(new Phrase.Piece("turn", 0), new Phrase.Piece(" kneten, in Stücke von ", -1),
                new Phrase.Piece("divide-to", 1), new Phrase.Piece(" teilen.", -1));
        assertThat(german.label("operation", "knead", "takes.turn", "turn")).isEqualTo("Knetzeit");
        assertThat(german.label("turn")).as("what it is called elsewhere").isNull();
        assertThat(ricasso.words().languages()).containsExactly("en", "de");
    }

    /** Worked by hand: SHA-256 of the texts with a line feed between, its first four digits. */
    @Test
    void theFingerprintIsThatOfAllTextsOfTheDeclaration() throws Exception {
        byte[] sha = java.security.MessageDigest.getInstance("SHA-256").digest(("Knead\n"
                + "Stretches the gluten, so that the dough holds its gas.\nonly a mixed dough is kneaded\n"
                + "Knead for {turn}, divide into {divide-to}.").getBytes(StandardCharsets.UTF_8));
        assertThat(digest()).isEqualTo(java.util.HexFormat.of().formatHex(sha).substring(0, 4));
    }

    @Test
    void wordsForAnotherTextAreFoundAndNotUsed() {
        String words = KNEAD.formatted(digest(), LINE);
        Ricasso ricasso = Ricasso.check(bakery(words, "divide into {divide-to}.", "then divide into {divide-to}."),
                CALCULATIONS, Set.of());
        Diagnostic stale = found(ricasso).get(0);
        assertThat(found(ricasso)).hasSize(1);
        assertThat(stale.name()).isEqualTo("words-stale");
        assertThat(stale.severity()).isEqualTo(Severity.WARNING);
        assertThat(stale.primary().span().text()).isEqualTo("\"" + digest() + "\"");
        assertThat(stale.others().get(0).span().text()).isEqualTo("knead");
        assertThat(stale.remedies()).extracting(Remedy::edits).as("only a person can say").containsOnly(List.of());
        Dictionary german = ricasso.words().in("de");
        assertThat(german.phrase("operation", "knead", "Knead")).isNull();
        assertThat(german.label("operation", "knead", "takes.turn", "turn")).as("a name has no text").isEqualTo("Knetzeit");
    }

    @Test
    void wordsThatDoNotSayWhichTextAreFound() {
        List<Diagnostic> found = found("words de { operation rest \"Ruhen lassen\" { purpose: \"Der Teig wartet.\" } }");
        assertThat(found).extracting(Diagnostic::name, Diagnostic::severity)
                .containsExactly(tuple("words-unsigned", Severity.WARNING));
        assertThat(found.get(0).primary().span().text()).isEqualTo("rest");
    }

    @Test
    void otherHolesAreFound() {
        Ricasso ricasso = checked(KNEAD.formatted(digest(), "{turns} kneten, in Stücke von {divide-to} teilen."));
        Diagnostic holes = found(ricasso).get(0);
        assertThat(holes.name()).isEqualTo("words-holes");
        assertThat(holes.severity()).isEqualTo(Severity.ERROR);
        assertThat(holes.primary().span().text()).isEqualTo("turns");
        assertThat(holes.primary().text()).isEqualTo("{turns} is no hole of the text, {turn} is missing");
        assertThat(holes.remedies().get(0).edits().get(0).replacement()).isEqualTo("turn");
        assertThat(ricasso.words().in("de").phrase("operation", "knead", "Knead for {turn}, divide into {divide-to}.")).isNull();
        assertThat(ricasso.words().in("de").phrase("operation", "knead", "Knead")).isNotNull();

        Diagnostic missing = found(KNEAD.formatted(digest(), "{turn} kneten.")).get(0);
        assertThat(missing.primary().text()).isEqualTo("{divide-to} is missing");
        assertThat(missing.primary().span().text()).isEqualTo("\"{turn} kneten.\"");
    }

    @Test
    void aHoleMayStandElsewhereAndTwice() {
        assertThat(found(KNEAD.formatted(digest(), "In Stücke von {divide-to} nach {turn}, genau {turn}."))).isEmpty();
    }

    @Test
    void otherLinesOfWorkAreFound() {
        Diagnostic lines = found(KNEAD.formatted(digest(), LINE + "\"; \"Abdecken.")).stream()
                .filter(d -> d.severity() == Severity.ERROR).findFirst().orElseThrow();
        assertThat(lines.name()).isEqualTo("words-lines");
        assertThat(lines.primary().text()).isEqualTo("the work of operation knead has 1 line, here are 2");
    }

    @Test
    void unknownNamesAreFoundWithThoseNearThem() {
        assertThat(found("words de { operation kneat \"Kneten\" {} }")).extracting(Diagnostic::name, d -> d.primary().span().text(),
                d -> d.remedies().get(0).text()).containsExactly(tuple("unknown-name", "kneat", "write knead"));
        assertThat(found("words de { operation knead { purpos: \"x\" } }")).extracting(Diagnostic::name,
                d -> d.primary().span().text(), d -> d.remedies().get(0).text())
                .containsExactly(tuple("unknown-name", "purpos", "write purpose"));
        assertThat(found("words de { potion: \"Stück\" }")).extracting(Diagnostic::name,
                d -> d.remedies().get(0).text()).containsExactly(tuple("unknown-name", "write portion"));
        assertThat(found("words de { knife a \"Messer\" {} }")).extracting(Diagnostic::name, d -> d.primary().span().text())
                .containsExactly(tuple("unknown-name", "knife"));
        assertThat(found("words German { }")).extracting(Diagnostic::name).containsExactly("words-language");
    }

    @Test
    void whatATextLostSinceIsToldWithItsChange() {
        List<Diagnostic> found = found("words de { operation knead \"Kneten\" { of: \"0000\"; needs.rested: \"ruht\" } }");
        assertThat(found).extracting(Diagnostic::name).containsExactly("words-stale");
        assertThat(found.get(0).others()).extracting(mark -> mark.span().text()).containsExactly("knead", "needs.rested");
    }

    @Test
    void wordsStandOnce() {
        assertThat(found("words de { portion: \"Stück\"; portion: \"Teigling\" }")).extracting(Diagnostic::name)
                .containsExactly("declared-twice");
    }

    @Test
    void whatABegunLanguageLacksIsFoundAtItsPlace() {
        Ricasso ricasso = checked(KNEAD.formatted(digest(), LINE).replace("needs.stage: ", "// needs.stage: "));
        List<Diagnostic> missing = ricasso.checked().diagnostics().stream().filter(d -> d.name().equals("words-missing")).toList();
        assertThat(missing).extracting(Diagnostic::severity).containsOnly(Severity.WARNING);
        assertThat(missing).filteredOn(d -> d.primary().span().file().name().equals("words.ricasso"))
                .extracting(d -> d.primary().text()).contains("de has no words for needs.stage of operation knead")
                .anyMatch(text -> text.startsWith("de has no words for the names "));
        assertThat(missing).filteredOn(d -> d.primary().span().file().name().equals("operations.ricasso"))
                .extracting(d -> d.primary().text()).contains("de has no words for title, purpose, instruct of operation rest");
        assertThat(missing).filteredOn(d -> d.primary().span().text().equals("tin-loaf"))
                .extracting(d -> d.primary().text()).containsExactly("de has no words for title, route.10.wetness.if-wrong,"
                        + " route.20.portion.if-wrong, route.50.core.if-wrong, route.70.slices.if-wrong and 3 more of bread tin-loaf");
        assertThat(missing).extracting(d -> d.primary().text()).as("signs and codes need no words")
                .noneMatch(text -> text.contains("sign of") || text.contains("title, sign"));
    }

    @Test
    void noLanguageIsMissingThatNobodyBegan() {
        assertThat(checked("words en { portion: \"Piece of dough\" }").checked().diagnostics()).isEmpty();
        assertThat(checked("").words()).isSameAs(Words.NONE);
    }

    /** One text that stands in two declarations needs words once. */
    @Test
    void wordsOfTheSameTextServeEverywhere() {
        Ricasso ricasso = checked("""
                words de {
                    bread tin-loaf "Kastenbrot" { of: "0000"; route.10.wetness.if-wrong: "dem Bäcker sagen" }
                }
                """);
        String digest = found(ricasso).get(0).remedies().get(0).text().replaceAll(".*of: \"(.*)\".*", "$1");
        ricasso = checked("""
                words de {
                    bread tin-loaf "Kastenbrot" { of: "%s"; route.10.wetness.if-wrong: "dem Bäcker sagen" }
                }
                """.formatted(digest));
        assertThat(ricasso.words().in("de").phrase("bread", "rye-loaf", "tell the baker").written()).isEqualTo("dem Bäcker sagen");
    }

    /** A sheet that is filled in is whole: nothing is found and nothing is left to write. */
    @Test
    void aTranslatorsSheetLeadsToAWholeLanguage() {
        String sheet = Ricasso.wordsToWrite(bakery("", "\u0000", ""), CALCULATIONS, "fr").get("works.ricasso");
        assertThat(sheet).contains("// only a mixed dough is kneaded\n", "needs.stage: \"\"", "// workpiece bread, loaf.stage.kneaded\n");
        Pattern empty = Pattern.compile("// (.*)\n(.*)\"\"");
        // words that differ from the text in every place but the holes
        String filled = empty.matcher(sheet).replaceAll(r -> Matcher.quoteReplacement("// " + r.group(1) + "\n" + r.group(2) + "\"«"
                + r.group(1).replaceAll("\"", "") + "»\""));
        assertThat(filled).doesNotContain("\"\"");
        Ricasso ricasso = checked(filled);
        assertThat(ricasso.checked().diagnostics()).isEmpty();
        assertThat(Ricasso.wordsToWrite(bakery(filled, "\u0000", ""), CALCULATIONS, "fr")).isEmpty();
        assertThat(ricasso.words().in("fr").phrase("operation", "knead", "Knead").written()).isEqualTo("«Knead»");
    }

    @Test
    void aTranslatorsSheetKeepsWhatIsThere() {
        String sheet = Ricasso.wordsToWrite(bakery(KNEAD.formatted("0000", LINE), "\u0000", ""), CALCULATIONS, "de")
                .get("works.ricasso");
        assertThat(sheet).contains("operation knead \"Kneten\" {", "\"" + LINE + "\"").containsPattern("of: +\"" + digest() + "\"");
    }

    private static List<Diagnostic> wanted(String words, String... whole) {
        return Ricasso.check(bakery(words, "\u0000", ""), CALCULATIONS, Set.of(), Set.of(whole)).checked().diagnostics();
    }

    @Test
    void aLanguageThatTheBuildAsksForMustBeWhole() {
        assertThat(wanted(KNEAD.formatted(digest(), LINE))).as("begun").extracting(Diagnostic::severity).containsOnly(Severity.WARNING);
        List<Diagnostic> asked = wanted(KNEAD.formatted(digest(), LINE), "de");
        assertThat(asked).isNotEmpty().allMatch(d -> d.name().equals("words-missing") && d.severity() == Severity.ERROR);
        assertThat(asked).extracting(d -> d.primary().text()).contains("de has no words for title, purpose, instruct of operation rest");
        assertThat(wanted("", "fr")).as("not begun at all").isNotEmpty()
                .allMatch(d -> d.name().equals("words-missing") && d.severity() == Severity.ERROR)
                .allMatch(d -> d.primary().text().startsWith("fr has no words"));
        assertThat(wanted("", "en")).as("the texts' own").isEmpty();
    }

    /** What is out of date is told once, not a second time as missing. */
    @Test
    void staleWordsInALanguageThatMustBeWholeAreAnErrorToldOnce() {
        List<Diagnostic> found = wanted(KNEAD.formatted("0000", LINE), "de").stream()
                .filter(d -> d.primary().text().contains("operation knead") || d.primary().span().text().contains("0000")).toList();
        assertThat(found).extracting(Diagnostic::name, Diagnostic::severity).containsExactly(tuple("words-stale", Severity.ERROR));
    }

    /** Texts that are shipped or come from a library have languages that nobody here reads. */
    @Test
    void nothingIsSaidOfALanguageThatTheWorksDoesNotWant() {
        List<SourceFile> files = new ArrayList<>(bakery("", "\u0000", "").files());
        files.add(new SourceFile("rolls-1.0/ricasso/words.ricasso", KNEAD.formatted(digest(), LINE), true));
        Texts texts = new Texts(files, bakery("", "\u0000", "").data());
        assertThat(Ricasso.check(texts, CALCULATIONS, Set.of()).checked().diagnostics()).isEmpty();
        assertThat(Ricasso.check(texts, CALCULATIONS, Set.of()).words().languages()).containsExactly("en");
    }
}
