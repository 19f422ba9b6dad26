package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ricasso.dsl.trial.TrialHouse.COOKS;
import static org.ricasso.dsl.trial.TrialHouse.PARING;
import static org.ricasso.dsl.trial.TrialHouse.ROUTE;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.format.Formatter;
import org.ricasso.dsl.source.SourceFile;

/**
 * Steps and measurements that are missing or stand at the wrong place: each fault is one error, and its first remedy, written into the
 * texts as it stands, leaves no finding at all, and a text that is laid out as before.
 */
class TriedRemediesTest {
    /** A fault, the stretch that its error marks, and what the first remedy says. */
    record Fault(String title, UnaryOperator<TrialHouse> make, String marks, String remedy) {
        @Override
        public String toString() {
            return title;
        }
    }

    static final Fault WITHOUT_QUENCH = new Fault("no quench", h -> without(h, ROUTE, "155 quench-gas"), "sub-zero",
            "put in a step of quench-gas before step 160; it takes pressure");

    static List<Fault> faults() {
        return List.of(
                new Fault("no wash before the mark", h -> without(h, ROUTE, "280 ultrasonic-wash"), "laser-mark",
                        "insert 280 ultrasonic-wash at ultrasonic-1, set as step "),
                new Fault("no neutralising after the etch", h -> without(h, PARING, "220 neutralise"), "passivate",
                        "insert 220 neutralise at etch-2 before step 225"),
                new Fault("no crack check after straightening", h -> without(h, ROUTE, "245 check-cracks").with(COOKS,
                        text -> Mistakes.without(text, "change 245 check-cracks")), "straighten",
                        "insert 245 check-cracks at crack-bay { deflection: 20 ± 2 mm; over: 180 mm } as step 210 before step 250"),
                new Fault("straightened before it is tempered", h -> moved(h, ROUTE, "180 straighten", "170 temper", "165")
                        .with(ROUTE, text -> Mistakes.without(text, "rework 200 to 180")), "straighten",
                        "move step 165 straighten before step 190, as step 180"),
                new Fault("satin after the mark", h -> moved(h, PARING, "180 satin-finish", "220 neutralise", "215"), "satin-finish",
                        "move step 215 satin-finish before step 200, as step 195"),
                new Fault("inspected before it is honed", h -> moved(h, PARING, "310 inspect-edge", "300 hone", "295"), "inspect-edge",
                        "move step 295 inspect-edge before step 330, as step 310"),
                new Fault("the edge angle measured nowhere", h -> without(h, PARING, "edge-angle {"), "17 ± 1 °",
                        "let step 310 inspect-edge measure edge-angle as step "));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void isOneErrorWithARemedyThatHolds(Fault fault) {
        TrialHouse house = fault.make().apply(TrialHouse.single());
        List<Diagnostic> found = house.diagnostics();
        assertThat(found).hasSize(1);
        assertThat(found.get(0).primary().span().text()).isEqualTo(fault.marks());
        Remedy remedy = found.get(0).remedies().get(0);
        assertThat(remedy.text()).startsWith(fault.remedy());
        assertThat(remedy.edits()).isNotEmpty();
        TrialHouse mended = house.with(remedy.edits());
        assertThat(mended.diagnostics()).isEmpty();
        for (Edit edit : remedy.edits()) {
            SourceFile text = mended.file(edit.span().file().name());
            assertThat(Formatter.format(text).text()).isEqualTo(text.text());
        }
    }

    /** What all sizes lack is written once, where all take it over. */
    @Test
    void whatAllLackIsWrittenWhereAllTakeItOver() {
        TrialHouse house = without(TrialHouse.whole(), ROUTE, "280 ultrasonic-wash");
        // one knife marks in another way than the rest, so its own step meets the lack first
        List<Diagnostic> errors = house.errors().stream().filter(e -> e.primary().span().file().name().equals(ROUTE)).toList();
        assertThat(errors).hasSize(1);
        Remedy remedy = errors.get(0).remedies().get(0);
        assertThat(remedy.edits()).allMatch(e -> e.span().file().name().equals(ROUTE));
        assertThat(house.with(remedy.edits()).errors()).isEmpty();
    }

    /** What one lacks that leaves it out is written in its own route: the others have it. */
    @Test
    void whatOneLacksIsWrittenInItsOwnRoute() {
        TrialHouse house = TrialHouse.whole().fitsAll().with(COOKS, text -> text + """

                knife cooks-odd "Cook's knife, unwashed" like cooks-200 {
                    route {
                        omit 280 ultrasonic-wash
                        change 290 laser-mark { file: M-2120-C }
                    }
                }
                """);
        List<Diagnostic> errors = house.errors();
        assertThat(errors).hasSize(1);
        Remedy remedy = errors.get(0).remedies().get(0);
        assertThat(remedy.text()).startsWith("insert 280 ultrasonic-wash at ultrasonic-1");
        assertThat(remedy.edits()).allMatch(e -> e.span().file().name().equals(COOKS));
        TrialHouse mended = house.with(remedy.edits());
        assertThat(mended.errors()).isEmpty();
        assertThat(mended.file(COOKS).text()).contains("add 280 ultrasonic-wash at ultrasonic-1 {");
    }

    /** A warning goes with each remedy that is offered for it, too. */
    @Test
    void aRemedyOfAWarningMendsIt() {
        TrialHouse house = TrialHouse.single().with(ROUTE, "190 temper-again at temper-3 { temperature: 175 ± 5 °C",
                "190 temper-again at temper-3 { temperature: 230 ± 5 °C");
        List<Diagnostic> found = house.diagnostics();
        assertThat(found).isNotEmpty();
        List<Remedy> remedies = found.stream().flatMap(d -> d.remedies().stream()).filter(r -> !r.edits().isEmpty()).toList();
        assertThat(remedies).isNotEmpty();
        remedies.forEach(remedy -> assertThat(house.with(remedy.edits()).diagnostics()).as(remedy.text()).isEmpty());
    }

    /** Where the house shows nowhere how an operation is set, it is named, and nothing is written. */
    @Test
    void whatNobodyShowsIsSaidInWords() {
        List<Diagnostic> errors = WITHOUT_QUENCH.make().apply(TrialHouse.single()).errors();
        assertThat(errors).hasSize(1);
        assertThat(errors.get(0).remedies()).containsExactly(new Remedy(WITHOUT_QUENCH.remedy(), List.of()));
    }

    private static TrialHouse without(TrialHouse house, String file, String begin) {
        return house.with(file, text -> Mistakes.without(text, begin));
    }

    /** A step with another number before another one. */
    private static TrialHouse moved(TrialHouse house, String file, String begin, String before, String number) {
        return house.with(file, text -> {
            String rest = Mistakes.without(text, begin);
            int from = text.lastIndexOf('\n', Stretch.once(text, begin).start()) + 1;
            String step = text.substring(from, from + text.length() - rest.length());
            int to = rest.lastIndexOf('\n', Stretch.once(rest, before).start()) + 1;
            return rest.substring(0, to) + step.replaceFirst("[0-9]+", number) + rest.substring(to);
        });
    }
}
