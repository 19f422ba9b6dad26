package org.ricasso.shared.joining;

/** Heat put in by welding, SI units. Exact by definition; the losses are in the efficiency. */
public final class Welding {
    private Welding() {}

    /** Heat of a resistance weld, {@code I² R t}, joules. */
    public static double resistanceHeat(double current, double resistance, double time) {
        return current * current * resistance * time;
    }

    /** Heat input of an arc weld per length, {@code U I η / v}, J/m. */
    public static double arcHeat(double voltage, double current, double efficiency, double speed) {
        return voltage * current * efficiency / speed;
    }
}
