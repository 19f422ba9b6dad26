package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ricasso.dsl.trial.TrialHouse.COOKS;
import static org.ricasso.dsl.trial.TrialHouse.ROUTE;
import static org.ricasso.dsl.trial.TrialHouse.WORKS;

import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.Judgement;
import org.ricasso.dsl.walk.Outcome;

/**
 * Where verdicts flip: one number of the cook's knife or its works is moved until the verdict turns, by bisection, and the
 * place is compared with a calculation by hand. The numbers of the house are invented; figures of steel are those of the
 * shipped tables, whose rows name their sources (memory).
 */
class HandCalculationsTest {
    private static final int HALVINGS = 14;

    /**
     * Hardness after the temper. Hardened at 1050 ± 8 °C and chilled, between the rows 1040 °C: 58.3 and 1060 °C: 59.0 HRC,
     * at the cold end of 1042 °C: 58.3 + 0.7 · 2/20 = 58.37 HRC. Lost between the rows 200 °C: 2.5 and 250 °C: 3.5 HRC at T:
     * 2.5 + (T - 200)/50. 55 HRC are left up to T = 200 + 50 · (58.37 - 55 - 2.5) = 243.5 °C, the hot end of T ± 5 °C.
     */
    @Test
    void temperatureAtWhichTheTemperedBladeIsTooSoft() {
        double coldEnd = 58.3 + (59.0 - 58.3) * (1042 - 1040) / (1060 - 1040);
        double hotEnd = 200 + (coldEnd - 55 - 2.5) * (250 - 200) / (3.5 - 2.5);
        double flip = flip(180, 245, t -> Mistakes.tempered(TrialHouse.single(), number(t) + " ± 5 °C"),
                made("blade.hardness"));
        assertThat(flip).isCloseTo(hotEnd - 5, within(0.01)).isCloseTo(238.5, within(0.01));
    }

    /**
     * Steel left behind a scallop, at worst. The flank is ground to 2.24 ± 0.04 mm at 100 mm and 1.24 ± 0.04 mm at 190 mm,
     * so at least 2.20 - 1.00 · 30/90 = 1.8667 mm at 130 mm; its edge is at least 0.30 mm, the blade at most 45.6 mm high:
     * 25 mm above the edge 0.30 + (1.8667 - 0.30) · 25/45.6 = 1.1589 mm. Two hollows may take (1.1589 - 0.5)/2 = 0.3295 mm each.
     */
    @Test
    void depthAtWhichAScallopLeavesTooLittle() {
        double spine = (2.24 - 0.04) - (2.24 - 1.24) * (130 - 100) / (190 - 100);
        double flank = 0.30 + (spine - 0.30) * 25 / (45.3 + 0.3);
        double flip = flip(0.2, 0.35, d -> Mistakes.scalloped(TrialHouse.single(), number(d) + " mm"),
                rule("scallop-leaves-steel", 265));
        assertThat(flip).isCloseTo((flank - 0.5) / 2, within(1e-4)).isCloseTo(0.3295, within(1e-4));
    }

    /**
     * Grip of the rivets, at worst: twice a scale of T + 0.05 mm less the shallowest counterbore of 2.20 mm, and the thickest
     * tang of 2.83 mm. The pair takes 13.8 mm: T = (13.8 - 2.83)/2 + 2.20 - 0.05 = 7.635 mm.
     */
    @Test
    void thicknessOfAScaleAtWhichTheRivetsDoNotReach() {
        double flip = flip(7.60, 7.80, t -> TrialHouse.single().with(COOKS, "thickness-to:   7.60 ± 0.05 mm",
                "thickness-to: " + number(t) + " ± 0.05 mm"), rule("rivets-reach", 320));
        assertThat(flip).isCloseTo((13.8 - (2.80 + 0.03)) / 2 + (2.30 - 0.10) - 0.05, within(1e-4));
    }

