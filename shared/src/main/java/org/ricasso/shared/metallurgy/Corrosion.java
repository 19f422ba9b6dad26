package org.ricasso.shared.metallurgy;

/**
 * Pitting resistance equivalent, in mass %; contents as plain fractions. For hardened knives compute it on the matrix.
 * It is not meant to rank martensitic grades against each other (caution of the molybdenum trade association).
 */
public final class Corrosion {
    private Corrosion() {}

    /** {@code Cr + 3.3 (Mo + 0.5 W) + 16 N}; source: encyclopaedia and calculator pages, published. */
    public static double pren(double chromium, double molybdenum, double tungsten, double nitrogen) {
        return 100 * (chromium + 3.3 * (molybdenum + 0.5 * tungsten) + 16 * nitrogen);
    }
}
