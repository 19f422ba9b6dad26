package org.ricasso.shared.blanking;

/** Cutting by laser, in SI units. */
public final class LaserCutting {
    private LaserCutting() {}

    /** Time {@code L / v + np tp + nm tm}: the cut, the pierces and the moves between, seconds. */
    public static double time(double length, double speed, double pierces, double pierceTime, double moves,
            double moveTime) {
        return length / speed + pierces * pierceTime + moves * moveTime;
    }

    /**
     * Speed by energy balance, {@code ε P / (ρ H w t)}, m/s: a lower bound, since thin sheet takes up more of the beam.
     *
     * @param power beam power P, W
     * @param coupling share ε of the power that melts steel, 0.05..0.15 for nitrogen on stainless steel
     * @param density ρ, kg/m³
     * @param melting energy H to heat and melt, J/kg
     * @param kerf width w of the cut, m
     * @param thickness t of the sheet, m
     */
    public static double speed(double power, double coupling, double density, double melting, double kerf,
            double thickness) {
        return coupling * power / (density * melting * kerf * thickness);
    }
}
