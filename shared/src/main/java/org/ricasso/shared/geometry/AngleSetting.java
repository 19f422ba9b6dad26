package org.ricasso.shared.geometry;

import org.ricasso.shared.calculation.Refusal;

/**
 * How wheel, stone and fixture are set for an edge angle. Lengths in metres; angles in radians, per side. Plain
 * geometry of points: radii of support bars and offsets of a fixture are added by who sets it.
 */
public final class AngleSetting {
    private static final double STEEPEST = StrictMath.toRadians(60);

    private AngleSetting() {}

    /**
     * Distance from support bar to wheel centre for an angle: {@code √(R² + P² + 2 R P sin α)}.
     *
     * @param radius wheel radius R
     * @param reach distance P from bar to edge, along the blade
     * @param eachSide angle α between the blade and the wheel's tangent at the edge
     */
    public static double wheelJigDistance(double radius, double reach, double eachSide) {
        return StrictMath.sqrt(radius * radius + reach * reach + 2 * radius * reach * StrictMath.sin(eachSide));
    }

    /**
     * The angle that a setting gives, as after wear: {@code asin((D² - R² - P²) / (2 R P))}.
     *
     * @param distance distance D from bar to wheel centre
     * @throws IllegalArgumentException if no angle of 0..60° belongs to these lengths
     */
    public static double wheelJigAngle(double radius, double reach, double distance) {
        double sine = (distance * distance - radius * radius - reach * reach) / (2 * radius * reach);
        double tolerance = 1e-9;
        if (!(sine >= -tolerance && sine <= StrictMath.sin(STEEPEST) + tolerance)) {
            throw Refusal.outside("the distance from bar to wheel centre", distance,
                    wheelJigDistance(radius, reach, 0), wheelJigDistance(radius, reach, STEEPEST), "mm", 1e-3);
        }
        return StrictMath.asin(Math.max(0, sine));
    }

    /** Centre distance of two equal wheels that interlock to a notch: {@code 2 R cos α}. */
    public static double twinWheelDistance(double radius, double eachSide) {
        return 2 * radius * StrictMath.cos(eachSide);
    }

    /** Height of the spine's middle above a flat stone: {@code h sin α}, h the blade's height from edge to spine. */
    public static double stoneSpineHeight(double height, double eachSide) {
        return height * StrictMath.sin(eachSide);
    }

    /** Height of a guided rod's pivot above the edge: {@code L tan α}, L the level distance from pivot to edge. */
    public static double guidedRodHeight(double reach, double eachSide) {
        return reach * StrictMath.tan(eachSide);
    }
}
