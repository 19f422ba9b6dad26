package org.ricasso.shared.metallurgy;

/**
 * Diffusion of carbon in austenite. As a bound on decarburisation it holds only where the steel is austenite and free
 * oxygen takes the carbon away: in vacuum nothing is lost, and below the transformation the carbon sits in carbides.
 * Real blades lose less: carbide must dissolve first, chromium holds carbon back, scale eats part of the skin.
 */
public final class CarbonDiffusion {
    private static final double PRE_EXPONENTIAL = 2.3e-5;
    private static final double ACTIVATION = 148e3;
    private static final double GAS_CONSTANT = 8.314;
    /** Twice the argument whose error function is 0.9. */
    private static final double NINE_TENTHS = 2.33;

    private CarbonDiffusion() {}

    /**
     * Diffusion coefficient of carbon in austenite: {@code 2.3e-5 exp(-148 kJ/mol / R T)} m²/s, about 1000..1573 K.
     * Source: W. D. Callister, Materials Science and Engineering, table of diffusion data; seen in public copies.
     *
     * @param temperature K
     */
    public static double diffusivity(double temperature) {
        return PRE_EXPONENTIAL * StrictMath.exp(-ACTIVATION / (GAS_CONSTANT * temperature));
    }

    /** Diffusion length {@code √(D t)}, metres; temperature in K, hold in s. */
    public static double length(double temperature, double hold) {
        return StrictMath.sqrt(diffusivity(temperature) * hold);
    }

    /**
     * Greatest depth, metres, at which a tenth of the carbon can be missing: {@code 2.33 √(D t)}, no carbon left at the
     * surface, no scale. Source: solution of the diffusion equation, exact for that case.
     */
    public static double decarburisationBound(double temperature, double hold) {
        return NINE_TENTHS * length(temperature, hold);
    }
}
