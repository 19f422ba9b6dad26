package org.ricasso.shared.forging;

/** Stock for a forging; volumes in m³, density in kg/m³, allowances as plain fractions. */
public final class Stock {
    private Stock() {}

    /**
     * Mass of the billet: {@code ((Vp (1 + f) + Vt)(1 + s)) ρ}, kilograms.
     *
     * @param part volume Vp of the part with its allowances
     * @param flash flash f, fraction of the part
     * @param tong volume Vt of the tong hold
     * @param scale loss s to scale, fraction
     */
    public static double billetMass(double part, double flash, double tong, double scale, double density) {
        return (part * (1 + flash) + tong) * (1 + scale) * density;
    }

    /** Length of a bar with this cross-section and mass: {@code m / (ρ A)}, metres. */
    public static double barLength(double mass, double area, double density) {
        return mass / (density * area);
    }
}
