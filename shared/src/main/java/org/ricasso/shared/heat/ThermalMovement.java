package org.ricasso.shared.heat;

/** Movement by temperature. Lengths in metres, coefficients of expansion in 1/K, differences in K. */
public final class ThermalMovement {
    private ThermalMovement() {}

    /** Expansion {@code α L ΔT}; the coefficient is the mean over the range. */
    public static double expansion(double length, double coefficient, double rise) {
        return coefficient * length * rise;
    }

    /**
     * Bow of a strip that is warmer on one side: curvature {@code α ΔT / t}, bow {@code α ΔT L² / (8 t)} over the length.
     */
    public static double bow(double coefficient, double difference, double thickness, double length) {
        return coefficient * difference * length * length / (8 * thickness);
    }

    /** How much more the first of two joined parts grows over a length: {@code (α1 - α2) L ΔT}. */
    public static double mismatch(double first, double second, double length, double rise) {
        return (first - second) * length * rise;
    }

    /** Least radius a strip can be bent to and still spring back flat: {@code E t / (2 σ)}; moduli and stress in Pa. */
    public static double elasticRadius(double thickness, double modulus, double yield) {
        return modulus * thickness / (2 * yield);
    }
}
