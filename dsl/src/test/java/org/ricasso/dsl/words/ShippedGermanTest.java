package org.ricasso.dsl.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.syntax.SyntaxTree;
import org.ricasso.dsl.vocabulary.VocabularyLoader;

/** All that is shipped has German words, and none of them is for another text. */
class ShippedGermanTest {
    private static final String GERMAN = "de";
    private static final Texts SHIPPED = Ricasso.withShipped(new Texts(List.of(), Map.of()));
    private static final Findings FINDINGS = new Findings();
    private static final WordsLoader.Joined JOINED = joined();

    private static WordsLoader.Joined joined() {
        List<SyntaxTree> trees = SHIPPED.inOrder().stream().map(text -> Parser.parse(text).tree()).toList();
        VocabularyLoader.Loaded loaded = VocabularyLoader.load(trees, SHIPPED.data(),
                Ricasso.calculations(ShippedGermanTest.class.getClassLoader()), new Findings());
        return WordsLoader.join(trees, loaded, FINDINGS, java.util.Set.of(), true);
    }

    private static String german(Printed declaration, Printed.Line line) {
        Phrase phrase = JOINED.words().in(GERMAN).phrase(declaration.what(), declaration.name(), line.written());
        return phrase == null ? null : phrase.written();
    }

    @Test
    void isWhole() {
        assertThat(JOINED.printed()).as("declarations with texts").hasSizeGreaterThan(250);
        assertThat(Ricasso.wordsToWrite(SHIPPED, Ricasso.calculations(getClass().getClassLoader()), GERMAN)).isEmpty();
        assertThat(FINDINGS.all()).as("stale, missing, misplaced, other holes").isEmpty();
    }

    /** A sentence stays a sentence, a clause a clause: pages put them where they put the text itself. */
    @Test
    void endsAsTheTextDoes() {
        List<String> others = new ArrayList<>();
        int compared = 0;
        for (Printed declaration : JOINED.printed().values()) {
            for (Printed.Line line : declaration.lines()) {
                String german = german(declaration, line);
                if (german != null && !declaration.what().equals(PrintedTexts.PAGE)) {
                    compared++;
                    if (end(line.written()) != end(german)) {
                        others.add(declaration.key() + " " + line.path() + ": " + german);
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(600);
        assertThat(others).isEmpty();
    }

    private static char end(String text) {
        char last = text.charAt(text.length() - 1);
        return ".?!:;,".indexOf(last) < 0 ? ' ' : last;
    }

    /** Where a text needs words, its German is no copy of it; one metal is spelt the same. */
    @Test
    void isNoCopy() {
        List<String> copies = new ArrayList<>();
        for (Printed declaration : JOINED.printed().values()) {
            declaration.lines().stream().filter(line -> line.needed() && !declaration.what().equals(PrintedTexts.PAGE)
                    && line.written().equals(german(declaration, line)))
                    .forEach(line -> copies.add(declaration.key() + " " + line.path()));
        }
        assertThat(copies).containsExactly("material aluminium title");
    }

    /**
     * Terms of heat treatment as EN ISO 4885 has them in its German edition (from memory), each in a title or a state.
     */
    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "operation, temper, Anlassen",
        "operation, soft-anneal, Weichglühen",
        "operation, harden, Härten",
        "operation, quench-gas, Abschrecken",
        "operation, sub-zero, Tiefkühlen",
        "rule, soft-skin-comes-off, entkohlt",
        "rule, harden-in-the-window, Härten",
    })
    void saysTheTermOfTheStandard(String what, String name, String term) {
        Printed declaration = JOINED.printed().get(Printed.key(what, name));
        assertThat(german(declaration, declaration.at(Printed.TITLE).get(0))).containsIgnoringCase(term);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"tempered, angelassen", "as-quenched, abgeschreckt", "austenitised, austenitisiert", "annealed, weichgeglüht"})
    void saysTheStateOfTheStandard(String word, String term) {
        assertThat(JOINED.words().in(GERMAN).label("workpiece", "knife", "blade.structure." + word, word)).isEqualTo(term);
    }
}
