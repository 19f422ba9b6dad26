package org.ricasso.shared.marking;

/**
 * Metal dissolved by direct current, by Faraday's law; SI units. The black mark of alternating current is an oxide and
 * no loss of metal: the law says nothing about its depth.
 */
public final class Electrolysis {
    /** Faraday constant, C/mol. */
    public static final double FARADAY = 96485;
    /** Mass of iron dissolved per charge, valence 2, kg/C. */
    public static final double IRON = equivalent(0.05585, 2);

    private Electrolysis() {}

    /** Electrochemical equivalent {@code M / (z F)}, kg/C; molar mass in kg/mol. */
    public static double equivalent(double molarMass, double valence) {
        return molarMass / (valence * FARADAY);
    }

    /**
     * Depth etched into steel by direct current, taken as iron: {@code k I t η / (ρ A)}, metres.
     *
     * @param current I, A
     * @param time t, s
     * @param efficiency current efficiency η, a plain fraction and the works' own figure
     * @param area area A of the mark, m²
     * @param density ρ of the steel, kg/m³
     */
    public static double depth(double current, double time, double efficiency, double area, double density) {
        return IRON * current * time * efficiency / (density * area);
    }
}
