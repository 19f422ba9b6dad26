package org.ricasso.shared.geometry;

import org.ricasso.shared.calculation.Refusal;
import org.ricasso.shared.quantity.Interval;

/**
 * The flank of a blade that is ground flat on both sides, from the shoulder of the edge to the spine. Lengths in
 * metres, heights from the shoulder up, angles in radians per side.
 */
public final class Flank {
    private Flank() {}

    /**
     * Local thickness of a full flat ground blade at a height above the edge: {@code e + (t - e) y / g}.
     *
     * @param spine thickness t at the top of the ground flank
     * @param behind thickness e behind the edge
     * @param height height g of the ground flank, positive
     * @param at height y above the edge, 0..g
     * @throws IllegalArgumentException if {@code at} lies above the flank
     */
    public static double thickness(double spine, double behind, double height, double at) {
        if (!(at <= height)) {
            throw Refusal.outside("the height above the edge", at, 0, height, "mm", 1e-3);
        }
        return behind + (spine - behind) * at / height;
    }

    /**
     * Thickness of a sharpened blade at a distance above the final edge, such as 1 mm. Within the edge bevel it is
     * {@code 2 d tan α}, above it {@code e + (d - b)(t - e)/g} with the bevel's height {@code b = e / (2 tan α)}.
     *
     * @param spine thickness t at the top of the flank, not below {@code behind}
     * @param behind thickness e behind the edge
     * @param height height g of the flank
     * @param eachSide edge angle α on each side
     * @param at distance d above the edge, 0..g
     * @throws IllegalArgumentException if {@code at} lies above the flank, or the spine is thinner than the shoulder
     */
    public static double thicknessAboveEdge(double spine, double behind, double height, double eachSide, double at) {
        if (!(at <= height)) {
            throw Refusal.outside("the distance above the edge", at, 0, height, "mm", 1e-3);
        }
        if (!(spine >= behind)) {
            throw Refusal.outside("the thickness behind the edge", behind, 0, spine, "mm", 1e-3);
        }
        double bevel = EdgeBevel.height(behind, eachSide);
        return at <= bevel ? 2 * at * StrictMath.tan(eachSide) : behind + (at - bevel) * (spine - behind) / height;
    }

    /**
     * The band form of {@link #thicknessAboveEdge}: as a function of the thickness behind the edge it is a parabola
     * with one lowest point while the bevel is lower than the distance, and level beyond.
     */
    static Interval thicknessAboveEdge(Interval spine, Interval behind, Interval height, Interval eachSide,
            Interval at) {
        double most = Math.max(
                thicknessAboveEdge(spine.most(), behind.least(), height.least(), eachSide.most(), at.most()),
                thicknessAboveEdge(spine.most(), behind.most(), height.least(), eachSide.most(), at.most()));
        double bevelPerThickness = 1 / (2 * StrictMath.tan(eachSide.least()));
        double lowest = Interval.of((spine.least() * bevelPerThickness + at.least() - height.most())
                / (2 * bevelPerThickness)).clampedTo(behind).least();
        double least = Double.POSITIVE_INFINITY;
        for (double edge : new double[] {behind.least(), behind.most(), lowest}) {
            least = Math.min(least,
                    thicknessAboveEdge(spine.least(), edge, height.most(), eachSide.least(), at.least()));
        }
        // every corner must hold, not only those where the extremes lie
        thicknessAboveEdge(spine.least(), behind.most(), height.least(), eachSide.least(), at.most());
        return new Interval(least, most);
    }

    /**
     * Half the included angle of the flanks: {@code atan((t - e) / (2 g))}.
     *
     * @throws IllegalArgumentException if the spine is thinner than the shoulder of the edge
     */
    public static double angle(double spine, double behind, double height) {
        if (!(spine >= behind)) {
            throw Refusal.outside("the thickness behind the edge", behind, 0, spine, "mm", 1e-3);
        }
        return StrictMath.atan((spine - behind) / (2 * height));
    }

    /**
     * Area of a cross-section whose flanks are ground flat up to a height: {@code t h - g (t - e) / 2}; square metres.
     *
     * @param spine thickness t of the unground part
     * @param behind thickness e behind the edge, not above {@code spine}
     * @param height height h of the blade
     * @param ground height g of the ground flank, not above h
     * @throws IllegalArgumentException if the flank is higher than the blade or the edge thicker than the spine
     */
    public static double sectionArea(double spine, double behind, double height, double ground) {
        if (!(ground <= height)) {
            throw Refusal.outside("the height of the ground flank", ground, 0, height, "mm", 1e-3);
        }
        if (!(spine >= behind)) {
            throw Refusal.outside("the thickness behind the edge", behind, 0, spine, "mm", 1e-3);
        }
        return spine * height - ground * (spine - behind) / 2;
    }

    /**
     * Thickness in the middle of a hollow ground flank: {@code (t + e)/2 - 2 s}, sagitta {@code s = R - √(R² - g²/4)}.
     * Below zero the two hollows meet.
     *
     * @param spine thickness t at the top of the ground zone
     * @param behind thickness e behind the edge
     * @param ground height g of the ground zone, at most 2 R
     * @param radius radius R of the wheel
     * @throws IllegalArgumentException if the zone is higher than the wheel
     */
    public static double hollowThickness(double spine, double behind, double ground, double radius) {
        return (spine + behind) / 2 - 2 * Scallop.depth(radius, ground);
    }
}
