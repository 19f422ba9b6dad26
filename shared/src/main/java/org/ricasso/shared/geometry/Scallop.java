package org.ricasso.shared.geometry;

import org.ricasso.shared.calculation.Refusal;

/** Circular hollows: scallops on the flank and serrations in the edge. Lengths in metres. */
public final class Scallop {
    private Scallop() {}

    /**
     * Chord of a hollow that a round wheel leaves: {@code 2 √(2 R d - d²)}. Along the blade the radius is that of the
     * wheel's crown, upward that of the wheel.
     *
     * @param radius radius R
     * @param depth depth d, at most R
     * @throws IllegalArgumentException if the hollow is deeper than the radius
     */
    public static double chord(double radius, double depth) {
        if (!(depth <= radius)) {
            throw Refusal.outside("the depth of the hollow", depth, 0, radius, "mm", 1e-3);
        }
        return 2 * StrictMath.sqrt(depth * (2 * radius - depth));
    }

    /**
     * Depth of a hollow with this chord: {@code R - √(R² - c²/4)}.
     *
     * @throws IllegalArgumentException if the chord is longer than the circle is wide
     */
    public static double depth(double radius, double chord) {
        if (!(chord <= 2 * radius)) {
            throw Refusal.outside("the chord of the hollow", chord, 0, 2 * radius, "mm", 1e-3);
        }
        double square = chord * chord / 4;
        // R - √(R² - c²/4) without the loss of digits for a flat arc
        return square / (radius + StrictMath.sqrt(radius * radius - square));
    }

    /**
     * Length of a serrated edge over that of a straight one: {@code 2 r asin(p / 2r) / p}, arcs of radius r side by
     * side at pitch p.
     *
     * @throws IllegalArgumentException if the pitch is more than twice the radius
     */
    public static double serratedLength(double radius, double pitch) {
        if (!(pitch <= 2 * radius)) {
            throw Refusal.outside("the pitch", pitch, 0, 2 * radius, "mm", 1e-3);
        }
        return 2 * radius * StrictMath.asin(pitch / (2 * radius)) / pitch;
    }
}
