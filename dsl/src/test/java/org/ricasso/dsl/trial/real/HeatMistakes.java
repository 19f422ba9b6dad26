package org.ricasso.dsl.trial.real;

import static org.ricasso.dsl.trial.TrialHouse.COOKS;
import static org.ricasso.dsl.trial.TrialHouse.ROUTE;
import static org.ricasso.dsl.trial.real.RealMistake.moved;
import static org.ricasso.dsl.trial.real.RealMistake.without;

import java.util.List;

/** Mistakes 9 to 13: what happens to a hard blade. */
final class HeatMistakes {
    private HeatMistakes() {}

    static List<RealMistake> all() {
        return List.of(
                RealMistake.of("11-not-looked-for-cracks", "no crack check after straightening",
                        h -> without(without(h, ROUTE, "245 check-cracks"), COOKS, "change 245 check-cracks"),
                        Said.error("cracks-looked-for", "240 straighten", "straighten").mark("390 final-inspection", "final-inspection")
                                .says("nobody looks for cracks after the blade was last bent")
                                .offers("insert 245 check-cracks at crack-bay")),
                RealMistake.of("11-straightened-hard", "straightened before the temper",
                        h -> moved(without(h, ROUTE, "rework 200 to 180"), ROUTE, "180 straighten", 165, "160 sub-zero"),
                        Said.error("need-unmet", "165 straighten", "straighten").mark("155 quench-gas", "quench-gas")
                                .says("as-quenched").because("an untempered blade cracks when it is bent cold")
                                .offers("move step 165 straighten before step 190, as step 180")));
    }
}
