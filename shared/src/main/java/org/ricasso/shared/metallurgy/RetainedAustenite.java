package org.ricasso.shared.metallurgy;

/**
 * Austenite that does not transform on cooling, by Koistinen and Marburger: {@code f = exp(-0.011 (Ms - Tq))}. Valid
 * for athermal martensite of plain and low-alloy steels with about 0.4..1.1 % C; for chromium steels an estimate,
 * ± 5 percentage points above 10 %. The fraction is that of the matrix, carbides not counted. Above 0.6 % dissolved
 * carbon the martensite start by linear formulas is too low and the fraction too high.
 *
 * <p>Source: D. P. Koistinen and R. E. Marburger, Acta Metall. 7 (1959) 59; constant seen in a public copy.
 */
public final class RetainedAustenite {
    private static final double PER_KELVIN = 0.011;

    private RetainedAustenite() {}

    /**
     * The fraction retained; 1 at and above the martensite start.
     *
     * @param martensiteStart martensite start, K
     * @param coldest the lowest temperature reached before the first temper, K
     */
    public static double fraction(double martensiteStart, double coldest) {
        return coldest >= martensiteStart ? 1 : StrictMath.exp(-PER_KELVIN * (martensiteStart - coldest));
    }

    /**
     * The temperature to cool to for a fraction retained, K.
     *
     * @param martensiteStart martensite start, K
     * @param fraction fraction retained, above 0, at most 1
     */
    public static double coldestFor(double martensiteStart, double fraction) {
        return martensiteStart + StrictMath.log(fraction) / PER_KELVIN;
    }
}
