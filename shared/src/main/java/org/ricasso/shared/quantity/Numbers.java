package org.ricasso.shared.quantity;

/** How numbers are compared: at nine significant digits, so that rounding never decides a verdict. */
public final class Numbers {
    private static final double RELATIVE = 1e-9;
    /** What 0.3 mm - 0.1 mm - 0.2 mm leaves in metres is far below this, and is zero; no value of the trade is. */
    private static final double NOTHING = 1e-15;

    private Numbers() {}

    /** Negative, zero or positive as {@code a} is less than, equal to or greater than {@code b} at nine digits. */
    public static int compare(double a, double b) {
        if (a == b) {
            return 0;
        }
        if (!Double.isInfinite(a) && !Double.isInfinite(b)
                && Math.abs(a - b) <= Math.max(NOTHING, RELATIVE * Math.max(Math.abs(a), Math.abs(b)))) {
            return 0;
        }
        return a < b ? -1 : 1;
    }
}
