package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ricasso.dsl.trial.TrialHouse.PARING;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.solve.LockEntry;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.Outcome;
import org.ricasso.dsl.walk.Solved;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Quantity;

/** Solving for the temper of the paring knife, by hand and by the tool, and what is said where that cannot be. */
class SolveTest {

    static List<SolveCases.Case> cases() {
        return SolveCases.all();
    }

    /**
     * Belt-hardened at 1065 ± 8 °C and not chilled, 1.4116 is 57.3 + 0.5 · 17/20 = 57.725 HRC at 1057 °C, 57.8 at the row of
     * 1060 and 57.8 - 0.3 · 13/20 = 57.605 at 1073 °C: 57.605 to 57.8, in the middle 57.7025 HRC. Between the rows 200 °C: 2.1 and
     * 220 °C: 2.5 HRC the temper takes 2.1 + 0.02 · (T - 200). The middle of 54..57 HRC, 55.5, is left at
     * T = 200 + (57.7025 - 55.5 - 2.1)/0.02 = 205.1 °C; the furnace is set in steps of 5 K: 205 °C. Rows of the shipped tables
     * as-quenched and tempering-loss, points 85, 86, 87, 151 and 152 (memory).
     */
    @Test
    void theTemperOfTheHouseAsByHand() {
        double least = 57.8 - (57.8 - 57.5) * (1073 - 1060) / (1080 - 1060);
        double middle = (least + 57.8) / 2;
        double root = 200 + (middle - 55.5 - 2.1) / ((2.5 - 2.1) / (220 - 200));
        assertThat(root).isCloseTo(205.1, within(0.05));
        LockEntry entry = only(TrialHouse.whole().solve());
        assertThat(entry.value()).isEqualTo(5 * Math.round(root / 5) + " ± 5 °C");
        assertThat(entry.leaves()).isEqualTo("55.3..55.7 HRC");
    }

    /** Without a step of the furnace the digits of the tolerance say how fine: the root itself, to a degree and to a tenth. */
    @ParameterizedTest
    @CsvSource({"5 °C, 205 ± 5 °C", "5.0 °C, 205.1 ± 5 °C", "5 K, 205 ± 5 °C"})
    void asFineAsTheToleranceIsWritten(String tolerance, String found) {
        TrialHouse house = SolveCases.tempered(TrialHouse.whole().with(TrialHouse.WORKS,
                text -> text.replaceFirst("temperature-step: 5 K", "")),
                "solve(hardness, within: " + tolerance + ")");
        assertThat(only(house.solve()).value()).isEqualTo(found);
    }

    /**
     * 102Cr6 (1.2067) hardened in oil from 850 °C has 62 HRC after 200 °C: technical card 102Cr6 after EN ISO 4957:2002 (published;
     * rows 54 to 62 of tempering-points.csv). Asked for 61..63 HRC, that temperature is found, and for the card's other points
     * inside the steel's window 180..220 °C what lies straight between them.
     */
    @ParameterizedTest
    @CsvSource({"61..63 HRC, 200", "61.4..63.4 HRC, 180", "60.5..62.5 HRC, 210", "60..62 HRC, 220"})
    void publishedPointsOfAToolSteelAreFound(String asked, int temperature) {
        TrialHouse house = TrialHouse.whole().with(PARING, "steel:        1.4116", "steel: 1.2067")
                .with(PARING, "hardness:     54..57 HRC", "hardness: " + asked)
                .with(PARING, "temperature: 1065 ± 8 °C", "temperature: 835 ± 8 °C");
        assertThat(only(house.solve()).value()).isEqualTo(temperature + " ± 5 °C");
    }

    /** What was solved, walked forward, comes out as was asked, and a step to either side is further from the middle. */
    @ParameterizedTest
    @CsvSource({"54..57 HRC", "54.5..57 HRC", "55..57 HRC", "54..56.5 HRC", "54.2..56 HRC", "55.6 ± 0.9 HRC"})
    void walkedForwardItIsWhatWasAsked(String asked) {
        TrialHouse house = TrialHouse.whole().with(PARING, "hardness:     54..57 HRC", "hardness: " + asked);
        String value = only(house.solve()).value();
        int found = Integer.parseInt(value.substring(0, value.indexOf(' ')));
        double here = off(house, found);
        Outcome outcome = hardness(house, found);
        assertThat(outcome.made()).isEqualTo(Outcome.Made.AIMED);
        assertThat(off(house, found - 5)).isGreaterThan(here);
        assertThat(found + 5 > 220 ? here + 1 : off(house, found + 5)).isGreaterThan(here);
    }

    private static Outcome hardness(TrialHouse house, int temperature) {
        CheckedProduct product = SolveCases.tempered(house, temperature + " ± 5 °C").check().products().stream()
                .filter(p -> p.product().name().equals("paring-90")).findFirst().orElseThrow();
        return product.outcomes().stream().filter(o -> o.entry().equals("blade.hardness")).findFirst().orElseThrow();
    }

    /** How far the aim's middle is from the limit's. */
    private static double off(TrialHouse house, int temperature) {
        Outcome outcome = hardness(house, temperature);
        Interval asked = quantity(outcome.asked()).aim();
        return Math.abs(quantity(outcome.found()).aim().middle() - asked.middle());
    }

    private static Quantity quantity(Value value) {
        return ((Value.Num) value).quantity();
    }

    private static LockEntry only(Solved solved) {
        assertThat(solved.findings()).isEmpty();
        assertThat(solved.text().lines().filter(l -> !l.startsWith("//"))).hasSize(1);
        return org.ricasso.dsl.solve.Lock.read(new org.ricasso.dsl.source.SourceFile("lock", solved.text(), false),
                new org.ricasso.dsl.diagnostics.Findings()).lines().values().iterator().next().entry();
    }

