package org.ricasso.shared.metallurgy;

/** Metal lost to scale in a furnace. */
public final class ScaleLoss {
    private ScaleLoss() {}

    /**
     * Depth of metal lost, metres, from the oxygen taken up: {@code w / ((f - 1) ρ)}.
     * Source: Tetsu-to-Hagane 40 (1954) 592, relation published.
     *
     * @param uptake oxygen w per area, kg/m²
     * @param ratio mass of scale per mass of iron in it, 1.2865 for FeO
     * @param density of the steel, kg/m³
     */
    public static double depth(double uptake, double ratio, double density) {
        return uptake / ((ratio - 1) * density);
    }
}
