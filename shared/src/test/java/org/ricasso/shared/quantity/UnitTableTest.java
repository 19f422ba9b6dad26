package org.ricasso.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTableTest {
    private static final Dimension LENGTH = Dimension.of(Base.LENGTH);

    @ParameterizedTest
    @ValueSource(strings = {"", "furlong", "mm/", "/mm", "mm//s", "mm^0", "mm^x", "1", "m/1", "mm²²", "·", "1²/s"})
    void whatIsNoUnitIsNotFound(String sign) {
        assertThat(TestUnits.TABLE.find(sign)).isEmpty();
    }

    @Test
    void allBehindTheFirstStrokeStandsBelow() {
        assertThat(TestUnits.unit("W/m²·K").dimension()).isEqualTo(TestUnits.unit("W/m²/K").dimension());
        assertThat(TestUnits.unit("N·m/s").dimension()).isEqualTo(TestUnits.unit("W").dimension());
        assertThat(TestUnits.unit("1/min").factor()).isCloseTo(1 / 60.0, within(1e-15));
    }

    @Test
    void aCompoundOfAScaleMeansItsDifferences() {
        Unit rate = TestUnits.unit("°C/h");
        assertThat(rate.point()).isFalse();
        assertThat(rate.toCoherent(200, true)).isCloseTo(200 / 3600.0, within(1e-15));
    }

    @Test
    void theSignOfEveryDimensionIsAUnitOfIt() {
        for (String sign : new String[] {"N/mm²", "W/m²·K", "1/min", "kWh", "Ω", "J/kg·K", "mm³/s", "K/h"}) {
            Dimension dimension = TestUnits.unit(sign).dimension();
            Unit coherent = TestUnits.unit(dimension.toString());
            assertThat(coherent.dimension()).isEqualTo(dimension);
            assertThat(coherent.factor()).isEqualTo(1);
        }
    }

    @Test
    void aSignIsDeclaredOnce() {
        UnitTable.Builder builder = UnitTable.builder();
        assertThat(builder.add(Unit.of("mm", LENGTH, 1e-3, 2))).isTrue();
        assertThat(builder.add(Unit.of("mm", LENGTH, 1, 2))).isFalse();
        assertThat(builder.add(Unit.of("m", LENGTH, 1, 2))).isFalse();
        assertThat(builder.build().find("mm").orElseThrow().factor()).isEqualTo(1e-3);
    }

    @Test
    void computedValuesHaveAUnitToBeShownIn() {
        assertThat(TestUnits.TABLE.shownFor(LENGTH).sign()).isEqualTo("mm");
        assertThat(TestUnits.TABLE.shownFor(Dimension.NUMBER)).isEqualTo(Unit.NONE);
        assertThat(TestUnits.TABLE.shownFor(LENGTH.power(2)).sign()).isEqualTo("m^2");
        Unit hardness = TestUnits.TABLE.shownFor(Dimension.of(Base.ROCKWELL_C));
        assertThat(hardness.sign()).isEqualTo("HRC");
        assertThat(hardness.point()).isTrue();
        assertThat(hardness.decimals()).isEqualTo(1);
    }

    @Test
    void unitsComeInTheOrderOfTheirSigns() {
        assertThat(TestUnits.TABLE.all()).extracting(Unit::sign).isSorted().contains("mm", "HRC", "°C");
        assertThat(TestUnits.TABLE.of(LENGTH)).extracting(Unit::sign)
                .containsExactly("cm", "ft", "inch", "km", "m", "mm", "nm", "µm");
    }

    @Test
    void dimensionsMultiplyAndPrint() {
        Dimension force = TestUnits.unit("N").dimension();
        assertThat(force.dividedBy(force)).isEqualTo(Dimension.NUMBER).hasToString("1");
        assertThat(force).hasToString("m·kg/s^2").hasSameHashCodeAs(TestUnits.unit("kg·m/s²").dimension());
        assertThat(Dimension.of(Base.TIME).power(-1)).hasToString("1/s");
        assertThat(force.times(LENGTH)).isEqualTo(TestUnits.unit("J").dimension());
        assertThat(Dimension.of(Base.VICKERS).hasPoints()).isTrue();
        assertThat(Dimension.of(Base.TEMPERATURE).power(2).hasPoints()).isFalse();
    }

    @Test
    void measuresAcceptTheirLikeAndHardnessOnAnotherScale() {
        Measure vickers = new Measure(Dimension.of(Base.VICKERS), true);
        assertThat(Measure.HARDNESS.accepts(vickers)).isTrue();
        assertThat(Measure.HARDNESS.accepts(vickers.difference())).isFalse();
        assertThat(Measure.HARDNESS.accepts(Measure.TEMPERATURE)).isFalse();
        assertThat(Measure.TEMPERATURE.accepts(Measure.TEMPERATURE_DIFFERENCE)).isFalse();
        assertThat(Measure.TEMPERATURE.difference()).isEqualTo(Measure.TEMPERATURE_DIFFERENCE);
        assertThat(Measure.LENGTH.difference()).isEqualTo(Measure.LENGTH);
    }
}
