package org.ricasso.dsl.trial;

import static org.ricasso.dsl.trial.RouteEdit.block;
import static org.ricasso.dsl.trial.RouteEdit.moved;
import static org.ricasso.dsl.trial.RouteEdit.without;
import static org.ricasso.dsl.trial.TrialHouse.COOKS;
import static org.ricasso.dsl.trial.TrialHouse.PARING;
import static org.ricasso.dsl.trial.TrialHouse.ROUTE;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A route with two mistakes far apart, as they happen on one day.
 *
 * @param good the house without them
 * @param id what its golden file is called
 * @param title what was done wrong
 * @param make the house with both, from the good one
 * @param first stretches that the first finding, in the order of the text, has in its name and its words
 * @param second the same for the second
 */
record TwoMistakes(TrialHouse good, String id, String title, UnaryOperator<TrialHouse> make, List<String> first, List<String> second) {
    private static final TrialHouse ONE = TrialHouse.single();
    private static final String BONING = "boning-150.ricasso";

    static List<TwoMistakes> all() {
        return List.of(
                new TwoMistakes(ONE, "cold-billet-and-late-wipe", "the billet is not heated; the knife is wiped after it was inspected",
                        h -> route(route(h, t -> without(t, "30 heat-billet")), t -> moved(t, "385 wipe-clean", 395, "390 final-inspection")),
                        List.of("need-unmet", "warmth is cold, roll-preform needs hot"),
                        List.of("need-unmet", "cleanness is compound, final-inspection needs clean-dry")),
                new TwoMistakes(ONE, "unwashed-and-unhoned", "no wash before the furnace; no honing",
                        h -> route(route(h, t -> without(t, "140 wash")), t -> without(t, "370 hone")),
                        List.of("need-unmet", "cleanness is wet, harden needs clean-dry"),
                        List.of("need-unmet", "edge-state is burred, inspect-edge needs honed")),
                new TwoMistakes(ONE, "no-quench-and-soft-joint", "no quench; the handle is ground before the sealant has set",
                        h -> route(route(h, t -> without(t, "155 quench-gas")), t -> moved(t, "330 let-set", 345, "340 grind-handle")),
                        List.of("need-unmet", "structure is austenitised, sub-zero needs as-quenched"),
                        List.of("need-unmet", "sealant is soft, grind-handle needs no-sealant or set")),
                new TwoMistakes(ONE, "bowed-and-mark-last", "blanks are not flattened; the mark comes after the acid",
                        h -> route(route(h, t -> without(t, "90 flatten")), t -> moved(t, "300 passivate", 285, "280 ultrasonic-wash")),
                        List.of("need-unmet", "straightness can be 0..1.5 mm, cut-outline needs max 0.5 mm"),
                        List.of("laser-mark-passivated", "the mark rusts first")),
                new TwoMistakes(ONE, "too-hot-and-unchecked", "tempered too hot; no crack check after straightening",
                        h -> h.with(ROUTE, "170 temper at temper-3 { temperature: 180 ± 5 °C", "170 temper at temper-3 { temperature: 240 ± 5 °C")
                                .with(COOKS, t -> omitted(t, "245 check-cracks")),
                        List.of("characteristic-missed", "asked for 55..58 HRC"),
                        List.of("cracks-looked-for", "nobody looks for cracks after the blade was last bent")),
                new TwoMistakes(ONE, "not-annealed-and-magnetic", "no soft anneal after forging; blades magnetic into the bath",
                        h -> route(route(h, t -> without(t, "70 soft-anneal")), t -> without(t, "275 demagnetise")),
                        List.of("need-unmet", "warmth is hot, descale needs cold"),
                        List.of("need-unmet", "magnetism is magnetised, ultrasonic-wash needs demagnetised")),
                new TwoMistakes(ONE, "straightened-hard-and-polished-late", "straightened before the temper; the handle polished after honing",
                        h -> route(route(h, t -> moved(without(t, "rework 200 to 180"), "180 straighten", 165, "160 sub-zero")),
                                t -> moved(t, "350 polish-handle", 372, "370 hone")),
                        List.of("need-unmet", "structure is as-quenched, straighten needs tempered"),
                        List.of("need-unmet", "stage is contoured, sharpen-in-cell needs finished")),
                new TwoMistakes(ONE, "ground-unchecked-and-packed-early", "cracks looked for after grinding; packed before the inspection",
                        h -> paring(paring(h, t -> moved(t, "140 check-cracks", 155, "150 taper-grind")),
                                t -> moved(t, "350 pack", 335, "330 wipe-clean")),
                        List.of("need-unmet", "cracks is unchecked, taper-grind needs sound"),
                        List.of("need-unmet", "inspection is open, pack needs passed")),
                new TwoMistakes(ONE, "electrolyte-and-fresh-handle", "etched and not neutralised; the handle measured before it has rested",
                        h -> paring(paring(h, t -> without(t, "220 neutralise")),
                                t -> moved(t, "270 condition-handle", 285, "280 check-handle")),
                        List.of("need-unmet", "cleanness is electrolyte, passivate needs clean-dry"),
                        List.of("need-unmet", "conditioned is fresh, check-handle needs rested")),
                new TwoMistakes(ONE, "wet-granulate-and-early-angle", "granulate not dried; the edge inspected before honing",
                        h -> paring(paring(h, t -> without(t, "240 dry-granulate")),
                                t -> moved(t, "310 inspect-edge", 295, "290 sharpen-on-belt")),
                        List.of("need-unmet", "granulate is undried, mould-handle needs dried"),
                        List.of("need-unmet", "edge-state is burred, inspect-edge needs honed")),
                new TwoMistakes(ONE, "not-tempered-and-not-wiped", "no temper; the knife inspected with paste on it",
                        h -> route(route(h, t -> without(t, "170 temper")), t -> without(t, "385 wipe-clean")),
                        List.of("need-unmet", "structure is as-quenched, straighten needs tempered"),
                        List.of("need-unmet", "cleanness is compound, final-inspection needs clean-dry")),
                new TwoMistakes(TrialHouse.whole(), "burr-and-untreated-print", "blanks are not deburred; the handle printed without plasma",
                        h -> h.with(BONING, t -> without(without(t, "40 deburr"), "300 plasma-treat")),
                        List.of("need-unmet", "burr can be 0..0.09 mm, roll-flat needs max 0.05 mm"),
                        List.of("print-takes-hold", "comes untreated")));
    }

    TrialHouse house() {
        return make.apply(good);
    }

    private static TrialHouse route(TrialHouse house, UnaryOperator<String> edit) {
        return house.with(ROUTE, edit);
    }

    private static TrialHouse paring(TrialHouse house, UnaryOperator<String> edit) {
        return house.with(PARING, edit);
    }

    /** A step that is taken over and changed is left out instead. */
    private static String omitted(String text, String step) {
        Stretch change = block(text, "change " + step);
        return text.substring(0, change.start()) + "        omit " + step + "\n" + text.substring(change.end());
    }

    @Override
    public String toString() {
        return title;
    }
}
