package org.ricasso.dsl.trial.real;

import static org.ricasso.dsl.trial.TrialHouse.COOKS;
import static org.ricasso.dsl.trial.TrialHouse.SIZES;

import java.util.List;
import org.ricasso.dsl.trial.TrialHouse;

/** Mistake 22: die, program, artwork, guard and box of another size or for other work. */
final class ToolMistakes {
    private ToolMistakes() {}

    static List<RealMistake> all() {
        return List.of(
                new RealMistake("22-die-of-another-size", "the 200's die in the row of the 160", TrialHouse.whole(),
                        h -> h.with(SIZES, "| cooks-160 | D-2116 ", "| cooks-160 | D-2120 "),
                        List.of(Said.error("tool-fits", "| cooks-160 |", "D-2120").mark("die D-2120", "cooks-200")
                                .mark("| cooks-160 |", "cooks-160").says("D-2120 fits cooks-200", "this knife is cooks-160")
                                .offers("set die of step 50 to D-2116"))),
                RealMistake.of("22-trim-tool-for-die", "the trim tool where the forging die belongs",
                        h -> h.with(COOKS, "die:        D-2120", "die:        T-2120"),
                        Said.error("tool-of-this-work", "die:", "T-2120").mark("die T-2120", "trimming")
                                .says("T-2120 is made for trimming", "this step does die-forging").offers("set die of step 50 to D-2120")),
                RealMistake.of("22-program-of-another-knife", "the paring knife's program at the taper grinder",
                        h -> h.with(COOKS, "program: TG-2120-v7", "program: TG-1109-v5"),
                        Said.error("tool-fits", "program:", "TG-1109-v5").mark("program TG-1109-v5", "paring-90, customer-90")
                                .says("this knife is cooks-200").offers("set program of step 230 to TG-2120-v7")),
                RealMistake.of("22-program-of-another-size", "the 160's program at the sharpening cell",
                        h -> h.with(COOKS, "program:  SH-2120-v4", "program:  SH-2116-v2"),
                        Said.error("tool-fits", "program:", "SH-2116-v2").mark("program SH-2116-v2", "cooks-160")
                                .offers("set program of step 360 to SH-2120-v4")),
                RealMistake.of("22-guard-of-another-knife", "the paring knife's guard in the specification",
                        h -> h.with(COOKS, "guard:   guard-205", "guard:   blister-guard-95"),
                        Said.error("guard-fits", "guard:", "blister-guard-95").mark("guard blister-guard-95", "paring-90, customer-90")
                                .says("blister-guard-95 fits paring-90, customer-90").offers("set guard to guard-205")),
                RealMistake.of("22-box-of-another-knife", "the paring knife's box at the end",
                        h -> h.with(COOKS, "carton: box-205", "carton: blister-90"),
                        Said.error("tool-fits", "carton:", "blister-90").mark("carton blister-90", "paring-90, customer-90")
                                .offers("set carton of step 400 to box-205")),
                RealMistake.of("22-artwork-of-another-size", "the 160's file at the marking laser",
                        h -> h.with(COOKS, "file: M-2120-C", "file: M-2116-C"),
                        Said.error("tool-fits", "file:", "M-2116-C").mark("artwork M-2116-C", "cooks-160")
                                .offers("set file of step 290 to M-2120-C")),
                RealMistake.of("22-mark-of-another-size", "the 160's artwork in the specification",
                        h -> h.with(COOKS, "artwork:      M-2120-C", "artwork:      M-2116-C"),
                        Said.error("artwork-fits", "artwork:", "M-2116-C").mark("artwork M-2116-C", "cooks-160")
                                .offers("set mark.artwork to M-2120-C")),
                RealMistake.of("22-unknown-die", "a slip in the number of the die",
                        h -> h.with(COOKS, "die:        D-2120", "die:        D-2102"),
                        Said.error("unknown-name", "die:", "D-2102").says("no die is named D-2102").offers("write D-2120")
                                .advises("or is it D-2116", "or is it D-2123")));
    }
}
