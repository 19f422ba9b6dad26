package org.ricasso.shared.metallurgy;

import org.ricasso.shared.quantity.Interval;

/** Hardness of untempered martensite, HRC, from the carbon in the martensite (plain fraction). */
public final class MartensiteHardness {
    private static final double PERCENT = 100;
    /** Where the polynomial of ASTM A255 is greatest. */
    private static final double A255_TOP = 0.00665752797;

    private MartensiteHardness() {}

    /**
     * Just: {@code 20 + 60 √C} HRC, C in mass %, 0.1..0.6 %. Of the simple formulas it fits 13 % Cr steels best.
     * Source: E. Just, 1968, from memory.
     */
    public static double just(double carbon) {
        return 20 + 60 * StrictMath.sqrt(PERCENT * carbon);
    }

    /** The carbon that {@link #just} asks for a hardness, plain fraction; for 38.97..66.48 HRC. */
    public static double justCarbon(double hardness) {
        double root = (hardness - 20) / 60;
        return root * root / PERCENT;
    }

    /**
     * Initial hardness by ASTM A255 for 100 % martensite:
     * {@code 35.395 + 6.990 C + 312.330 C² - 821.744 C³ + 1015.479 C⁴ - 538.346 C⁵} HRC, 0.10..0.70 % C. Low-alloy
     * steels; runs 2 to 5 HRC low for chromium steels at 0.3..0.4 % C. Source: ASTM A255, polynomial from memory.
     */
    public static double astmA255(double carbon) {
        double c = PERCENT * carbon;
        return 35.395 + c * (6.990 + c * (312.330 + c * (-821.744 + c * (1015.479 - c * 538.346))));
    }

    /** The band form of {@link #astmA255}: it rises to its greatest value near 0.666 % C and falls a little behind. */
    static Interval astmA255(Interval carbon) {
        Interval ends = Interval.between(astmA255(carbon.least()), astmA255(carbon.most()));
        return carbon.least() < A255_TOP && A255_TOP < carbon.most() ? ends.hull(Interval.of(astmA255(A255_TOP))) : ends;
    }
}
