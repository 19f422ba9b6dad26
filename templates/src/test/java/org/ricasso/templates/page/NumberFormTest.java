package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.words.Words;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.Unit;

/** Numbers are set so that they can be read out; {@code _} stands for a blank that does not break. */
class NumberFormTest {
    private static final Tongue ENGLISH = Tongue.of(Words.NONE, null, Words.SOURCE);

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "180 ± 5 °C           | 180_±_5_°C",
            "55..58 HRC           | 55_to_58_HRC",
            "-80..-60 °C          | −80_to_−60_°C",
            "200 (+0.5/-0.2) mm   | 200 (+0.5/−0.2)_mm",
            "max 0.4 µm           | max_0.4_µm",
            "1.4116               | 1.4116"})
    void aNumberAlone(String written, String set) {
        assertThat(ENGLISH.numbers().number(written)).isEqualTo(set.replace('_', '\u00A0'));
        assertThat(ENGLISH.numbers().number(ENGLISH.numbers().number(written))).isEqualTo(ENGLISH.numbers().number(written));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "Set 180 ± 5 °C for 2 h.      | Set 180_±_5_°C for 2_h.",
            "cooling below 40 °C between  | cooling below 40_°C between",
            "3 readings, 5 mm apart       | 3 readings, 5_mm apart",
            "program TG-2120 before AB-1109 | program TG-2120 before AB-1109",
            "from -70 °C to 20 K          | from −70_°C to 20_K",
            "0.05..0.10 mm off            | 0.05_to_0.10_mm off"})
    void numbersInALine(String written, String set) {
        assertThat(ENGLISH.numbers().typeset(written)).isEqualTo(set.replace('_', '\u00A0'));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "120 (+20/0) min      | 120 to 140 min",
            "200 (+0.5/-0.2) mm   | 199.8 to 200.5 mm",
            "8.0 (+0.05/0) mm     | 8.0 to 8.05 mm",
            "-78 (+5/-2.5) °C     | −80.5 to −73 °C",
            "20 (+0/-0.13) mm     | 19.87 to 20 mm",
            "180 ± 5 °C           | ''"})
    void deviationsThatDifferAreSpeltOut(String written, String window) {
        Quantity quantity = new Quantity(Measure.NUMBER, new Interval(0, 1), new Interval(0, 1), 0,
                new org.ricasso.shared.quantity.Shown(Unit.NONE, 0, written));
        assertThat(ENGLISH.values().shown(new Value.Num(quantity), null).lines().get(0).title().replace('\u00A0', ' '))
                .isEqualTo(window);
    }

    @Test
    void timesArePeoplesTimes() {
        assertThat(ENGLISH.values().time(40)).isEqualTo("40\u00A0s");
        assertThat(ENGLISH.values().time(900)).isEqualTo("15\u00A0min");
        assertThat(ENGLISH.values().time(5400)).isEqualTo("1\u00A0h 30\u00A0min");
        assertThat(ENGLISH.values().time(0)).isEqualTo("0\u00A0s");
        assertThat(ENGLISH.values().time(Double.NaN)).isEmpty();
    }
}
