package org.ricasso.shared.forging;

import org.ricasso.shared.calculation.Refusal;

/**
 * Force to upset a cylinder between flat dies, newtons; lengths in metres, stresses in pascals. With height h left,
 * volume V and diameter {@code D = √(4 V / π h)} the friction factor is {@code 1 + 0.4 μ D / h}.
 * Source: M. P. Groover, Fundamentals of Modern Manufacturing; worked examples published.
 */
public final class Upsetting {
    private Upsetting() {}

    /** The friction factor {@code 1 + 0.4 μ D / h}. */
    public static double frictionFactor(double friction, double diameter, double height) {
        return 1 + 0.4 * friction * diameter / height;
    }

    /**
     * Force for a material that hardens: flow stress {@code K ε^n} with {@code ε = ln(h0 / h)}.
     *
     * @param diameter diameter at the start
     * @param height height h0 at the start
     * @param to height h left
     * @param strength strength coefficient K
     * @param hardening strain-hardening exponent n
     * @param friction coefficient of friction μ
     * @throws IllegalArgumentException unless {@code to <= height}
     */
    public static double force(double diameter, double height, double to, double strength, double hardening,
            double friction) {
        if (!(to <= height)) {
            throw Refusal.outside("the height left", to, 0, height, "mm", 1e-3);
        }
        return force(diameter, height, to, strength * StrictMath.pow(StrictMath.log(height / to), hardening), friction);
    }

    /**
     * Force for a known flow stress, as in hot forging.
     *
     * @throws IllegalArgumentException unless {@code to <= height}
     */
    public static double force(double diameter, double height, double to, double flowStress, double friction) {
        if (!(to <= height)) {
            throw Refusal.outside("the height left", to, 0, height, "mm", 1e-3);
        }
        double area = StrictMath.PI / 4 * diameter * diameter * height / to;
        double wide = StrictMath.sqrt(4 * area / StrictMath.PI);
        return frictionFactor(friction, wide, to) * flowStress * area;
    }

    /**
     * Load of a closed die: {@code Kf Yf A}.
     *
     * @param area projected area A of part and flash land, m²
     * @param flowStress flow stress Yf at forging temperature, Pa
     * @param factor shape factor Kf: 3..5 simple without flash, 5..8 with flash, 8..12 complex (from memory)
     */
    public static double closedDieLoad(double area, double flowStress, double factor) {
        return factor * flowStress * area;
    }
}
