package org.ricasso.shared.heat;

import org.ricasso.shared.calculation.Refusal;

/**
 * Heating and cooling of a plate so thin that it has one temperature, which holds while its Biot number is below 0.1.
 * Both faces take part; the ratio of volume to area is half the thickness. Temperatures in kelvins, all else in SI.
 * Source: F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 5; examples published.
 */
public final class LumpedBody {
    /** Stefan-Boltzmann constant, W/(m²·K⁴). */
    static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private LumpedBody() {}

    /** Biot number {@code h (t/2) / λ}: below 0.1 the plate may be taken as of one temperature. */
    public static double biot(double coefficient, double thickness, double conductivity) {
        return coefficient * thickness / 2 / conductivity;
    }

    /** Heat transfer coefficient by radiation: {@code ε σ (T + Ts)(T² + Ts²)}. */
    public static double radiativeCoefficient(double emissivity, double surface, double surroundings) {
        return emissivity * STEFAN_BOLTZMANN * (surface + surroundings)
                * (surface * surface + surroundings * surroundings);
    }

    /** Time constant {@code ρ c (t/2) / h}, seconds. */
    public static double timeConstant(double thickness, double coefficient, double density, double specificHeat) {
        return density * specificHeat * thickness / 2 / coefficient;
    }

    /**
     * Time to cool in a medium with a constant coefficient: {@code τ ln((T0 - T∞)/(T1 - T∞))}, seconds.
     *
     * @throws IllegalArgumentException unless {@code from >= to > medium}
     */
    public static double coolingTime(double thickness, double coefficient, double density, double specificHeat,
            double from, double to, double medium) {
        falling(from, to, medium);
        return timeConstant(thickness, coefficient, density, specificHeat)
                * StrictMath.log((from - medium) / (to - medium));
    }

    /**
     * Time to heat by radiation alone in a furnace of constant temperature, seconds; closed form of Incropera, eq. 5.18.
     *
     * @throws IllegalArgumentException unless {@code from <= to < furnace}
     */
    public static double radiantHeatingTime(double thickness, double emissivity, double furnace, double from, double to,
            double density, double specificHeat) {
        if (!(to < furnace)) {
            throw Refusal.outside("the temperature to reach", to, from, furnace, "K", 1);
        }
        if (!(from <= to)) {
            throw Refusal.outside("the temperature at the start", from, 0, to, "K", 1);
        }
        double scale = density * specificHeat * thickness / 2
                / (4 * emissivity * STEFAN_BOLTZMANN * furnace * furnace * furnace);
        return scale * (radiantAge(to / furnace) - radiantAge(from / furnace));
    }

    private static double radiantAge(double ratio) {
        return StrictMath.log((1 + ratio) / (1 - ratio)) + 2 * StrictMath.atan(ratio);
    }

    static void falling(double from, double to, double medium) {
        if (!(to > medium)) {
            throw Refusal.outside("the temperature to reach", to, medium, from, "K", 1);
        }
        if (!(from >= to)) {
            throw Refusal.outside("the temperature to reach", to, medium, from, "K", 1);
        }
    }
}
