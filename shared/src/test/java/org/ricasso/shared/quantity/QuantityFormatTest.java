package org.ricasso.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

class QuantityFormatTest {
    private static final Unit MILLIMETRE = Unit.of("mm", Dimension.of(Base.LENGTH), 1e-3, 2);
    private static final Unit CELSIUS = TestUnits.unit("°C");
    private static final Unit HRC = TestUnits.unit("HRC");

    @Test
    void digitsAreKeptAsWritten() {
        Quantity written = new Quantity(Measure.LENGTH, Interval.of(1.5e-3), Interval.of(1.5e-3), 1.5e-3,
                new Shown(MILLIMETRE, 2, "1.50 mm"));
        assertThat(QuantityFormat.show(written)).isEqualTo("1.50 mm");
        assertThat(QuantityFormat.aim(written)).isEqualTo("1.5 mm");
    }

    /** {@code 180 °C ± 5 °C}: the nominal is a point, its tolerance a difference. */
    @Test
    void aTemperatureIsAPointAndItsToleranceADifference() {
        double nominal = CELSIUS.toCoherent(180, true);
        Interval band = Interval.of(nominal).widened(CELSIUS.toCoherent(5, false));
        Quantity setting = Quantity.band(Measure.TEMPERATURE, band, CELSIUS);
        assertThat(band.least()).isEqualTo(448.15);
        assertThat(band.width()).isEqualTo(10);
        assertThat(QuantityFormat.aim(setting)).isEqualTo("175..185 °C");
        Quantity width = Quantity.of(Measure.TEMPERATURE_DIFFERENCE, band.width(), TestUnits.unit("K"));
        assertThat(QuantityFormat.show(width)).isEqualTo("10.0 K");
    }

    @Test
    void aBandIsRoundedOutwardAndASingleValueToNearest() {
        assertThat(hardness(56.24, 57.06)).isEqualTo("56.2..57.1 HRC");
        assertThat(hardness(56.24, 56.24)).isEqualTo("56.2 HRC");
        assertThat(hardness(56.21, 56.29)).isEqualTo("56.2..56.3 HRC");
        assertThat(hardness(56, Double.POSITIVE_INFINITY)).isEqualTo("min 56.0 HRC");
        assertThat(hardness(Double.NEGATIVE_INFINITY, 56.01)).isEqualTo("max 56.1 HRC");
        assertThat(hardness(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)).isEqualTo("any HRC");
    }

    @Test
    void noiseOfTheSumIsNotRoundedOutward() {
        Quantity length = Quantity.band(Measure.LENGTH, new Interval(0.1e-3, 0.1e-3 + 0.2e-3), MILLIMETRE);
        assertThat(QuantityFormat.aim(length)).isEqualTo("0.1..0.3 mm");
        // 273.15 is no round number in binary: 0 °C comes back as some 1E-14 °C
        double nearZero = 273.15 + 1e-13;
        Quantity ice = Quantity.band(Measure.TEMPERATURE, new Interval(268.15, nearZero), CELSIUS);
        assertThat(QuantityFormat.aim(ice)).isEqualTo("-5..0 °C");
        assertThat(QuantityFormat.number(ice, 273.15 - 1e-13)).isEqualTo("0 °C");
    }

    /** The unit's decimals are for values of its size; a much smaller one must not be shown as nothing. */
    @Test
    void aSmallValueKeepsTwoDigits() {
        assertThat(length(0.4e-6, 0.4e-6)).isEqualTo("0.0004 mm");
        assertThat(length(0.31e-6, 0.447e-6)).isEqualTo("0.00031..0.00045 mm");
        assertThat(length(0, 75e-6)).isEqualTo("0.0..0.075 mm");
        assertThat(length(0, 0.15e-3)).isEqualTo("0.0..0.15 mm");
        assertThat(length(2.123456e-3, 2.123456e-3)).isEqualTo("2.12 mm");
        assertThat(length(0, 0)).isEqualTo("0.0 mm");
        assertThat(length(0.3e-3 - 0.1e-3 - 0.2e-3, 0)).isEqualTo("0.0 mm");
        assertThat(length(Double.NEGATIVE_INFINITY, 4e-6)).isEqualTo("max 0.004 mm");
        Unit coherent = TestUnits.TABLE.shownFor(TestUnits.unit("m²/s").dimension());
        assertThat(QuantityFormat.aim(Quantity.of(coherent.measure(), 5.9123e-12, coherent)))
                .isEqualTo("0.0000000000059 m^2/s");
        assertThat(QuantityFormat.number(Quantity.of(Measure.TEMPERATURE, 273.55, CELSIUS), 273.55)).isEqualTo("0 °C");
    }

    private static String length(double least, double most) {
        return QuantityFormat.aim(Quantity.band(Measure.LENGTH, new Interval(least, most), MILLIMETRE));
    }

    @Test
    void anOpenEndAsANumber() {
        Quantity limit = Quantity.band(Measure.HARDNESS, new Interval(56, Double.POSITIVE_INFINITY), HRC);
        assertThat(QuantityFormat.number(limit, limit.aim().most())).isEqualTo("∞ HRC");
        assertThat(QuantityFormat.number(limit, limit.aim().least())).isEqualTo("56.0 HRC");
    }

    @Test
    void aNumberHasNoUnit() {
        assertThat(QuantityFormat.show(Quantity.of(Measure.NUMBER, 2.5, Unit.NONE))).isEqualTo("2.5");
    }

    @Test
    void aimAndReachAreShownApart() {
        Quantity tempered = new Quantity(Measure.HARDNESS, new Interval(56.2, 57.1), new Interval(54.7, 58.6), 56.6,
                Shown.in(HRC));
        assertThat(QuantityFormat.aim(tempered)).isEqualTo("56.2..57.1 HRC");
        assertThat(QuantityFormat.reach(tempered)).isEqualTo("54.7..58.6 HRC");
        assertThat(tempered.hasScatter()).isTrue();
        assertThat(tempered.isSingle()).isFalse();
        assertThat(tempered.hasNominal()).isTrue();
    }

    /** What is shown never looks tighter than what was computed. */
    @Test
    void theShownBandHoldsTheBand() {
        Random random = new Random(5);
        for (int i = 0; i < 5000; i++) {
            Interval band = Interval.between(random.nextDouble() * 3e-3, random.nextDouble() * 3e-3);
            String shown = QuantityFormat.aim(Quantity.band(Measure.LENGTH, band, MILLIMETRE));
            String[] ends = shown.replace(" mm", "").split("\\.\\.");
            double least = new BigDecimal(ends[0]).doubleValue() * 1e-3;
            double most = new BigDecimal(ends[ends.length - 1]).doubleValue() * 1e-3;
            assertThat(Numbers.compare(least, band.least())).isNotPositive();
            assertThat(ends.length == 1 || Numbers.compare(most, band.most()) >= 0).isTrue();
            assertThat(band.least() - least).isLessThan(0.0101e-3);
        }
    }

    private static String hardness(double least, double most) {
        return QuantityFormat.aim(Quantity.band(Measure.HARDNESS, new Interval(least, most), HRC));
    }
}
