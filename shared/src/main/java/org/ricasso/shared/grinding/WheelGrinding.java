package org.ricasso.shared.grinding;

/**
 * Speeds, removal and burn in grinding, SI units. A wheel's speed is never set by a formula alone: the limit marked on
 * the wheel and the machine maker's manual come first.
 */
public final class WheelGrinding {
    private WheelGrinding() {}

    /** Peripheral speed {@code π D N}, m/s; diameter in m, turns per second. */
    public static double speed(double diameter, double turns) {
        return StrictMath.PI * diameter * turns;
    }

    /** Turns per second {@code v / (π D)} at which a wheel reaches a peripheral speed. */
    public static double turns(double speed, double diameter) {
        return speed / (StrictMath.PI * diameter);
    }

    /** Removal rate per width, {@code a vw}: depth of cut a and work speed vw; m³/(m·s). */
    public static double specificRemoval(double depth, double feed) {
        return depth * feed;
    }

    /** Removal rate {@code vw w a}, m³/s; width of cut w, in cylindrical grinding the cross-feed of a turn. */
    public static double removal(double depth, double feed, double width) {
        return depth * feed * width;
    }

    /** Time {@code V / (Q'w b)} in the cut for a volume, seconds. */
    public static double time(double volume, double specificRemoval, double width) {
        return volume / (specificRemoval * width);
    }

    /** Volume of wheel worn, {@code V / G}, without dressing. */
    public static double wear(double volume, double ratio) {
        return volume / ratio;
    }

    /** Energy per volume, {@code F v / Q}, J/m³: cutting force, wheel speed, removal rate. */
    public static double specificEnergy(double force, double speed, double removal) {
        return force * speed / removal;
    }

    /**
     * Energy per volume, J/m³, above which ground steel burns:
     * {@code 6.2 + 7.2 de^0.25 a^-0.75 vw^-0.5} J/mm³ with lengths in mm and speed in mm/s.
     * Source: form of S. Malkin, constants from memory.
     *
     * @param diameter equivalent wheel diameter de
     * @param depth depth of cut a
     * @param feed work speed vw
     */
    public static double burnThreshold(double diameter, double depth, double feed) {
        double perCubicMillimetre = 6.2 + 7.2 * StrictMath.pow(diameter * 1e3, 0.25)
                * StrictMath.pow(depth * 1e3, -0.75) * StrictMath.pow(feed * 1e3, -0.5);
        return perCubicMillimetre * 1e9;
    }
}
