package org.ricasso.dsl.trial.real;

import static org.ricasso.dsl.trial.TrialHouse.COOKS;

import java.util.List;

/** Mistakes 1 to 4: grade, hardness that is asked, and how it is tested. */
final class SteelMistakes {
    private SteelMistakes() {}

    static List<RealMistake> all() {
        return List.of(
                RealMistake.of("03-band-too-narrow", "2 HRC asked, with a bench that reads to 1",
                        h -> h.with(COOKS, "hardness: 55..58 HRC", "hardness: 56..58 HRC"),
                        Said.warning("gauge-can-prove-the-limit", "hardness:", "56..58 HRC")
                                .mark("gauge rockwell-c", "1.0 HRC").mark("200 test-hardness", "hardness")
                                .says("2.0 HRC wide", "± 1.0 HRC", "no reading proves hardness")
                                .because("agree in writing with the buyer who bears the risk")
                                .offers("set blade.hardness to 55..59 HRC")));
    }
}
