package org.ricasso.shared.metallurgy;

/**
 * Temperature at which martensite begins to form on cooling, kelvins, from what is dissolved in the austenite (plain
 * fractions). All formulas scatter by ± 20 to 30 K on real steels.
 */
public final class MartensiteStart {
    private static final double ZERO_CELSIUS = 273.15;
    private static final double PERCENT = 100;

    private MartensiteStart() {}

    /**
     * Andrews, linear: {@code 539 - 423 C - 30.4 Mn - 17.7 Ni - 12.1 Cr - 7.5 Mo} °C, mass %.
     *
     * <p>Holds for low-alloy steels, C to 0.6 %, Mn to 4.9 %, Ni to 5 %, Cr to 5 %, Mo to 5.4 % (limits from memory).
     * Source: K. W. Andrews, J. Iron Steel Inst. 203 (1965) 721; coefficients seen in a public copy.
     */
    public static double andrews(double carbon, double manganese, double nickel, double chromium, double molybdenum) {
        return ZERO_CELSIUS + 539
                - PERCENT * (423 * carbon + 30.4 * manganese + 17.7 * nickel + 12.1 * chromium + 7.5 * molybdenum);
    }

    /**
     * Andrews, with products:
     * {@code 512 - 453 C - 16.9 Ni + 15 Cr - 9.5 Mo + 217 C² - 71.5 C Mn - 67.6 C Cr} °C, mass %.
     *
     * <p>Range and source as {@link #andrews}. At 13 % Cr it still gives a number, some 60 K too high.
     */
    public static double andrewsProduct(double carbon, double manganese, double nickel, double chromium,
            double molybdenum) {
        double c = PERCENT * carbon;
        return ZERO_CELSIUS + 512 - 453 * c + 217 * c * c
                + PERCENT * (-16.9 * nickel + 15 * chromium - 9.5 * molybdenum - 71.5 * c * manganese - 67.6 * c * chromium);
    }

    /**
     * Finkler and Schirra: {@code 635 - 474 (C + 0.86 N) - 17 Cr - 33 Mn - 21 Mo - 17 Ni - 39 V - 11 W} °C, mass %,
     * without niobium, zirconium, tantalum and hafnium. Nitrogen lowers the temperature, as carbon does; a public copy
     * has the sign wrong.
     *
     * <p>Holds for martensitic steels with 8 to 14 % Cr in solution. Source: C. Finkler and M. Schirra, Steel Research
     * 67 (1996) 328; magnitudes seen in a public copy, structure from memory.
     */
    public static double finklerSchirra(double carbon, double nitrogen, double chromium, double manganese,
            double molybdenum, double nickel, double vanadium, double tungsten) {
        return ZERO_CELSIUS + 635 - PERCENT * (474 * (carbon + 0.86 * nitrogen) + 17 * chromium + 33 * manganese
                + 21 * molybdenum + 17 * nickel + 39 * vanadium + 11 * tungsten);
    }
}
