package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ricasso.dsl.words.Words;
import org.ricasso.shared.Shipped;

/** Signs are called as ISO 7010 registers them. */
class SignsTest {
    private static final PageWords WORDS = PageWords.of(Words.NONE, Words.SOURCE);

    /** Titles of the register of ISO 7010 (checks C111 and C112 of the reference data; the others from its list). */
    @ParameterizedTest
    @CsvSource({
            "W022, Sharp element, warning",
            "P028, Do not wear gloves, prohibition",
            "W017, Hot surface, warning",
            "M013, Wear a face shield, mandatory",
            "E011, Eyewash station, safe",
            "F001, Fire extinguisher, fire"})
    void aKnownCodeHasTitleAndShape(String code, String title, String shape) {
        assertThat(Signs.of(code, WORDS)).isEqualTo(new WorkInstruction.Sign(code, title, shape));
    }

    @Test
    void anUnknownCodeIsShownWithoutATitle() {
        assertThat(Signs.of("W999", WORDS)).isEqualTo(new WorkInstruction.Sign("W999", "", "warning"));
        assertThat(Signs.of("<b>", WORDS)).isEqualTo(new WorkInstruction.Sign("<b>", "", "none"));
    }

    @Test
    void everySignOfTheShippedCautionsHasATitle() {
        Set<String> codes = new TreeSet<>();
        Shipped.texts().values().forEach(text -> Pattern.compile("\"([WPMEF]\\d{3})\"").matcher(text).results()
                .forEach(found -> codes.add(found.group(1))));
        assertThat(codes).contains("W017", "W022");
        assertThat(codes).allSatisfy(code -> assertThat(Signs.of(code, WORDS).title()).as(code).isNotEmpty());
    }
}
