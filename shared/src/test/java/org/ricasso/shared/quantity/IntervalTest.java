package org.ricasso.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import java.util.function.BinaryOperator;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

class IntervalTest {
    private static final double INFINITY = Double.POSITIVE_INFINITY;
    private static final Interval AT_LEAST_ONE = new Interval(1, INFINITY);

    @Test
    void endsMustStandTheRightWayRoundAndBeNumbers() {
        assertThatThrownBy(() -> new Interval(2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Interval(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Interval.between(2, 1)).isEqualTo(new Interval(1, 2));
        assertThat(new Interval(-0.0, 0.0)).isEqualTo(new Interval(0.0, -0.0)).hasToString("Interval[least=0.0, most=0.0]");
    }

    /** Every point of two intervals, operated on, lies in the operation's interval; and each end is reached. */
    @Test
    void arithmeticHoldsEveryPointAndIsTight() {
        Random random = new Random(3);
        for (int i = 0; i < 2000; i++) {
            Interval a = random(random);
            Interval b = random(random);
            holds(random, a, b, Interval::plus, Double::sum);
            holds(random, a, b, Interval::minus, (x, y) -> x - y);
            holds(random, a, b, Interval::times, (x, y) -> x * y);
            holds(random, a, b, Interval::min, Math::min);
            holds(random, a, b, Interval::max, Math::max);
            if (b.least() > 0 || b.most() < 0) {
                holds(random, a, b, Interval::dividedBy, (x, y) -> x / y);
            }
            holds(random, a, b, (x, y) -> x.absolute(), (x, y) -> Math.abs(x));
            holds(random, a, b, (x, y) -> x.negated(), (x, y) -> -x);
        }
    }

    private static void holds(Random random, Interval a, Interval b, BinaryOperator<Interval> bands,
            DoubleBinaryOperator numbers) {
        Interval band = bands.apply(a, b);
        double least = INFINITY;
        double most = -INFINITY;
        for (int i = 0; i < 20; i++) {
            double x = i < 4 ? end(a, i % 2) : a.least() + random.nextDouble() * a.width();
            double y = i < 4 ? end(b, i / 2) : b.least() + random.nextDouble() * b.width();
            double value = numbers.applyAsDouble(x, y);
            assertThat(Interval.of(value).isInside(band)).isTrue();
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        boolean absoluteHasZero = a.least() < 0 && a.most() > 0 && band.least() == 0;
        assertThat(absoluteHasZero || Numbers.compare(least, band.least()) == 0).isTrue();
        assertThat(Numbers.compare(most, band.most())).isZero();
    }

    private static double end(Interval band, int which) {
        return which == 0 ? band.least() : band.most();
    }

    private static Interval random(Random random) {
        return Interval.between(random.nextInt(9) - 4, random.nextInt(9) - 4 + random.nextDouble());
    }

    @Test
    void infiniteEndsStayBands() {
        assertThat(AT_LEAST_ONE.times(new Interval(0, 2))).isEqualTo(new Interval(0, INFINITY));
        assertThat(AT_LEAST_ONE.dividedBy(AT_LEAST_ONE)).isEqualTo(new Interval(0, INFINITY));
        assertThat(AT_LEAST_ONE.negated().dividedBy(AT_LEAST_ONE)).isEqualTo(new Interval(-INFINITY, 0));
        assertThat(Interval.of(1).dividedBy(AT_LEAST_ONE)).isEqualTo(new Interval(0, 1));
        assertThat(Interval.EVERYTHING.minus(Interval.EVERYTHING)).isEqualTo(Interval.EVERYTHING);
        assertThat(AT_LEAST_ONE.isBounded()).isFalse();
        assertThat(Interval.EVERYTHING.middle()).isZero();
        assertThatThrownBy(() -> Interval.of(1).dividedBy(new Interval(-1, 1))).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void insideAndOverlapAreJudgedAtNineDigits() {
        Interval limit = new Interval(0.1, 0.3);
        assertThat(new Interval(0.1, 0.1 + 0.2).isInside(limit)).isTrue();
        assertThat(new Interval(0.1, 0.3001).isInside(limit)).isFalse();
        assertThat(new Interval(0.1 + 0.2, 1).overlaps(limit)).isTrue();
        assertThat(new Interval(0.31, 1).overlaps(limit)).isFalse();
        assertThat(new Interval(2, 2 + 1e-12).isSingle()).isTrue();
    }

    @Test
    void clampingHullAndWidening() {
        Interval unit = new Interval(0, 1);
        assertThat(new Interval(-1, 0.5).clampedTo(unit)).isEqualTo(new Interval(0, 0.5));
        assertThat(new Interval(5, 6).clampedTo(unit)).isEqualTo(Interval.of(1));
        assertThat(new Interval(-6, -5).clampedTo(unit)).isEqualTo(Interval.of(0));
        assertThat(unit.hull(Interval.of(3))).isEqualTo(new Interval(0, 3));
        assertThat(unit.widened(0.5)).isEqualTo(new Interval(-0.5, 1.5));
        assertThat(new Interval(1, 4).middle()).isEqualTo(2.5);
        assertThat(new Interval(1, 4).width()).isEqualTo(3);
    }

    @Test
    void whatSubtractionLeavesOfNothingIsNothing() {
        assertThat(Numbers.compare(0.3e-3 - 0.1e-3 - 0.2e-3, 0)).isZero();
        assertThat(Numbers.compare(1e-9, 0)).isPositive();
        assertThat(Numbers.compare(1.43e-12, 1.44e-12)).isNegative();
        assertThat(Numbers.compare(1, 1 + 2e-9)).isNegative();
        assertThat(Numbers.compare(INFINITY, INFINITY)).isZero();
        assertThat(Numbers.compare(1e300, INFINITY)).isNegative();
    }
}