    /**
     * Soft skin. The coil leaves up to 0.15 mm and the anneal 0.03 mm more, blasting takes at least 0.01 mm off it: 0.17 mm.
     * A forging of S - 0.15 mm loses up to 2 · 0.03 mm in blasting and is milled to at most 3.28 mm, so milling takes at least
     * (S - 0.21 - 3.28)/2 off a face; from at least 3.12 mm to at most 2.88 mm the flank grinder takes 0.12 mm.
     * Nothing is left from S = 3.49 + 2 · (0.17 - 0.12) = 3.59 mm on.
     */
    @Test
    void thicknessOfAForgingAtWhichSoftSkinStays() {
        double skin = 0.15 + 0.03 - 0.01;
        double ground = ((3.20 - 0.08) - (2.84 + 0.04)) / 2;
        double flip = flip(3.60, 3.50, s -> TrialHouse.single().with(COOKS, "3.60 ± 0.15 mm", number(s) + " ± 0.15 mm"),
                rule("soft-skin-comes-off", 230));
        assertThat(flip).isCloseTo(0.15 + 2 * 0.03 + (3.20 + 0.08) + 2 * (skin - ground), within(1e-4))
                .isCloseTo(3.59, within(1e-4));
    }

    /** The furnace goes up to 1250 °C; T ± 8 °C is inside up to T = 1242 °C. */
    @Test
    void temperatureThatTheFurnaceDoesNotReach() {
        double flip = flip(1050, 1300, t -> hardened(number(t) + " ± 8 °C"), rule("temperature-of-the-centre", 150));
        assertThat(flip).isCloseTo(1250 - 8, within(0.01));
    }

    /** The load of the furnace is within ± 6 K of its setting. */
    @Test
    void toleranceThatTheFurnaceDoesNotHold() {
        double flip = flip(8, 2, t -> hardened("1050 ± " + number(t) + " °C"), rule("temperature-can-be-held", 150));
        assertThat(flip).isCloseTo(6, within(0.001));
    }

    /** Tempered at 175 °C at least; whatever warms the blade afterwards stays 20 K below: 155 °C. */
    @Test
    void heatOfGrindingAtWhichTheTemperIsLost() {
        double flip = flip(90, 200, t -> TrialHouse.single().with(WORKS, "thickest: 6 mm; bow: 0..0.6 mm; piece-heat: 90 °C",
                "thickest: 6 mm; bow: 0..0.6 mm; piece-heat: " + number(t) + " °C"), rule("keep-the-temper", 230));
        assertThat(flip).isCloseTo((180 - 5) - 20, within(0.01));
    }

    /** Asked for 15 ± 1 °, sharpened to A ± 0.5 °: A = 16 - 0.5 = 15.5 °. */
    @Test
    void angleAtWhichTheEdgeIsTooWide() {
        double flip = flip(15, 17, a -> TrialHouse.single().with(COOKS, "angle-to: 15.0 ± 0.5 °",
                "angle-to: " + number(a) + " ± 0.5 °"), made("blade.edge.each-side"));
        assertThat(flip).isCloseTo(15 + 1 - 0.5, within(1e-4));
    }

    /** A need: the edge goes into the furnace at least 0.8 mm thick, milled to E ± 0.10 mm: E = 0.90 mm. */
    @Test
    void thicknessAtWhichTheEdgeIsTooThinToHarden() {
        double flip = flip(1.0, 0.7, e -> TrialHouse.single().with(ROUTE, "edge-to:    1.00 ± 0.10 mm",
                "edge-to:    " + number(e) + " ± 0.10 mm"), need("edge-thickness", "harden"));
        assertThat(flip).isCloseTo(0.8 + 0.10, within(1e-4));
    }

    /** A need: a blade bowed by more than 0.4 mm is not ground. */
    @Test
    void bowAtWhichTheFlanksAreNotGround() {
        double flip = flip(0.3, 0.45, b -> TrialHouse.single().with(ROUTE, "bow-to: 0..0.40 mm", "bow-to: 0.." + number(b) + " mm"),
                need("straightness", "taper-grind"));
        assertThat(flip).isCloseTo(0.4, within(1e-4));
    }

