package org.ricasso.shared.quality;

/** Where a hardness test may be made; lengths in metres. */
public final class HardnessTest {
    private HardnessTest() {}

    /**
     * Permanent depth of a Rockwell C indentation, {@code (100 - HRC) × 0.002 mm}: definition of the scale.
     *
     * @param hardness HRC, 20..70
     */
    public static double rockwellDepth(double hardness) {
        return (100 - hardness) * 2e-6;
    }

    /**
     * Least thickness for a Rockwell C test, ten times the depth: {@code 0.02 (100 - HRC) mm}, HRC 20..70.
     * Source: ISO 6508-1, from memory. ASTM E18 tables a somewhat smaller one.
     */
    public static double rockwellThickness(double hardness) {
        return 10 * rockwellDepth(hardness);
    }

    /** Least distance between the centres of two indentations: three diameters. Source: ISO 6508-1, from a manual. */
    public static double indentSpacing(double diameter) {
        return 3 * diameter;
    }

    /** Least distance from an indentation's centre to an edge: two and a half diameters. Source: as above. */
    public static double indentToEdge(double diameter) {
        return 2.5 * diameter;
    }
}
