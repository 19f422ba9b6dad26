package org.ricasso.shared.heat;

/** Heat and power for a load, with the efficiency of the furnace as a plain fraction. */
public final class Heating {
    private Heating() {}

    /** Energy {@code m c ΔT / η}, joules; the mass includes racks and trays, c is the mean over the range. */
    public static double energy(double mass, double specificHeat, double rise, double efficiency) {
        return mass * specificHeat * rise / efficiency;
    }

    /** Power {@code m c ΔT / (η t)}, watts, to heat a piece within a time. */
    public static double power(double mass, double specificHeat, double rise, double time, double efficiency) {
        return energy(mass, specificHeat, rise, efficiency) / time;
    }
}