    /** The wheel is marked 40 m/s, set to V ± 2 m/s: V = 38 m/s. */
    @Test
    void speedAtWhichTheWheelIsOverItsMark() {
        double flip = flip(32, 45, v -> TrialHouse.single().with(ROUTE, "            wheel:    F60\n",
                "            wheel:    F60\n            speed:    " + number(v) + " ± 2 m/s\n"),
                rule("wheel-marked-fast-enough", 230));
        assertThat(flip).isCloseTo(40 - 2, within(0.001));
    }

    /** The lowest blade is 44.2 mm high, the mark's middle at most B + 0.5 mm below the spine and 8 mm clear: B = 35.7 mm. */
    @Test
    void placeAtWhichTheMarkIsTooNearTheEdge() {
        double flip = flip(12, 44, b -> TrialHouse.single().with(COOKS, "below-spine: 12 ± 0.5 mm",
                "below-spine: " + number(b) + " ± 0.5 mm"), rule("mark-clear-of-edge", 0));
        assertThat(flip).isCloseTo(45 - 0.8 - 8 - 0.5, within(0.001));
    }

    /** A handle of POM stands a bath of 65 °C (table handle-limits, from memory); T ± 3 °C: T = 62 °C. */
    @Test
    void temperatureAtWhichTheBathSpoilsTheHandle() {
        double flip = flip(50, 80, t -> TrialHouse.single().with(ROUTE, "temperature: 50 ± 3 °C", "temperature: " + number(t) + " ± 3 °C"),
                rule("handle-washed-cool", 355));
        assertThat(flip).isCloseTo(65 - 3, within(0.01));
    }

    private static TrialHouse hardened(String temperature) {
        return TrialHouse.single().with(ROUTE, "1050 ± 8 °C", temperature);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }

    /** The number between two at which a verdict turns. */
    private static double flip(double good, double bad, DoubleFunction<TrialHouse> house, Predicate<CheckedHouse> holds) {
        double holding = good;
        double failing = bad;
        assertThat(holds.test(house.apply(holding).check())).as("holds at %s", holding).isTrue();
        assertThat(holds.test(house.apply(failing).check())).as("fails at %s", failing).isFalse();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (holding + failing) / 2;
            if (holds.test(house.apply(middle).check())) {
                holding = middle;
            } else {
                failing = middle;
            }
        }
        return (holding + failing) / 2;
    }

    private static CheckedProduct cooks(CheckedHouse house) {
        return house.products().stream().filter(p -> p.product().name().equals("cooks-200")).findFirst().orElseThrow();
    }

    /** Whether a rule holds at a step, 0 for the knife; that it is judged is part of the test. */
    private static Predicate<CheckedHouse> rule(String name, int step) {
        return house -> {
            Judgement.Verdict verdict = cooks(house).judgements().stream()
                    .filter(j -> j.rule().equals(name) && j.step() == step).map(Judgement::verdict).findFirst().orElseThrow();
            assertThat(verdict).isNotEqualTo(Judgement.Verdict.NOT_JUDGED);
            return verdict == Judgement.Verdict.HOLDS;
        };
    }

    /** Whether the route makes what an entry of the spec asks. */
    private static Predicate<CheckedHouse> made(String entry) {
        return house -> {
            Outcome.Made made = cooks(house).outcomes().stream().filter(o -> o.entry().equals(entry)).map(Outcome::made)
                    .findFirst().orElseThrow();
            return made == Outcome.Made.PROVED || made == Outcome.Made.AIMED;
        };
    }

    /** Whether a need of an operation is met wherever the route asks it. */
    private static Predicate<CheckedHouse> need(String property, String operation) {
        return house -> house.diagnostics().stream().noneMatch(d -> d.name().equals("need-unmet")
                && d.primary().text().matches(property + " (is|can be) .*, " + operation + " needs .*"));
    }
}
