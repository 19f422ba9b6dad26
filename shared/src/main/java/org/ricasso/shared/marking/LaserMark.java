package org.ricasso.shared.marking;

/** Energy terms of a laser mark, SI units. Exact; what a given energy does to a steel is found by trial. */
public final class LaserMark {
    private LaserMark() {}

    /** Energy of a pulse, {@code P / f}, joules. */
    public static double pulseEnergy(double power, double frequency) {
        return power / frequency;
    }

    /** Share of the spot that the next pulse covers again, {@code 1 - v / (f d)}; negative where spots stand apart. */
    public static double pulseOverlap(double speed, double frequency, double spot) {
        return 1 - speed / (frequency * spot);
    }

    /** Energy per length of line, {@code P / v}, J/m; also of a weld. */
    public static double lineEnergy(double power, double speed) {
        return power / speed;
    }

    /** Energy per area, {@code P / (v h)}, J/m², lines at distance h. */
    public static double areaEnergy(double power, double speed, double hatch) {
        return power / (speed * hatch);
    }
}
