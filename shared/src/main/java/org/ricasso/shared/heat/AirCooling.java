package org.ricasso.shared.heat;

import org.ricasso.shared.calculation.Refusal;

/**
 * A thin plate cooling in gas by convection and radiation: {@code ρ c (t/2) dT/dt = -(h + hr(T))(T - Ta)}. Temperatures
 * in kelvins, all else in SI; one temperature throughout, see {@link LumpedBody}.
 *
 * <p>With the logarithm of the excess temperature as variable the rate hardly changes, and the time is its integral,
 * taken by the rule of Gauss and Legendre over cells on a fixed grid: results are good to rounding, and rise and fall
 * with each figure as they should.
 *
 * @param convection heat transfer coefficient by convection, constant, positive
 * @param emissivity of the surface
 * @param surroundings temperature of gas and walls
 * @param thickness of the plate
 * @param density of the steel
 * @param specificHeat of the steel, constant
 */
public record AirCooling(double convection, double emissivity, double surroundings, double thickness, double density,
        double specificHeat) {
    private static final double CELL = 0.25;
    /** Below this logarithm of the excess temperature the plate is as cold as its surroundings. */
    private static final double COLD = -25;
    private static final double[] POINTS = {0, 0.538469310105683, 0.906179845938664};
    private static final double[] WEIGHTS = {0.568888888888889, 0.478628670499366, 0.236926885056189};

    /**
     * Time to cool from one temperature to a lower one, seconds.
     *
     * @throws IllegalArgumentException unless {@code from >= to > surroundings}
     */
    public double time(double from, double to) {
        LumpedBody.falling(from, to, surroundings);
        double end = StrictMath.log(to - surroundings);
        double excess = StrictMath.log(from - surroundings);
        double time = 0;
        while (excess > end) {
            double next = Math.max(end, below(excess));
            time += cellTime(next, excess);
            excess = next;
        }
        return time;
    }

    /**
     * Temperature after a time, K.
     *
     * @throws IllegalArgumentException unless {@code from > surroundings}
     */
    public double temperature(double from, double time) {
        if (!(from > surroundings)) {
            throw Refusal.outside("the temperature of the surroundings", surroundings, 0, from, "K", 1);
        }
        double excess = StrictMath.log(from - surroundings);
        double left = time;
        while (excess > COLD) {
            double next = below(excess);
            double cell = cellTime(next, excess);
            if (cell >= left) {
                return surroundings + StrictMath.exp(within(next, excess, left));
            }
            left -= cell;
            excess = next;
        }
        return surroundings;
    }

    /** Where within a cell the time is up, by halving. */
    private double within(double low, double high, double time) {
        double a = low;
        double b = high;
        for (int i = 0; i < 50; i++) {
            double middle = (a + b) / 2;
            if (cellTime(middle, high) > time) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return (a + b) / 2;
    }

    private static double below(double excess) {
        double floor = StrictMath.floor(excess / CELL) * CELL;
        return floor < excess ? floor : floor - CELL;
    }

    /** Time to cool between two logarithms of the excess temperature, not more than a cell apart. */
    private double cellTime(double low, double high) {
        double middle = (low + high) / 2;
        double half = (high - low) / 2;
        double sum = WEIGHTS[0] / rate(middle);
        for (int i = 1; i < POINTS.length; i++) {
            sum += WEIGHTS[i] * (1 / rate(middle - half * POINTS[i]) + 1 / rate(middle + half * POINTS[i]));
        }
        return sum * half;
    }

    /** How fast the logarithm of the excess temperature falls, 1/s. */
    private double rate(double excess) {
        double surface = surroundings + StrictMath.exp(excess);
        double coefficient = convection + LumpedBody.radiativeCoefficient(emissivity, surface, surroundings);
        return coefficient / (density * specificHeat * thickness / 2);
    }
}
