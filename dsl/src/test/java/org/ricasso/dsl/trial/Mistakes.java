package org.ricasso.dsl.trial;

import static org.ricasso.dsl.trial.TrialHouse.COOKS;
import static org.ricasso.dsl.trial.TrialHouse.WORKS;

import java.util.List;

/** The mistakes that the check must find, each in its own copy of the house. */
final class Mistakes {
    private static final String TEMPER = "170 temper at temper-3 { temperature: ";

    private Mistakes() {}

    static List<Mistake> all() {
        return List.of(
                new Mistake("tempering at 245 °C for 55..58 HRC", h -> tempered(h, "245 ± 5 °C"), COOKS, TEMPER, "245 ± 5 °C",
                        "characteristic-missed", "55..58 HRC", ""),
                new Mistake("tempering at 350 °C for 55..58 HRC", h -> tempered(h, "350 ± 5 °C"), COOKS, TEMPER, "350 ± 5 °C",
                        "cannot-be-told", "", ""),
                new Mistake("the quench left out", h -> h.with(COOKS, t -> without(t, "155 quench-gas")), COOKS, "160 sub-zero",
                        "160", "need-unmet", "structure", ""),
                new Mistake("marking an unwashed blade", h -> h.with(COOKS, t -> without(t, "280 ultrasonic-wash")), COOKS,
                        "290 laser-mark", "290", "need-unmet", "cleanness", ""),
                new Mistake("rivets that do not reach: the pair of a smaller knife",
                        h -> h.with(COOKS, "            rivet:   RV-5x13", "            rivet:   RV-5x12"), COOKS,
                        "320 rivet-scales", "RV-5x12", "", "", ""),
                new Mistake("rivets that do not reach: the counterbore too shallow",
                        h -> h.with(COOKS, "counterbore-to: 2.30 ± 0.10 mm", "counterbore-to: 1.80 ± 0.10 mm"), COOKS,
                        "320 rivet-scales", "RV-5x13", "", "", ""),
                new Mistake("an edge angle specified but not measured after sharpening",
                        h -> h.with(COOKS, t -> without(t, "edge-angle     {")), COOKS, "each-side: ", "15 ± 1 °", "unmeasured",
                        "", ""),
                new Mistake("grinding that leaves soft skin", h -> h.with(COOKS, t -> t.replace("3.20 ± 0.08 mm", "2.98 ± 0.08 mm")), COOKS,
                        "230 taper-grind", "spine-to", "soft-skin-comes-off", "", ""),
                new Mistake("a unit of the wrong dimension", h -> h.with(COOKS, "soak:        15 (+3/-2) min",
                        "soak:        15 (+3/-2) mm"), COOKS, "soak:", "15 (+3/-2) mm", "", "", ""),
                new Mistake("a misspelt steel", h -> h.with(COOKS, "steel:        1.4116", "steel:        1.4161"), COOKS, "steel: ",
                        "1.4161", "unknown-name", "", ""),
                new Mistake("a step number used twice", h -> h.with(COOKS, "180 straighten at", "170 straighten at"), COOKS,
                        "170 straighten", "170", "step-number-twice", "", ""),
                new Mistake("a ring in like", h -> h.with(WORKS, "\"Calliper 0-300\" {", "\"Calliper 0-300\" like radius-calliper {")
                        .with(WORKS, "radius jaws\" {", "radius jaws\" like calliper {"), WORKS, "", "", "like-ring", "", ""),
                new Mistake("a ring in like of the knife", h -> h.with(COOKS, "200 mm\" {", "200 mm\" like paring-90 {")
                        .with(TrialHouse.PARING, "90 mm\" {", "90 mm\" like cooks-200 {"), WORKS, "", "", "like-ring", "", ""),
                new Mistake("1050 °F typed for 1050 °C", h -> h.with(COOKS, "1050 ± 8 °C", "1050 ± 8 °F"), COOKS, "150 harden",
                        "1050 ± 8 °F", "", "", ""),
                new Mistake("a hardness beyond the grade", h -> h.with(COOKS, "hardness:     55..58 HRC", "hardness:     60..63 HRC"), COOKS,
                        "hardness:", "60..63 HRC", "", "", ""),
                new Mistake("a furnace asked beyond its limit", h -> h.with(COOKS, "1140 ± 20 °C", "1190 ± 20 °C"), COOKS, "",
                        "1190 ± 20 °C", "temperature-of-the-centre", "", ""),
                new Mistake("harden beyond", h -> h.with(COOKS, "1050 ± 8 °C", "1250 ± 8 °C"), COOKS, "",
                        "1250 ± 8 °C", "temperature-of-the-centre", "", ""),
                new Mistake("a centre that scatters more than the tolerance allows",
                        h -> h.with(COOKS, "temperature: 1050 ± 8 °C", "temperature: 1050 ± 5 °C"), COOKS, "150 harden", "1050 ± 5 °C",
                        "temperature-can-be-held", "", ""),
                new Mistake("a centre that scatters more than the size allows",
                        h -> h.with(WORKS, "is: flank-grinder; speed: 20..36 m/s; scatter: 0.025 mm; longest: 320 mm", "is: flank-grinder; speed: 20..36 m/s; scatter: 0.15 mm; longest: 320 mm"), COOKS, "150 harden", "1050 ± 5 °C",
                        "temperature-can-be-held", "", ""));
    }

    private static TrialHouse tempered(TrialHouse house, String temperature) {
        return house.with(COOKS, TEMPER + "180 ± 5 °C", TEMPER + temperature);
    }

    /** A text without the step, entry or block that begins so, to its end. */
    static String without(String text, String begin) {
        int from = text.indexOf(begin);
        if (from < 0 || text.indexOf(begin, from + 1) >= 0) {
            throw new AssertionError(begin + " does not stand there once");
        }
        from = text.lastIndexOf('\n', from) + 1;
        int end = from;
        int depth = 0;
        do {
            char c = text.charAt(end++);
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            if (c == '\n' && depth == 0) {
                break;
            }
        } while (true);
        return text.substring(0, from) + text.substring(end);
    }
}
