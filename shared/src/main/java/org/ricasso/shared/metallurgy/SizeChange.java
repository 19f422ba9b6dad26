package org.ricasso.shared.metallurgy;

/** Growth by transformation, as plain fractions of volume or length; carbon as the plain fraction in the phase. */
public final class SizeChange {
    private static final double PERCENT = 100;

    private SizeChange() {}

    /** Volume, austenite to martensite: {@code 4.64 - 0.53 C} %, C in mass %. Source: ASM Handbook 4, published. */
    public static double austeniteToMartensite(double carbon) {
        return (4.64 - 0.53 * PERCENT * carbon) / PERCENT;
    }

    /** Volume, spheroidised to martensite: {@code 1.68 C} %. Source: B. S. Lement (1959), from memory. */
    public static double spheroidisedToMartensite(double carbon) {
        return 1.68 * carbon;
    }

    /**
     * Growth in length by hardening from the annealed state: a third of the volume change of the martensite less what
     * the retained austenite keeps back.
     *
     * @param carbon carbon dissolved, plain fraction
     * @param retained retained austenite, plain fraction
     */
    public static double hardening(double carbon, double retained) {
        return (spheroidisedToMartensite(carbon) - retained * austeniteToMartensite(carbon)) / 3;
    }
}