    @Test
    void solvedTwiceTheLockIsTheSame() {
        Solved once = TrialHouse.whole().withLock(null).solve();
        Solved twice = TrialHouse.whole().withLock(once.text()).solve();
        assertThat(once.text()).isEqualTo(TrialHouse.whole().lockText()).endsWith("\n").doesNotContain("\r");
        assertThat(twice.text()).isEqualTo(once.text());
        assertThat(twice.changes()).isEmpty();
        assertThat(twice.same()).isEqualTo(1);
        assertThat(TrialHouse.whole().withLock(once.text().replace("\n", "\r\n")).diagnostics()).isEmpty();
    }

    @Test
    void whatCannotBeSolvedKeepsItsLine() {
        String lock = TrialHouse.whole().lockText();
        Solved outOfReach = TrialHouse.whole().with(PARING, "hardness:     54..57 HRC", "hardness: 57..58 HRC").solve();
        assertThat(outOfReach.text()).isEqualTo(lock);
        assertThat(outOfReach.open()).hasSize(1);
        assertThat(outOfReach.findings()).extracting(Diagnostic::name).containsExactly("solve-none");
        // a knife that cannot be read, and one that is gone while another text cannot be read
        assertThat(TrialHouse.whole().with(PARING, "hardness:     54..57 HRC", "hardness: 54..57 mm").solve().text()).isEqualTo(lock);
        assertThat(TrialHouse.whole().with(PARING, "knife paring-90", "knife paring-90 like nothing").solve().text()).isEqualTo(lock);
    }

    @Test
    void whatIsNotAskedForAnyMoreIsLeftOut() {
        Solved solved = SolveCases.tempered(TrialHouse.whole(), "180 ± 5 °C").solve();
        assertThat(solved.text()).isEmpty();
        assertThat(solved.changes()).extracting(Solved.Change::is).containsExactly((LockEntry) null);
    }

    @Test
    void aLineThatCannotBeReadIsLeftOutOnlyIfAllIsSolved() {
        String damaged = TrialHouse.whole().lockText().replace(" = ", " ≈ ");
        Solved solved = TrialHouse.whole().withLock(damaged).solve();
        assertThat(solved.isWritable()).isTrue();
        assertThat(solved.lost()).hasSize(1);
        assertThat(solved.text()).isEqualTo(TrialHouse.whole().lockText());
        assertThat(TrialHouse.whole().withLock(damaged).with(PARING, "hardness:     54..57 HRC", "hardness: 57..58 HRC").solve()
                .isWritable()).isFalse();
    }

    /** A family whose base solves: every size has a line of its own. */
    @Test
    void everySizeHasItsOwnSolution() {
        TrialHouse house = TrialHouse.whole().with(PARING, text -> text + "family small like paring-90 {\n    sizes:\n"
                + "        | knife     | number    | blade.hardness |\n"
                + "        | paring-80 | \"AB-1108\" | 54..57 HRC     |\n"
                + "        | paring-70 | \"AB-1107\" | 55..57 HRC     |\n}\n");
        assertThat(house.solve().text().lines().filter(l -> !l.startsWith("//")).map(l -> l.substring(0, l.indexOf(" for "))))
                .containsExactly("paring-70 / 110 temper / temperature = 185 ± 5 °C", "paring-80 / 110 temper / temperature = 205 ± 5 °C",
                        "paring-90 / 110 temper / temperature = 205 ± 5 °C");
    }

    /** Solved in a {@code change} of a route that is taken over. */
    @Test
    void aChangeOfARouteTakenOverIsSolved() {
        TrialHouse house = SolveCases.tempered(TrialHouse.whole().fitsAll(), "190 ± 5 °C").with(PARING, text -> text
                + "knife paring-80 \"Smaller\" like paring-90 {\n    number: \"AB-1108\"\n"
                + "    route { change 110 temper { temperature: solve(hardness, within: 5 °C) } }\n}\n");
        assertThat(house.solve().text()).contains("\nparing-80 / 110 temper / temperature = 205 ± 5 °C for ").doesNotContain("paring-90");
    }

    @Test
    void theSolvedValueStandsForTheCall() {
        CheckedProduct product = TrialHouse.whole().check().products().stream()
                .filter(p -> p.product().name().equals("paring-90")).findFirst().orElseThrow();
        assertThat(product.steps().stream().filter(s -> s.number() == 110).findFirst().orElseThrow().instruct().toString())
                .contains("Set 205 ± 5 °C.");
        assertThat(TrialHouse.whole().ricasso().calculate("after.blade.tempered-at", "paring-90").value()).isEqualTo("205 ± 5 °C");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isPrintedAsItWasLookedAt(SolveCases.Case one) {
        TrialHouse house = one.make().apply(TrialHouse.whole());
        StringBuilder out = new StringBuilder(one.change()).append("\n\n");
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
        List<Diagnostic> found = house.diagnostics();
        assertThat(found).isNotEmpty();
        found.forEach(d -> out.append(printer.print(d)).append('\n'));
        Golden.check("solve/" + one.id() + ".txt", out.toString());
    }

    /** What is offered instead is right as it stands. */
    @ParameterizedTest
    @MethodSource("cases")
    void isMendedByEachRemedyAsItStands(SolveCases.Case one) {
        TrialHouse house = one.make().apply(TrialHouse.whole());
        for (Diagnostic diagnostic : house.diagnostics()) {
            for (Remedy remedy : diagnostic.remedies()) {
                if (!remedy.edits().isEmpty() && !diagnostic.name().equals("solve-misplaced")) {
                    TrialHouse mended = house.with(remedy.edits());
                    assertThat(mended.withLock(mended.solve().text()).errors()).as(remedy.text()).isEmpty();
                }
            }
        }
    }
}
