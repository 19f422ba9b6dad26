package org.ricasso.shared.metallurgy;

/** Grain size number of ASTM E112; formulas from memory. */
public final class GrainSize {
    private static final double LOG_TWO = StrictMath.log(2);

    private GrainSize() {}

    /** From the grains counted in a square inch at a hundredfold: {@code N = 2^(G - 1)}. */
    public static double fromCount(double grains) {
        return 1 + StrictMath.log(grains) / LOG_TWO;
    }

    /** From the mean intercept, metres: {@code G = -6.6439 log10(l / mm) - 3.288}. */
    public static double fromIntercept(double intercept) {
        return -6.6439 * StrictMath.log10(intercept * 1e3) - 3.288;
    }
}
