package org.ricasso.shared.calculation;

import static org.ricasso.shared.quantity.Base.CURRENT;
import static org.ricasso.shared.quantity.Base.LENGTH;
import static org.ricasso.shared.quantity.Base.MASS;
import static org.ricasso.shared.quantity.Base.TEMPERATURE;
import static org.ricasso.shared.quantity.Base.TIME;

import org.ricasso.shared.quantity.Base;
import org.ricasso.shared.quantity.Dimension;
import org.ricasso.shared.quantity.Measure;

/** What the arguments and results of engineering calculations measure, beyond the base quantities. */
public final class Measures {
    public static final Measure AREA = of(LENGTH, 2);
    public static final Measure VOLUME = of(LENGTH, 3);
    public static final Measure SPEED = of(LENGTH, 1, TIME, -1);
    public static final Measure FREQUENCY = of(TIME, -1);
    public static final Measure DENSITY = of(MASS, 1, LENGTH, -3);
    public static final Measure AREAL_MASS = of(MASS, 1, LENGTH, -2);
    public static final Measure FORCE = of(MASS, 1, LENGTH, 1, TIME, -2);
    /** Pressure, stress, strength, and energy per volume. */
    public static final Measure PRESSURE = of(MASS, 1, LENGTH, -1, TIME, -2);
    public static final Measure ENERGY = of(MASS, 1, LENGTH, 2, TIME, -2);
    public static final Measure POWER = of(MASS, 1, LENGTH, 2, TIME, -3);
    /** Energy per length, in J/m. */
    public static final Measure LINE_ENERGY = FORCE;
    /** Energy per area, in J/m². */
    public static final Measure AREA_ENERGY = of(MASS, 1, TIME, -2);
    /** Energy per mass, in J/kg. */
    public static final Measure SPECIFIC_ENERGY = of(LENGTH, 2, TIME, -2);
    /** Volume removed per time. */
    public static final Measure VOLUME_RATE = of(LENGTH, 3, TIME, -1);
    /** Volume removed per time and width, in m³/(m·s); also a diffusion coefficient, in m²/s. */
    public static final Measure AREA_RATE = of(LENGTH, 2, TIME, -1);
    /** In W/(m²·K). */
    public static final Measure HEAT_TRANSFER = of(MASS, 1, TIME, -3, TEMPERATURE, -1);
    /** In W/(m·K). */
    public static final Measure CONDUCTIVITY = of(MASS, 1, LENGTH, 1, TIME, -3, TEMPERATURE, -1);
    /** In J/(kg·K). */
    public static final Measure SPECIFIC_HEAT = of(LENGTH, 2, TIME, -2, TEMPERATURE, -1);
    /** In 1/K. */
    public static final Measure EXPANSION = of(TEMPERATURE, -1);
    /** In K/s. */
    public static final Measure HEATING_RATE = of(TEMPERATURE, 1, TIME, -1);
    public static final Measure VOLTAGE = of(MASS, 1, LENGTH, 2, TIME, -3, CURRENT, -1);
    public static final Measure RESISTANCE = of(MASS, 1, LENGTH, 2, TIME, -3, CURRENT, -2);

    private Measures() {}

    /** Bases and powers in turn. */
    private static Measure of(Object... powers) {
        Dimension dimension = Dimension.NUMBER;
        for (int i = 0; i < powers.length; i += 2) {
            dimension = dimension.times(Dimension.of((Base) powers[i]).power((Integer) powers[i + 1]));
        }
        return new Measure(dimension, false);
    }
}
