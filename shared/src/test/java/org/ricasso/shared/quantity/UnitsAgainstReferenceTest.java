package org.ricasso.shared.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.GIGA;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static javax.measure.MetricPrefix.NANO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.COULOMB;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HERTZ;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.OHM;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SIEMENS;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.WATT;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.UnitDimension;

/** Units and compounds against the reference implementation of JSR 385. */
class UnitsAgainstReferenceTest {
    private static final Map<String, Unit<?>> REFERENCE = reference();
    private static final Map<Base, javax.measure.Dimension> BASES = Map.of(Base.LENGTH, UnitDimension.LENGTH,
            Base.MASS, UnitDimension.MASS, Base.TIME, UnitDimension.TIME, Base.CURRENT, UnitDimension.ELECTRIC_CURRENT,
            Base.TEMPERATURE, UnitDimension.TEMPERATURE);

    static Stream<String> signs() {
        return REFERENCE.keySet().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("signs")
    void theTableGivesWhatTheReferenceGives(String sign) {
        prove(sign, TestUnits.unit(sign));
    }

    @ParameterizedTest(name = "{0} °C is {1} °F, {2} as the trade rounds (common practice, no source)")
    @CsvSource({"1200, 2192, 2200", "1050, 1922, 1920", "180, 356, 350", "-40, -40, -40"})
    void temperatureScales(double celsius, double fahrenheit, double rounded) {
        double kelvin = TestUnits.unit("°C").toCoherent(celsius, true);
        double ours = TestUnits.unit("°F").fromCoherent(kelvin, true);
        assertThat(ours).isCloseTo(fahrenheit, within(1e-9)).isCloseTo(rounded, within(10.0));
        assertThat(ours).isCloseTo(convert(CELSIUS, USCustomary.FAHRENHEIT, celsius), within(1e-9));
        assertThat(kelvin).isCloseTo(convert(CELSIUS, KELVIN, celsius), within(1e-9));
    }

    @Test
    void aDifferenceOfTemperatureHasNoOffset() {
        assertThat(TestUnits.unit("°C").toCoherent(5, false)).isEqualTo(5);
        assertThat(TestUnits.unit("°F").toCoherent(9, false)).isCloseTo(5, within(1e-12));
    }

    /** The units that are shipped as text, read by their plain form; each that the reference knows must agree. */
    @Test
    void theShippedUnitsAgreeToo() throws IOException {
        Path text = Path.of("src/main/resources/ricasso/vocabulary/units.ricasso");
        UnitTable.Builder builder = UnitTable.builder();
        List<String> waiting = new ArrayList<>();
        Matcher blocks = Pattern.compile("(?m)^unit [^{]*\\{([^}]*)\\}").matcher(Files.readString(text));
        blocks.results().forEach(block -> waiting.add(block.group(1)));
        int before;
        do {
            before = waiting.size();
            waiting.removeIf(block -> declare(builder, block));
        } while (waiting.size() < before);
        assertThat(waiting).isEmpty();
        UnitTable table = builder.build();
        List<String> proven = new ArrayList<>();
        for (String sign : REFERENCE.keySet()) {
            table.find(sign).ifPresent(unit -> {
                prove(sign, unit);
                proven.add(sign);
            });
        }
        assertThat(proven).contains("mm", "µm", "°C", "°F", "min", "h", "g", "N", "kN", "bar", "J", "W", "V", "Hz", "N/mm²",
                "m/min", "W/m²·K").hasSizeGreaterThanOrEqualTo(40);
    }

    private static boolean declare(UnitTable.Builder builder, String block) {
        String sign = entry(block, "sign");
        String[] as = entry(block, "as").split(" ");
        var unit = as.length < 2 ? java.util.Optional.of(org.ricasso.shared.quantity.Unit.NONE) : builder.find(as[1]);
        String zero = entry(block, "zero");
        unit.ifPresent(of -> builder.add(new org.ricasso.shared.quantity.Unit(sign, of.dimension(),
                number(as[0]) * of.factor(), zero == null ? 0 : number(zero.split(" ")[0]), zero != null, 1)));
        return unit.isPresent();
    }

    private static String entry(String block, String name) {
        Matcher matcher = Pattern.compile("\\b" + name + ":\\s*\"([^\"]*)\"").matcher(block);
        return matcher.find() ? matcher.group(1) : null;
    }

    private static double number(String text) {
        String[] parts = text.split("/");
        return parts.length == 1 ? Double.parseDouble(text) : Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);
    }

