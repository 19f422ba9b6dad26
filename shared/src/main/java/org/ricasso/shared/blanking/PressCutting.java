package org.ricasso.shared.blanking;

import org.ricasso.shared.calculation.Refusal;

/**
 * Blanking and piercing with press tools; lengths in metres, stress in pascals, forces in newtons.
 * Source: M. P. Groover, Fundamentals of Modern Manufacturing, sheet metal; exercise published.
 */
public final class PressCutting {
    private static final double LARGE_PITCH = 0.064;

    private PressCutting() {}

    /** Force {@code L t τ} to cut a whole perimeter at once, without shear on the tool and without stripping. */
    public static double force(double perimeter, double thickness, double shearStrength) {
        return perimeter * thickness * shearStrength;
    }

    /** Clearance on each side, {@code Ac t}; allowance Ac 0.045..0.075 by the softness of the sheet. */
    public static double clearance(double thickness, double allowance) {
        return allowance * thickness;
    }

    /**
     * Punch for a blank, whose size is the die's: {@code D - 2 Ac t}.
     *
     * @throws IllegalArgumentException if the clearance is wider than the blank
     */
    public static double punch(double blank, double thickness, double allowance) {
        double punch = blank - 2 * clearance(thickness, allowance);
        if (!(punch > 0)) {
            throw Refusal.outside("the clearance of both sides", blank - punch, 0, blank, "mm", 1e-3);
        }
        return punch;
    }

    /** Die for a hole, whose size is the punch's: {@code D + 2 Ac t}. */
    public static double die(double hole, double thickness, double allowance) {
        return hole + 2 * clearance(thickness, allowance);
    }

    /**
     * Pitch of parts along a strip: part and bridge, the bridge 1.25 t, or 1.5 t where that pitch is 64 mm or more.
     * Source: course notes on tool design, strip layout, published; for strip above 0.8 mm.
     */
    public static double stripPitch(double part, double thickness) {
        double pitch = part + 1.25 * thickness;
        return pitch < LARGE_PITCH ? pitch : part + 1.5 * thickness;
    }
}
