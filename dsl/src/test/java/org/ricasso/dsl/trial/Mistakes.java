package org.ricasso.dsl.trial;

import static org.ricasso.dsl.trial.TrialHouse.COOKS;
import static org.ricasso.dsl.trial.TrialHouse.ROUTE;
import static org.ricasso.dsl.trial.TrialHouse.WORKS;

import java.util.List;

/** The mistakes that the check must find, each in its own copy of the house. */
final class Mistakes {
    private static final String TEMPER = "170 temper at temper-3 { temperature: ";

    private Mistakes() {}

    static List<Mistake> all() {
        return List.of(
                new Mistake("tempered-at-245", "tempering at 245 °C for 55..58 HRC", h -> tempered(h, "245 ± 5 °C"), ROUTE,
                        TEMPER, "245 ± 5 °C", "characteristic-missed",
                        "leaves hardness 54.8..55.7 HRC (aim), 53.3..57.2 HRC with scatter; asked for 55..58 HRC",
                        "it loses the hardness it was bought for", true),
                new Mistake("tempered-at-350", "tempering at 350 °C for 55..58 HRC", h -> tempered(h, "350 ± 5 °C"), ROUTE,
                        TEMPER, "350 ± 5 °C", "cannot-be-told",
                        "tempering-loss has rows from 150..250 °C for tempered, asked for 345..355 °C",
                        "it loses the hardness it was bought for", true),
                new Mistake("no-quench", "the quench left out", h -> without(h, "155 quench-gas"), ROUTE, "160 ", "sub-zero",
                        "need-unmet", "structure is austenitised, sub-zero needs as-quenched",
                        "only a blade fresh from the quench gains by it", false),
                new Mistake("unwashed", "marking an unwashed blade", h -> without(h, "280 ultrasonic-wash"), ROUTE, "290 ",
                        "laser-mark", "need-unmet", "cleanness is compound, laser-mark needs clean-dry",
                        "grease burns in", true),
                new Mistake("short-rivet", "rivets that do not reach: the pair of a smaller knife",
                        h -> h.with(ROUTE, "            sealing: 0.6 ± 0.2 g", "            rivet: RV-5x12\n            sealing: 0.6 ± 0.2 g"),
                        ROUTE, "320 rivet-scales", "RV-5x12", "rivets-reach",
                        "make a grip of 13.07..13.73 mm; RV-5x12 takes 12.1..12.9 mm", "stay loose", false),
                new Mistake("shallow-counterbore", "rivets that do not reach: the counterbore too shallow",
                        h -> h.with(COOKS, "counterbore-to: 2.30 ± 0.10 mm", "counterbore-to: 1.80 ± 0.10 mm"), COOKS,
                        "310 make-scales", "1.80 ± 0.10 mm", "characteristic-missed",
                        "leaves grip 14.07..14.73 mm; asked for 13.4 ± 0.4 mm", "stay loose", true),
                new Mistake("unmeasured-angle", "an edge angle specified but never measured",
                        h -> without(h, "edge-angle     {"), COOKS, "each-side: ", "15 ± 1 °", "unmeasured",
                        "no step measures each-side", "known first by the buyer", true),
                new Mistake("angle-measured-early", "an edge angle specified but not measured after sharpening",
                        Mistakes::measuredBeforeHoning, ROUTE, "360 sharpen-in-cell", "edge-angle", "measured-too-early",
                        "each-side is measured here, but step 370 hone can change it after that",
                        "says nothing of the piece that is handed on", true),
                new Mistake("deep-scallop", "a scallop too deep for the flank where it is ground",
                        h -> scalloped(h, "0.30 ± 0.05 mm"), ROUTE, "265 scallop", "0.30 ± 0.05 mm", "scallop-leaves-steel",
                        "of steel", "a thin web breaks through", true),
                new Mistake("soft-skin", "grinding that leaves decarburised skin",
                        h -> h.with(COOKS, "3.60 ± 0.15 mm", "3.50 ± 0.15 mm"), COOKS, "230 taper-grind", "| at ",
                        "soft-skin-comes-off", "of soft skin stays on", "decarburised steel does not harden", false),
                new Mistake("wrong-dimension", "a unit of the wrong dimension",
                        h -> h.with(ROUTE, "soak:        15 (+3/-2) min", "soak:        15 (+3/-2) mm"), ROUTE, "150 harden",
                        "15 (+3/-2) mm", "wrong-dimension", "this is a length, a duration is asked for", "", false),
                new Mistake("misspelt-steel", "a misspelt steel",
                        h -> h.with(COOKS, "steel:        1.4116", "steel:        1.4161"), COOKS, "steel:", "1.4161",
                        "unknown-name", "no steel is named 1.4161", "", true),
                new Mistake("number-twice", "a step number used twice",
                        h -> h.with(ROUTE, "180 straighten at", "170 straighten at"), ROUTE, TEMPER, "170", "step-number-twice",
                        "step 170 stands already", "", true),
                new Mistake("ring", "a ring in like",
                        h -> h.with(WORKS, "\"Calliper 0-300\" {", "\"Calliper 0-300\" like radius-calliper {")
                                .with(WORKS, "radius jaws\" {", "radius jaws\" like calliper {"), WORKS,
                        "\"Calliper 0-300\" like ", "radius-calliper", "like-ring",
                        "calliper like radius-calliper like calliper", "none has any of its own", false),
                new Mistake("fahrenheit", "1050 °F typed for 1050 °C", h -> h.with(ROUTE, "1050 ± 8 °C", "1050 ± 8 °F"), ROUTE,
                        "150 harden", "1050 ± 8 °F", "outside-range", "outside the sensible range of temperature", "", true),
                new Mistake("beyond-the-grade", "a hardness beyond the grade",
                        h -> h.with(COOKS, "hardness:     55..58 HRC", "hardness:     60..63 HRC"), COOKS, "hardness:",
                        "60..63 HRC", "hardness-within-reach", "60..63 HRC is asked of 1.4116, which tempers to 54..57 HRC",
                        "the steel sets how hard a tempered edge can be", true),
                new Mistake("beyond-the-furnace", "a furnace asked beyond its limit",
                        h -> h.with(WORKS, "temperature: 400..1250 °C", "temperature: 400..1055 °C"), ROUTE, "150 harden",
                        "1050 ± 8 °C", "temperature-of-the-centre", "1050 ± 8 °C is asked of vacuum-1, which runs at 400..1055 °C",
                        "the controller stops at its limit", true),
                new Mistake("narrow-temperature", "a furnace that scatters more than the tolerance allows",
                        h -> h.with(ROUTE, "temperature: 1050 ± 8 °C", "temperature: 1050 ± 5 °C"), ROUTE, "150 harden",
                        "1050 ± 5 °C", "temperature-can-be-held", "whose load is within ± 6 K",
                        "a narrower tolerance holds on paper only", true),
                new Mistake("narrow-size", "a grinder that scatters more than the tolerance allows",
                        h -> h.with(COOKS, "edge-to:  0.33 ± 0.03 mm", "edge-to:  0.33 ± 0.01 mm"), COOKS, "230 taper-grind",
                        "0.33 ± 0.01 mm", "edge-size-can-be-held", "taper-4, which scatters by ± 0.025 mm",
                        "kept by sorting, not by setting", true));
    }

