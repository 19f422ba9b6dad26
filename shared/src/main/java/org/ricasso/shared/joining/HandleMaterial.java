package org.ricasso.shared.joining;

/** Movement and stress of handle materials on the tang. */
public final class HandleMaterial {
    private HandleMaterial() {}

    /**
     * Change in width of wood by moisture: {@code D C ΔM}, metres.
     * Source: Wood Handbook, GTR-190, table 13-5, published.
     *
     * @param width width D across the grain, m
     * @param coefficient dimensional change coefficient C per percent of moisture, as the Wood Handbook prints it
     *     (beech, tangential: 0.00431)
     * @param change change ΔM in moisture content, plain fraction (0.04 for 4 %)
     */
    public static double woodMovement(double width, double coefficient, double change) {
        return width * coefficient * change * 100;
    }

    /**
     * Peak over mean shear stress in a lap joint of two equal parts, by Volkersen: {@code (ωl/2) coth(ωl/2)} with
     * {@code ω = √(2 G / (ta E t))}. Source: textbook formula from memory.
     *
     * @param shearModulus G of the adhesive, Pa
     * @param layer thickness ta of the adhesive, m
     * @param modulus E of the parts, Pa
     * @param thickness t of each part, m
     * @param overlap length l of the joint, m
     */
    public static double gluePeak(double shearModulus, double layer, double modulus, double thickness,
            double overlap) {
        double half = StrictMath.sqrt(2 * shearModulus / (layer * modulus * thickness)) * overlap / 2;
        return half == 0 ? 1 : half / StrictMath.tanh(half);
    }
}
