package org.ricasso.shared.quality;

import org.ricasso.shared.calculation.Refusal;

/**
 * What a sample judged good or bad says about a lot much larger than it: the number of bad pieces found is binomial.
 * Shares are plain fractions.
 */
public final class AttributeSample {
    /** The largest sample counted out term by term. */
    public static final double LARGEST = 10_000;

    private AttributeSample() {}

    /**
     * Probability that a lot is accepted: at most {@code accept} bad pieces among {@code sample}. Computed from the
     * likeliest term outward, so that no term over- or underflows where it counts; good to about 1e-12.
     *
     * @param sample pieces drawn, a whole number 1..10,000
     * @param accept acceptance number, a whole number from 0
     * @param bad share of bad pieces in the lot, 0..1
     * @throws IllegalArgumentException if sample or accept is not whole
     */
    public static double acceptance(double sample, double accept, double bad) {
        int n = whole("the sample", sample, 1);
        int c = whole("the acceptance number", accept, 0);
        if (c >= n || bad == 0) {
            return 1;
        }
        if (bad == 1) {
            return 0;
        }
        int likeliest = (int) Math.min(n, (n + 1) * bad);
        double odds = bad / (1 - bad);
        double accepted = 0;
        double rejected = 0;
        double term = 1;
        for (int k = likeliest; k >= 0; k--) {
            if (k <= c) {
                accepted += term;
            } else {
                rejected += term;
            }
            term *= k / (odds * (n - k + 1));
        }
        term = 1;
        for (int k = likeliest + 1; k <= n; k++) {
            term *= odds * (n - k + 1) / k;
            if (k <= c) {
                accepted += term;
            } else {
                rejected += term;
            }
        }
        return accepted / (accepted + rejected);
    }

    /** Chance that a sample holds at least one bad piece: {@code 1 - (1 - p)^n}; arguments as {@link #acceptance}. */
    public static double detection(double sample, double bad) {
        int n = whole("the sample", sample, 1);
        return bad == 1 ? 1 : -StrictMath.expm1(n * StrictMath.log1p(-bad));
    }

    /**
     * The smallest sample that holds a bad piece with at least this chance, a whole number.
     *
     * @param bad share of bad pieces, above 0 and below 1
     * @param chance wanted chance, 0..1 exclusive
     */
    public static double sampleFor(double bad, double chance) {
        double exact = StrictMath.log1p(-chance) / StrictMath.log1p(-bad);
        // 1e-9 below a whole number is that number, not the next
        return Math.max(1, StrictMath.ceil(exact - 1e-9 * exact));
    }

    private static int whole(String what, double value, double least) {
        if (value != StrictMath.rint(value) || !(value >= least && value <= LARGEST)) {
            throw Refusal.outside(what, value, least, LARGEST, "(whole numbers)", 1);
        }
        return (int) value;
    }
}
