package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.diagnostics.Severity;

/**
 * Gauges of the house held against what they judge. A ratio is the tolerance to twice the expanded uncertainty, which is the
 * measurement capability index of JCGM 106:2012 (published, from memory); 4 to 1 is common practice.
 */
class GaugesTest {
    private static final String RECORDERS = "recorders.ricasso";

    /** 2 HRC with an uncertainty of 1.0 HRC at each end leave nothing (ISO 14253-1). */
    @Test
    void aBandNarrowerThanTheGaugeIsMarkedWithTheGauge() {
        TrialHouse house = TrialHouse.single().with(TrialHouse.COOKS, "hardness:     55..58 HRC", "hardness:     56..58 HRC");
        Diagnostic found = one(house, "gauge-can-prove-the-limit");
        assertThat(found.primary().span().text()).isEqualTo("56..58 HRC");
        assertThat(found.primary().text()).contains("2.0 HRC wide").contains("± 1.0 HRC").contains("no reading proves hardness");
        assertThat(found.others()).extracting(Mark::text).contains("read here", "uncertainty of rockwell-c");
        assertThat(found.remedies()).extracting(Remedy::text).containsExactly("set blade.hardness to 55..59 HRC");
        holds(house, found);
    }

    /** 0.1 mm to twice 0.03 mm is 1.7. */
    @Test
    void aGaugeThatIsTooCoarseIsExchangedForOneOfTheHouse() {
        TrialHouse house = TrialHouse.single().with(TrialHouse.PARING, text -> inBlock(text, 2, "edge-thickness {", "point-micrometer", "radius-calliper"));
        Diagnostic found = one(house, "gauge-suits-the-tolerance");
        assertThat(found.severity()).isEqualTo(Severity.WARNING);
        assertThat(found.primary().span().text()).isEqualTo("edge-thickness");
        assertThat(found.primary().text()).contains("0.1 mm wide").contains("± 0.03 mm").contains("1.667 to one");
        assertThat(found.others()).extracting(Mark::text).contains("uncertainty of radius-calliper");
        assertThat(found.remedies()).extracting(Remedy::text).startsWith("read it with point-micrometer");
        holds(house, found);
    }

    @Test
    void aSmallerRatioIsAcceptedWithItsReasonAlone() {
        TrialHouse without = TrialHouse.single().with(TrialHouse.PARING, text -> without(text, " hardness {", "accepted-ratio"));
        assertThat(one(without, "gauge-suits-the-tolerance").primary().text()).contains("1.5 to one, 4 to one is asked");
        TrialHouse unexplained = TrialHouse.single().with(TrialHouse.PARING, text -> without(text, " hardness {", "accepted-why"));
        assertThat(one(unexplained, "accepted-ratio-explained").primary().text()).contains("a ratio of 1.5 is accepted for hardness");
    }

    @Test
    void aGaugeReadsWhatIsMeasured() {
        TrialHouse house = TrialHouse.single().with(TrialHouse.PARING, text -> inBlock(text, 1, "edge-angle {", "goniometer", "calliper"));
        Diagnostic found = one(house, "gauge-reads-what-is-measured");
        assertThat(found.primary().text()).contains("calliper is said to read size").contains("edge-angle");
        assertThat(found.remedies()).extracting(Remedy::text).containsExactly("read it with goniometer");
        holds(house, found);
    }

    @Test
    void theRangeCoversTheLimit() {
        TrialHouse house = TrialHouse.single().with(TrialHouse.WORKS, "range: 0.05..2 mm", "range: 0.25..2 mm");
        Diagnostic found = one(house, "gauge-covers-the-limit");
        assertThat(found.primary().text()).contains("max 0.20 mm").contains("0.25..2 mm");
    }

    /** A limit without a lower end counts from nought: 0.20 mm to twice 0.03 mm is 3.3. */
    @Test
    void aLimitFromNoughtIsReadFinely() {
        TrialHouse house = TrialHouse.single().with(TrialHouse.WORKS, "resolution: 0.02 mm; uncertainty: 0.02 mm",
                "resolution: 0.02 mm; uncertainty: 0.03 mm");
        assertThat(one(house, "gauge-suits-a-limit-from-nought").primary().text()).contains("max 0.20 mm").contains("± 0.03 mm");
    }

    /** A setting that a step watches is judged as well: 10 K to twice 2.5 K is 2. */
    @Test
    void aRecorderSuitsTheSettingItWatches() {
        TrialHouse house = TrialHouse.single().with(RECORDERS, text -> text.replace("uncertainty: 1.2 K", "uncertainty: 2.5 K"));
        List<Diagnostic> found = named(house, "gauge-suits-the-tolerance");
        assertThat(found).extracting(d -> d.primary().span().text()).containsOnly("temperature");
        assertThat(found).extracting(d -> d.primary().text()).anyMatch(text -> text.startsWith("180 ± 5 °C is 10.0 K wide")
                && text.endsWith("2.0 to one, 4 to one is asked"));
    }

    @Test
    void anOverdueGaugeIsToldOnceWhereItsDateStands() {
        TrialHouse house = TrialHouse.single().with(RECORDERS, text -> text.replaceFirst("due:    2027-03-01", "due:    2025-01-01"));
        Diagnostic found = one(house, "gauge-in-date");
        assertThat(found.primary().span().text()).isEqualTo("2025-01-01");
        assertThat(found.primary().text()).contains("recorder was due on 2025-01-01");
        assertThat(found.others()).extracting(Mark::text).contains("read here");
    }

    @Test
    void anEdgeIsMeasuredAtAStatedPlace() {
        TrialHouse house = TrialHouse.single().with(TrialHouse.PARING, text -> without(text, "edge-angle {", "place"));
        assertThat(one(house, "place-of-measuring").primary().text()).isEqualTo("edge-angle is measured, but not where on the blade");
    }

    private static Diagnostic one(TrialHouse house, String name) {
        List<Diagnostic> found = named(house, name);
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static List<Diagnostic> named(TrialHouse house, String name) {
        return house.diagnostics().stream().filter(d -> d.name().equals(name)).toList();
    }

    /** Each remedy, applied as it stands, takes the finding away and brings no other of its kind. */
    private static void holds(TrialHouse house, Diagnostic found) {
        for (Remedy remedy : found.remedies()) {
            List<String> left = new ArrayList<>();
            house.with(remedy.edits()).diagnostics().stream().map(Diagnostic::name)
                    .filter(n -> !n.startsWith("words-")).forEach(left::add);
            assertThat(left).as(remedy.text()).isEmpty();
        }
    }

    /** A text with a word of the block that begins so for the nth time written otherwise. */
    private static String inBlock(String text, int nth, String begin, String old, String other) {
        int from = -1;
        for (int i = 0; i < nth; i++) {
            from = text.indexOf(begin, from + 1);
        }
        int at = text.indexOf(old, from);
        assertThat(from).isPositive();
        assertThat(at).isBetween(from, text.indexOf('}', from));
        return text.substring(0, at) + other + text.substring(at + old.length());
    }

    /** A text without an entry of the first block that begins so. */
    private static String without(String text, String begin, String entry) {
        UnaryOperator<String> removed = block -> block.replaceFirst("(?m)^ +" + entry + ":.*\\R", "");
        int from = text.indexOf(begin);
        int to = text.indexOf('}', from);
        String block = text.substring(from, to);
        assertThat(removed.apply(block)).isNotEqualTo(block);
        return text.substring(0, from) + removed.apply(block) + text.substring(to);
    }
}
