package org.ricasso.shared.geometry;

import org.ricasso.shared.calculation.Refusal;

/**
 * Outline, volume and centre of mass of a blade whose height falls from heel to tip as {@code h0 (1 - (x/L)^p)}, which
 * tapers evenly from heel to tip and is ground flat to the full height. Lengths in metres. The fullness p is about
 * 2..3 for a cook's knife, 1..1.5 for a pointed carving knife, large for a cleaver.
 */
public final class BladeBody {
    private BladeBody() {}

    /** Area of the outline: {@code h0 L p / (p + 1)}; square metres. */
    public static double profileArea(double height, double length, double fullness) {
        return height * length * fullness / (fullness + 1);
    }

    /** Distance of the outline's centroid from the heel: {@code L (p + 1) / (2 (p + 2))}. */
    public static double profileCentroid(double length, double fullness) {
        return length * (fullness + 1) / (2 * (fullness + 2));
    }

    /**
     * Volume of the blade, cubic metres:
     * {@code (h0 L / 2) [(t0 + e) p/(p+1) - (t0 - t1) p/(2 (p+2))]}.
     *
     * @param height height h0 at the heel
     * @param length length L
     * @param fullness p
     * @param heel spine thickness t0 at the heel
     * @param tip spine thickness t1 at the tip, not above t0
     * @param behind thickness e behind the edge
     * @throws IllegalArgumentException if the tip is thicker than the heel
     */
    public static double volume(double height, double length, double fullness, double heel, double tip, double behind) {
        return height * length / 2 * zeroth(fullness, heel, tip, behind);
    }

    /** Distance of the blade's centre of mass in front of the heel; arguments and refusal as {@link #volume}. */
    public static double centreOfMass(double length, double fullness, double heel, double tip, double behind) {
        double p = fullness;
        double first = (heel + behind) * p / (2 * (p + 2)) - (heel - tip) * p / (3 * (p + 3));
        return length * first / zeroth(p, heel, tip, behind);
    }

    private static double zeroth(double p, double heel, double tip, double behind) {
        if (!(tip <= heel)) {
            throw Refusal.outside("the thickness at the tip", tip, 0, heel, "mm", 1e-3);
        }
        return (heel + behind) * p / (p + 1) - (heel - tip) * p / (2 * (p + 2));
    }
}
