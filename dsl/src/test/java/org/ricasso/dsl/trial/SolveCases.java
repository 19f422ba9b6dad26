package org.ricasso.dsl.trial;

import static org.ricasso.dsl.trial.TrialHouse.PARING;
import static org.ricasso.dsl.trial.TrialHouse.WORKS;

import java.util.List;
import java.util.function.UnaryOperator;

/** Whatever can be said against solving for a setting and against its lock, on the paring knife. */
final class SolveCases {
    static final String SOLVE = "solve(hardness, within: 5 °C)";
    private static final String LINE = "paring-90 / 110 temper / temperature = 205 ± 5 °C for hardness 54..57 HRC, leaves";

    private SolveCases() {}

    /**
     * @param id the golden file
     * @param change the good text and the bad
     * @param make the house with it
     */
    record Case(String id, String change, UnaryOperator<TrialHouse> make) {
        @Override
        public String toString() {
            return id;
        }
    }

    static TrialHouse tempered(TrialHouse house, String value) {
        return house.with(PARING, "110 temper at temper-3 { temperature: " + SOLVE + ";", "110 temper at temper-3 { temperature: "
                + value + ";");
    }

    private static Case temper(String id, String value) {
        return new Case(id, "temperature: " + value, h -> tempered(h, value));
    }

    private static Case with(String id, String old, String other) {
        return new Case(id, other, h -> h.with(PARING, old, other));
    }

    private static Case lock(String id, String change, UnaryOperator<String> lock) {
        return new Case(id, change, h -> h.withLock(lock.apply(h.lockText())));
    }

    static List<Case> all() {
        return List.of(
                temper("in-a-sum", SOLVE + " + 5 K"),
                temper("misspelt", "sovle(hardness, within: 5 °C)"),
                temper("no-tolerance", "solve(hardness)"),
                temper("no-property", "solve(within: 5 °C)"),
                temper("two-properties", "solve(hardness, length, within: 5 °C)"),
                temper("misspelt-within", "solve(hardness, wihtin: 5 °C)"),
                temper("misspelt-property", "solve(hardnes, within: 5 °C)"),
                temper("of-another-part", "solve(thickness, within: 5 °C)"),
                temper("a-number-to-solve", "solve(56 HRC, within: 5 °C)"),
                temper("a-word-to-solve", "solve(structure, within: 5 °C)"),
                temper("tolerance-without-unit", "solve(hardness, within: 5)"),
                temper("tolerance-of-length", "solve(hardness, within: 5 mm)"),
                temper("tolerance-nought", "solve(hardness, within: 0 K)"),
                temper("tolerance-a-range", "solve(hardness, within: 4..6 K)"),
                temper("tolerance-too-wide", "solve(hardness, within: 400 °C)"),
                temper("not-asked", "solve(quench-hardness, within: 5 °C)"),
                with("a-thing-solved", "passes:   2", "passes: solve(edge-angle, within: 1)"),
                with("in-the-spec", "hardness:     54..57 HRC", "hardness: solve(hardness, within: 1 HRC)"),
                new Case("in-a-row-of-sizes", "family small like paring-90 { sizes: … route.110.temperature", h -> h.with(PARING,
                        text -> text + "family small like paring-90 {\n    sizes:\n"
                                + "        | knife     | number    | route.110.temperature         |\n"
                                + "        | paring-80 | \"AB-1108\" | solve(hardness, within: 5 °C) |\n}\n")),
                new Case("twice", "temperature: " + SOLVE + ", and hold-through: solve", h -> h.with(PARING,
                        "80 harden-on-belt at belt-1 {\n            temperature: 1065 ± 8 °C",
                        "80 harden-on-belt at belt-1 {\n            temperature: solve(hardness, within: 8 °C)")),
                new Case("open-limit", "off: solve(roughness, within: 0.005 mm)", h -> tempered(h, "190 ± 5 °C").with(PARING,
                        "off:   0.012 ± 0.005 mm", "off: solve(roughness, within: 0.005 mm)")),
                new Case("turns-back", "80 harden-on-belt { temperature: solve(hardness, within: 8 °C) }", h -> tempered(h, "190 ± 5 °C")
                        .with(PARING, "temperature: 1065 ± 8 °C", "temperature: solve(hardness, within: 8 °C)")),
                new Case("no-effect", "hold: solve(hardness, within: 10 min)", h -> h.with(PARING,
                        SOLVE + "; hold: 120 (+20/0) min", "180 ± 5 °C; hold: solve(hardness, within: 10 min)")),
                with("out-of-reach", "hardness:     54..57 HRC", "hardness: 57..58 HRC"),
                with("aim-too-wide", "hardness:     54..57 HRC", "hardness: 55.45..55.55 HRC"),
                new Case("cannot-be-told", "steel without a curve", h -> h.with(PARING, "steel:        1.4116", "steel: 1.4110")),
                new Case("missing", "no lock", h -> h.withLock(null)),
                lock("value-differs", "185 for 205", text -> text.replace("205 ± 5", "185 ± 5")),
                new Case("limit-has-changed", "hardness: 55..57 HRC", h -> h.with(PARING, "hardness:     54..57 HRC",
                        "hardness:     55..57 HRC")),
                new Case("limit-has-changed-a-little", "hardness: 54.1..57.1 HRC", h -> h.with(PARING, "hardness:     54..57 HRC",
                        "hardness:     54.1..57.1 HRC")),
                new Case("operation-has-changed", "temper-again in the lock", h -> h.withLock(h.lockText().replace("110 temper ",
                        "110 temper-again "))),
                new Case("solved-from-other", "1064 for 1065 ± 8 °C in step 80", h -> h.with(PARING, "temperature: 1065 ± 8 °C",
                        "temperature: 1064 ± 8 °C")),
                lock("stale", "a line of a knife that is gone", text -> text + text.lines().filter(l -> l.startsWith("paring"))
                        .findFirst().orElseThrow().replace("paring-90", "peeling-70") + "\n"),
                lock("damaged", "a conflict in the lock", text -> "<<<<<<< ours\n" + text + "=======\n" + LINE + " \n"),
                lock("line-twice", "the line twice", text -> text + text.lines().filter(l -> l.startsWith("paring")).findFirst()
                        .orElseThrow() + "\n"),
                new Case("no-range", "the centre says no temperature, the operation no range", h -> h.with(WORKS,
                        "temperature:      120..650 °C\n", "").with("ricasso/operations/temper.ricasso",
                                "temperature: temperature within 80..800 °C", "temperature: temperature")));
    }
}