    private static void prove(String sign, org.ricasso.shared.quantity.Unit ours) {
        Unit<?> theirs = REFERENCE.get(sign);
        UnitConverter toSystem = converter(theirs, theirs.getSystemUnit());
        for (double value : new double[] {1, 0.37, 250}) {
            double expected = toSystem.convert(value);
            assertThat(ours.toCoherent(value, ours.point())).as(value + " " + sign)
                    .isCloseTo(expected, within(1e-12 * Math.abs(expected)));
            assertThat(ours.fromCoherent(ours.toCoherent(value, ours.point()), ours.point())).as(value + " " + sign)
                    .isCloseTo(value, within(1e-12 * Math.max(1, ours.offset())));
        }
        Map<? extends javax.measure.Dimension, Integer> powers = theirs.getDimension().getBaseDimensions();
        BASES.forEach((base, dimension) -> {
            int power = theirs.getDimension().equals(dimension) ? 1
                    : powers == null ? 0 : powers.getOrDefault(dimension, 0);
            assertThat(ours.dimension().exponent(base)).as(base + " in " + sign).isEqualTo(power);
        });
    }

    private static double convert(Unit<?> from, Unit<?> to, double value) {
        return converter(from, to).convert(value);
    }

    private static UnitConverter converter(Unit<?> from, Unit<?> to) {
        try {
            return from.getConverterToAny(to);
        } catch (javax.measure.IncommensurableException e) {
            throw new AssertionError(e);
        }
    }

    private static Map<String, Unit<?>> reference() {
        Map<String, Unit<?>> units = new TreeMap<>();
        Unit<?> millimetre = MILLI(METRE);
        units.putAll(Map.of("m", METRE, "mm", millimetre, "cm", CENTI(METRE), "µm", MICRO(METRE), "nm", NANO(METRE),
                "km", KILO(METRE), "inch", USCustomary.INCH, "ft", USCustomary.FOOT));
        units.putAll(Map.of("kg", KILOGRAM, "g", GRAM, "mg", MILLI(GRAM), "t", KILO(KILOGRAM.multiply(1)), "lb", USCustomary.POUND,
                "s", SECOND, "min", MINUTE, "h", HOUR, "d", DAY, "ms", MILLI(SECOND)));
        units.putAll(Map.of("A", AMPERE, "mA", MILLI(AMPERE), "kA", KILO(AMPERE), "K", KELVIN, "mK", MILLI(KELVIN),
                "°C", CELSIUS, "°F", USCustomary.FAHRENHEIT, "rad", RADIAN, "°", USCustomary.DEGREE_ANGLE, "%", PERCENT));
        units.putAll(Map.of("N", NEWTON, "kN", KILO(NEWTON), "MN", MEGA(NEWTON), "Pa", PASCAL, "kPa", KILO(PASCAL),
                "MPa", MEGA(PASCAL), "GPa", GIGA(PASCAL), "bar", KILO(HECTO(PASCAL)), "mbar", HECTO(PASCAL)));
        units.putAll(Map.of("J", JOULE, "mJ", MILLI(JOULE), "kJ", KILO(JOULE), "MJ", MEGA(JOULE), "W", WATT,
                "kW", KILO(WATT), "kWh", KILO(WATT).multiply(HOUR), "V", VOLT, "Ω", OHM, "µΩ", MICRO(OHM)));
        units.putAll(Map.of("Hz", HERTZ, "kHz", KILO(HERTZ), "C", COULOMB, "l", LITRE, "A/V", SIEMENS));
        units.putAll(Map.of("m²", METRE.pow(2), "mm²", millimetre.pow(2), "mm³", millimetre.pow(3), "cm^3", CENTI(METRE).pow(3),
                "N/mm²", NEWTON.divide(millimetre.pow(2)), "g/cm^3", GRAM.divide(CENTI(METRE).pow(3)),
                "kg/m³", KILOGRAM.divide(METRE.pow(3)), "kg·m/s²", KILOGRAM.multiply(METRE).divide(SECOND.pow(2)),
                "m/s", METRE.divide(SECOND), "m/min", METRE.divide(MINUTE)));
        units.putAll(Map.of("W/m²·K", WATT.divide(METRE.pow(2)).divide(KELVIN), "W/m·K", WATT.divide(METRE).divide(KELVIN),
                "J/kg·K", JOULE.divide(KILOGRAM).divide(KELVIN), "K/h", KELVIN.divide(HOUR),
                "1/min", AbstractUnit.ONE.divide(MINUTE), "1/K", AbstractUnit.ONE.divide(KELVIN),
                "mm³/s", millimetre.pow(3).divide(SECOND), "J/mm²", JOULE.divide(millimetre.pow(2)),
                "A/m", AMPERE.divide(METRE), "g/m²", GRAM.divide(METRE.pow(2))));
        return units;
    }
}
