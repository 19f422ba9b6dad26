package org.ricasso.shared.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.shared.calculation.Calculation.Argument;
import org.ricasso.shared.calculation.Calculation.Sense;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;

/** What every registered calculation must keep: described, sourced, bounded, and honest about how it moves. */
class RegisteredCalculationsTest {
    private static final int POINTS = 1000;
    private static final int PAIRS = 250;
    /** Arguments that count things: only whole numbers make sense. */
    private static final Set<String> COUNTS = Set.of("sample", "accept");

    static Stream<Named> calculations() {
        return Calculations.all(RegisteredCalculationsTest.class.getClassLoader()).values().stream().map(Named::new);
    }

    /** Shown by its name in test reports. */
    record Named(Calculation calculation) {
        @Override
        public String toString() {
            return calculation.name();
        }
    }

    @Test
    void everyFieldIsThere() {
        assertThat(calculations().map(Named::toString)).hasSizeGreaterThanOrEqualTo(80)
                .contains("flank-thickness", "thickness-at", "bevel-height", "bevel-width", "grip", "rivet-length",
                        "scallop-chord", "rockwell-thickness", "tempering-parameter", "equivalent-temperature",
                        "equivalent-hold", "martensite-start-andrews", "martensite-start-andrews-product",
                        "martensite-start-finkler-schirra", "retained-austenite", "just-hardness", "initial-hardness",
                        "carbon-diffusion", "decarburisation-bound", "pren", "biot-number", "radiative-coefficient",
                        "cooling-time", "thermal-expansion", "bow", "billet-mass", "upset-force", "closed-die-load",
                        "blanking-force", "punch-diameter", "blanking-clearance", "wheel-speed", "removal-rate",
                        "etch-depth", "pulse-energy", "line-energy", "area-energy", "heat-needed", "wheel-jig-distance",
                        "stone-spine-height", "wood-movement", "thermal-mismatch", "acceptance-probability",
                        "detection-probability");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("calculations")
    void isDescribedSourcedAndBounded(Named named) {
        Calculation calculation = named.calculation();
        assertThat(calculation.name()).matches("[a-z][a-z0-9]*(-[a-z0-9]+)*");
        assertThat(calculation.title()).isNotBlank().doesNotContain("\n").doesNotEndWith(".");
        assertThat(calculation.source()).isNotBlank();
        assertThat(calculation.arguments()).isNotEmpty();
        Set<String> names = new HashSet<>();
        for (Argument argument : calculation.arguments()) {
            assertThat(argument.name()).matches("[a-z][a-z0-9]*(-[a-z0-9]+)*");
            assertThat(names.add(argument.name())).as(argument.name()).isTrue();
            assertThat(argument.range().isBounded()).as(argument.name()).isTrue();
            assertThat(argument.least()).as(argument.name()).isLessThan(argument.most());
            assertThat(!argument.measure().point() || argument.measure().dimension().hasPoints()).isTrue();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("calculations")
    void refusesANumberOutsideItsRangeAndNamesTheRange(Named named) {
        Calculation calculation = named.calculation();
        for (int i = 0; i < calculation.arguments().size(); i++) {
            Argument argument = calculation.arguments().get(i);
            for (double far : new double[] {argument.least() - argument.range().width(),
                argument.most() + argument.range().width(), Double.POSITIVE_INFINITY}) {
                Interval[] values = calculation.arguments().stream().map(Argument::range).toArray(Interval[]::new);
                values[i] = Interval.of(far);
                assertThat(calculation.outside(values)).hasValue(i);
                assertThatThrownBy(() -> calculation.over(values)).isInstanceOf(IllegalArgumentException.class)
                        .hasMessageContaining(argument.name()).hasMessageContaining("..");
            }
        }
    }

    /** The band of a random box holds the value at a thousand random points of it, and at all of its corners. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("calculations")
    void theBandHoldsEveryPointOfTheBox(Named named) {
        Calculation calculation = named.calculation();
        Random random = new Random(7);
        int sampled = 0;
        for (int attempt = 0; attempt < 20 * POINTS && sampled < POINTS; attempt++) {
            Interval[] box = box(calculation, random);
            Interval band = overOrNull(calculation, box);
            if (band == null) {
                continue;
            }
            double slack = 1e-9 * (Math.abs(band.least()) + Math.abs(band.most())) + 1e-300;
            assertThat(band.isBounded()).isTrue();
            for (int i = 0; i < 10; i++) {
                double value = calculation.at(point(calculation, box, random));
                if (!(value >= band.least() - slack && value <= band.most() + slack)) {
                    throw new AssertionError(value + " is outside " + band + " for " + List.of(box));
                }
                sampled++;
            }
        }
        assertThat(sampled).as("points inside what the formula holds for").isGreaterThanOrEqualTo(POINTS);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("calculations")
    void theDeclaredSensesAreTrue(Named named) {
        Calculation calculation = named.calculation();
        Random random = new Random(11);
        for (int i = 0; i < calculation.arguments().size(); i++) {
            Argument argument = calculation.arguments().get(i);
            boolean rose = false;
            boolean fell = false;
            int tried = 0;
            for (int attempt = 0; attempt < 20 * POINTS && tried < PAIRS; attempt++) {
                double[] low = point(calculation, ranges(calculation), random);
                double[] high = low.clone();
                double step = random.nextBoolean() ? 1 : 0.1;
                high[i] += step * (value(argument, argument.range(), random) - high[i]);
                high[i] = COUNTS.contains(argument.name()) ? StrictMath.rint(high[i]) : high[i];
                if (low[i] > high[i]) {
                    double[] swap = low;
                    low = high;
                    high = swap;
                }
                double before = atOrNaN(calculation, low);
                double after = atOrNaN(calculation, high);
                if (Double.isNaN(before) || Double.isNaN(after)) {
                    continue;
                }
                tried++;
                double slack = 1e-9 * Math.max(Math.abs(before), Math.abs(after));
                rose |= after > before + slack;
                fell |= after < before - slack;
            }
            assertThat(tried).as(argument.name()).isGreaterThanOrEqualTo(100);
            String what = calculation.name() + " with " + argument.name();
            assertThat(fell).as(what + " falls").isEqualTo(argument.sense() != Sense.RISES);
            assertThat(rose).as(what + " rises").isEqualTo(argument.sense() != Sense.FALLS);
        }
    }

    @Test
    void anArgumentOfNoSenseNeedsItsIntervalForm() {
        Definition definition = Definition.define("twist", "goes up and down")
                .either("x", Measure.NUMBER, 0, 1);
        assertThatThrownBy(() -> definition.gives(Measure.NUMBER, "none", a -> a[0]))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("twist");
    }

    private static Interval[] ranges(Calculation calculation) {
        return calculation.arguments().stream().map(Argument::range).toArray(Interval[]::new);
    }

    /** A random box: narrow as a tolerance, or wide, or a single point. */
    private static Interval[] box(Calculation calculation, Random random) {
        List<Interval> box = new ArrayList<>();
        double width = StrictMath.pow(10, -4 * random.nextDouble());
        for (Argument argument : calculation.arguments()) {
            double a = value(argument, argument.range(), random);
            double b = a + (value(argument, argument.range(), random) - a) * width;
            boolean whole = COUNTS.contains(argument.name());
            box.add(random.nextInt(5) == 0 ? Interval.of(a) : Interval.between(a, whole ? StrictMath.rint(b) : b));
        }
        return box.toArray(Interval[]::new);
    }

    private static double[] point(Calculation calculation, Interval[] box, Random random) {
        double[] point = new double[box.length];
        for (int i = 0; i < box.length; i++) {
            point[i] = value(calculation.arguments().get(i), box[i], random);
        }
        return point;
    }

    /** Spread evenly over the band, or over its magnitudes where they differ much. */
    private static double value(Argument argument, Interval band, Random random) {
        double share = random.nextDouble();
        double value = band.least() > 0 && band.most() > 30 * band.least()
                ? band.least() * StrictMath.pow(band.most() / band.least(), share)
                : band.least() + share * band.width();
        value = COUNTS.contains(argument.name()) ? StrictMath.rint(value) : value;
        return Math.min(Math.max(value, band.least()), band.most());
    }

    private static Interval overOrNull(Calculation calculation, Interval[] box) {
        try {
            return calculation.over(box);
        } catch (IllegalArgumentException refused) {
            assertThat(refused).hasMessageContaining("..");
            return null;
        }
    }

    private static double atOrNaN(Calculation calculation, double[] values) {
        try {
            return calculation.at(values);
        } catch (IllegalArgumentException refused) {
            return Double.NaN;
        }
    }
}
