package org.ricasso.shared.geometry;

/**
 * The bevel of a symmetric edge, sharpened on both sides to the same angle. Lengths in metres; the angle is that of
 * one side to the blade's middle plane, in radians, 0 to 90° exclusive.
 */
public final class EdgeBevel {
    private EdgeBevel() {}

    /** Height of the bevel along the blade: {@code e / (2 tan α)}. */
    public static double height(double behind, double eachSide) {
        return behind / (2 * StrictMath.tan(eachSide));
    }

    /** Width of the bevel's face: {@code e / (2 sin α)}. */
    public static double width(double behind, double eachSide) {
        return behind / (2 * StrictMath.sin(eachSide));
    }

    /** The angle on each side that a bevel of this height has: {@code atan(e / (2 b))}. */
    public static double angle(double behind, double height) {
        return StrictMath.atan(behind / (2 * height));
    }

    /** Cross-section taken off by the first sharpening of a blunt edge: {@code e² / (4 tan α)}; square metres. */
    public static double firstSharpening(double behind, double eachSide) {
        return behind * behind / (4 * StrictMath.tan(eachSide));
    }
}
