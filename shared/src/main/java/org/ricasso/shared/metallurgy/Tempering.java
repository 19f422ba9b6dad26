package org.ricasso.shared.metallurgy;

import org.ricasso.shared.calculation.Refusal;

/**
 * Equivalence of tempers by the parameter of Hollomon and Jaffe, {@code P = T (C + log10 t)}, T in kelvins, t in
 * hours. Not valid through secondary hardening (about 400..520 °C in chromium steels) and where retained austenite
 * decomposes.
 *
 * <p>Source: J. H. Hollomon and L. D. Jaffe, Trans. AIME 162 (1945) 223; the form is Larson and Miller's, Trans. ASME
 * 74 (1952) 765. Constant 20 is the usual default for alloy and stainless steels.
 */
public final class Tempering {
    /** The usual constant for alloy and stainless steels. */
    public static final double CONSTANT = 20;

    private static final double HOUR = 3600;
    private static final double LONGEST = 1e7 * HOUR;

    private Tempering() {}

    /**
     * The tempering parameter, kelvins.
     *
     * @param temperature K
     * @param hold seconds at temperature, positive; equal tempers add their times
     * @param constant C
     */
    public static double parameter(double temperature, double hold, double constant) {
        return temperature * (constant + StrictMath.log10(hold / HOUR));
    }

    /** The temperature, K, at which another hold, in seconds, tempers as much. */
    public static double equivalentTemperature(double temperature, double hold, double otherHold, double constant) {
        return parameter(temperature, hold, constant) / (constant + StrictMath.log10(otherHold / HOUR));
    }

    /**
     * The hold, in seconds, that tempers as much at another temperature, K.
     *
     * @throws IllegalArgumentException if that would last more than ten million hours: the tempers do not compare
     */
    public static double equivalentHold(double temperature, double hold, double otherTemperature, double constant) {
        return holdFor(parameter(temperature, hold, constant), otherTemperature, constant);
    }

    /**
     * The hold, in seconds, at a temperature for a parameter, both in K.
     *
     * @throws IllegalArgumentException if that would last more than ten million hours
     */
    public static double holdFor(double parameter, double temperature, double constant) {
        double hold = HOUR * StrictMath.pow(10, parameter / temperature - constant);
        if (!(hold <= LONGEST)) {
            throw Refusal.outside("the equivalent hold", hold, 0, LONGEST, "h", HOUR);
        }
        return hold;
    }

    /**
     * The hold, in seconds, at temperature that heating at a steady rate up to it is worth:
     * {@code T / (2.3 r (20 - log10 r))} hours, r in K/h. Source: Kirkaldy's form, seen in a public copy.
     *
     * @param temperature K
     * @param rate heating rate, K/s, positive
     */
    public static double rampHold(double temperature, double rate) {
        double perHour = rate * HOUR;
        return HOUR * temperature / (2.3 * perHour * (CONSTANT - StrictMath.log10(perHour)));
    }

    /**
     * The constant C for a carbon content of the martensite (plain fraction), {@code 21.3 - 5.8 C}, mass %, for
     * 0.25..1.2 %. Source: line through the values of Hollomon and Jaffe (1945), from memory.
     */
    public static double constant(double carbon) {
        return 21.3 - 5.8 * 100 * carbon;
    }
}