    static TrialHouse tempered(TrialHouse house, String temperature) {
        return house.with(ROUTE, TEMPER + "180 ± 5 °C", TEMPER + temperature);
    }

    /** The cook's knife with hollows ground into its flanks before it is satined. */
    static TrialHouse scalloped(TrialHouse house, String depth) {
        String scallops = "        scallops { depth: 0.25 ± 0.10 mm; height: 25 mm; pitch: 14 mm; from: 30 mm; to: 130 mm }\n";
        String step = """
                265 scallop at scallop-1 {
                    depth:      %s
                    above-edge: 25 mm
                    pitch:      14 mm
                    from:       30 mm
                    to:         130 mm
                    scallop-depth { gauge: depth-micrometer; sample: 5 per h; reaction: stop-and-sort }
                }
                """.formatted(depth).indent(8);
        String centre = """
                centre scallop-1 "Hollow-edge grinder 1" {
                    is: scallop-grinder; speed: 20..36 m/s; scatter: 0.02 mm; piece-heat: 90 °C; wear: "from risk assessment RA-13"
                }

                """;
        return house.with(WORKS, "// Gauges\n", centre + "// Gauges\n")
                .with(COOKS, "        edge { each-side", scallops + "        edge { each-side")
                .with(ROUTE, "        270 satin-finish", step + "        270 satin-finish");
    }

    private static TrialHouse measuredBeforeHoning(TrialHouse house) {
        String speed = "            speed:    100 ± 10 mm/s\n";
        return without(house, "edge-angle     {").with(ROUTE, speed, speed
                + "            edge-angle { gauge: goniometer; sample: 5 per h; reaction: rework; place: \"both sides\"; "
                + "accepted-ratio: 2; accepted-why: \"no goniometer reads better\"; guard-band: \"0.3 °\" }\n");
    }

    private static TrialHouse without(TrialHouse house, String begin) {
        return house.with(ROUTE, text -> without(text, begin));
    }

    /** A text without the step, entry or block that begins so, to its end. */
    static String without(String text, String begin) {
        int from = Stretch.once(text, begin).start();
        from = text.lastIndexOf('\n', from) + 1;
        int end = from;
        int depth = 0;
        char last;
        do {
            last = text.charAt(end++);
            depth += last == '{' ? 1 : last == '}' ? -1 : 0;
        } while (last != '\n' || depth > 0);
        return text.substring(0, from) + text.substring(end);
    }
}
