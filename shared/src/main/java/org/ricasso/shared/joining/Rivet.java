package org.ricasso.shared.joining;

import org.ricasso.shared.calculation.Refusal;

/** Rivets and what they clamp; lengths in metres, stresses in pascals, forces in newtons. */
public final class Rivet {
    private Rivet() {}

    /**
     * Clamped thickness under the two heads of a full tang handle: {@code 2 (ts - tc) + tt}.
     *
     * @param scale thickness ts of one scale
     * @param counterbore depth tc of the counterbore
     * @param tang thickness tt of the tang
     * @throws IllegalArgumentException if the counterbore is deeper than the scale
     */
    public static double grip(double scale, double counterbore, double tang) {
        if (!(counterbore <= scale)) {
            throw Refusal.outside("the counterbore's depth", counterbore, 0, scale, "mm", 1e-3);
        }
        return 2 * (scale - counterbore) + tang;
    }

    /** Length of a solid rivet before forming its head: {@code G + 1.5 d}. Source: NAVEDTRA 14018, published. */
    public static double solidLength(double grip, double diameter) {
        return grip + 1.5 * diameter;
    }

    /**
     * Greatest pull that a pressed two-part rivet can resist, the tube fully plastic:
     * {@code μ σ ln(OD/ID) π d L}; an upper bound.
     *
     * @param yield yield stress σ of the tube
     * @param outside outer diameter OD of the tube
     * @param bore inner diameter ID of the tube, below OD
     * @param friction coefficient of friction μ
     * @param shank diameter d of the male part
     * @param engaged length L of the fit
     * @throws IllegalArgumentException if the bore is not smaller than the tube
     */
    public static double pullOut(double yield, double outside, double bore, double friction, double shank,
            double engaged) {
        if (!(bore <= outside)) {
            throw Refusal.outside("the tube's bore", bore, 0, outside, "mm", 1e-3);
        }
        double pressure = yield * StrictMath.log(outside / bore);
        return friction * pressure * StrictMath.PI * shank * engaged;
    }

    /**
     * Force that a head can press on a scale: {@code σ π/4 (D² - d²)}.
     *
     * @param strength compressive strength σ of the scale
     * @param head diameter D of the head
     * @param hole diameter d of the hole, not above D
     * @throws IllegalArgumentException if the hole is wider than the head
     */
    public static double headLimit(double strength, double head, double hole) {
        if (!(hole <= head)) {
            throw Refusal.outside("the hole", hole, 0, head, "mm", 1e-3);
        }
        return strength * StrictMath.PI / 4 * (head * head - hole * hole);
    }

    /** Shear load of rivets in one section each: {@code n π/4 d² τ}. */
    public static double shear(double rivets, double diameter, double shearStrength) {
        return rivets * StrictMath.PI / 4 * diameter * diameter * shearStrength;
    }
}
