package org.ricasso.shared.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.shared.forging.Upsetting;
import org.ricasso.shared.heat.LumpedBody;
import org.ricasso.shared.marking.Electrolysis;
import org.ricasso.shared.metallurgy.GrainSize;
import org.ricasso.shared.metallurgy.MartensiteStart;
import org.ricasso.shared.metallurgy.SizeChange;
import org.ricasso.shared.metallurgy.Tempering;
import org.ricasso.shared.quality.AttributeSample;
import org.ricasso.shared.quantity.Base;
import org.ricasso.shared.quantity.Dimension;
import org.ricasso.shared.quantity.HardnessScales;
import org.ricasso.shared.quantity.TestUnits;
import org.ricasso.shared.quantity.Unit;

/** Published tables, standards and worked examples, each row with its id and source, against the calculations. */
class PublishedChecksTest {
    private static final SortedMap<String, Calculation> CALCULATIONS =
            Calculations.all(PublishedChecksTest.class.getClassLoader());

    /** Functions that the language cannot call, at least not with these numbers. */
    private static final Map<String, Calculation.Function> FORMULAS = Map.of(
            "andrews-product", a -> MartensiteStart.andrewsProduct(a[0], a[1], a[2], a[3], a[4]),
            "hold-for-parameter", a -> Tempering.holdFor(a[0], a[1], Tempering.CONSTANT),
            "heating-time", a -> LumpedBody.timeConstant(a[0], a[1], a[2], a[3])
                    * StrictMath.log((a[6] - a[4]) / (a[6] - a[5])),
            "spheroidised-expansion", a -> SizeChange.spheroidisedToMartensite(a[0]),
            "grain-number-of-count", a -> GrainSize.fromCount(a[0]),
            "friction-factor", a -> Upsetting.frictionFactor(a[0], a[1], a[2]),
            "electrochemical-equivalent", a -> Electrolysis.equivalent(a[0], a[1]));

    static Stream<Arguments> metallurgy() {
        return rows("metallurgy");
    }

    static Stream<Arguments> process() {
        return rows("process");
    }

    static Stream<Arguments> quality() {
        return rows("quality");
    }

    @ParameterizedTest(name = "{0} {1} ({2})")
    @MethodSource({"metallurgy", "process", "quality"})
    void asPublished(String id, String name, String source, NamedCsvRecord row) {
        String expected = row.getField("expected");
        if (expected.startsWith("refused")) {
            assertThatThrownBy(() -> result(row)).isInstanceOf(IllegalArgumentException.class)
                    .hasMessageMatching(".*\\d\\.\\..*\\d.*");
            return;
        }
        double value = TestUnits.read(expected);
        assertThat(result(row)).isCloseTo(value, within(tolerance(row.getField("tolerance"), value)));
    }

    @Test
    void enoughRowsOfEachField() {
        assertThat(metallurgy()).hasSizeGreaterThanOrEqualTo(40);
        assertThat(process()).hasSizeGreaterThanOrEqualTo(40);
        assertThat(quality()).hasSizeGreaterThanOrEqualTo(20);
    }

    static Stream<Arguments> acceptance() {
        return read("acceptance").stream().map(row -> Arguments.of(row.getField("name"), row.getField("n"),
                row.getField("c"), row.getField("p"), row.getField("source"), row));
    }

    @ParameterizedTest(name = "{0} n {1} c {2} p {3} ({4})")
    @MethodSource("acceptance")
    void operatingCharacteristics(String name, double n, double c, double p, String source, NamedCsvRecord row) {
        assertThat(AttributeSample.acceptance(n, c, p)).isCloseTo(Double.parseDouble(row.getField("expected")),
                within(Double.parseDouble(row.getField("tolerance"))));
    }

    private static double result(NamedCsvRecord row) {
        String[] texts = row.getField("arguments").split("; ");
        double[] values = Stream.of(texts).mapToDouble(TestUnits::read).toArray();
        String called = row.getField("calculation");
        if (called.equals("convert-hardness")) {
            return HardnessScales.convert(values[0], scale(texts[0]), scale(row.getField("expected")));
        }
        if (called.startsWith("formula:")) {
            return FORMULAS.get(called.substring("formula:".length())).of(values);
        }
        Calculation calculation = CALCULATIONS.get(called);
        assertThat(calculation).as(called).isNotNull();
        for (int i = 0; i < texts.length; i++) {
            assertThat(calculation.arguments().get(i).measure().dimension()).as("%s of %s",
                    calculation.arguments().get(i).name(), called).isEqualTo(unit(texts[i]).dimension());
        }
        return calculation.at(values);
    }

    private static Unit unit(String text) {
        int blank = text.indexOf(' ');
        return blank < 0 ? Unit.NONE : TestUnits.unit(text.substring(blank + 1));
    }

    private static Base scale(String text) {
        Dimension dimension = unit(text).dimension();
        return Stream.of(Base.values()).filter(base -> Dimension.of(base).equals(dimension)).findFirst().orElseThrow();
    }

    private static double tolerance(String text, double value) {
        double tolerance = text.endsWith(" rel%")
                ? Double.parseDouble(text.substring(0, text.length() - " rel%".length())) / 100 * Math.abs(value)
                : TestUnits.difference(text);
        return Math.max(tolerance, 1e-12 * Math.abs(value));
    }

    private static Stream<Arguments> rows(String file) {
        return read(file).stream().map(row -> Arguments.of(row.getField("id"), row.getField("name"),
                row.getField("source") + ", " + row.getField("confidence"), row));
    }

    private static List<NamedCsvRecord> read(String file) {
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(
                PublishedChecksTest.class.getResourceAsStream("/checks/" + file + ".csv"), StandardCharsets.UTF_8))) {
            return csv.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
