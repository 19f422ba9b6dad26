package org.ricasso.oracle;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Depth of soft skin on a face, at most: what heat leaves by the furnace's atmosphere, less what is taken off at least. Depths in
 * millimetres: forging by induction 0.05 to 0.15, annealing in air to 0.15 and in nitrogen to 0.03, hardening in air to 0.2 and
 * under gas to 0.05 (common practice; in vacuum none).
 */
final class Skin {
    private static final Map<String, Double> FORGE = Map.of("induction", 0.15, "gas", 0.15);
    private static final Map<String, Double> ANNEAL = Map.of("nitrogen", 0.03, "gas", 0.03, "vacuum", 0.0);
    private static final Map<String, Double> HARDEN = Map.of("nitrogen", 0.05, "gas", 0.05, "vacuum", 0.0);
    private final Map<String, Double> depth = new LinkedHashMap<>();

    /** What a heat adds. */
    void heat(String operation, String atmosphere) {
        double more = switch (operation) {
            case "heat-billet", "heat-in-furnace", "upset-bolster" -> FORGE.getOrDefault(atmosphere, 0.3);
            case "soft-anneal", "normalise" -> ANNEAL.getOrDefault(atmosphere, 0.15);
            case "harden", "harden-on-belt" -> HARDEN.getOrDefault(atmosphere, 0.2);
            default -> 0;
        };
        if (more > 0) {
            depth.replaceAll((of, d) -> d + more);
        }
    }

    void start(String of) {
        depth.put(of, 0.0);
    }

    /** What is taken off a face at least. */
    void off(String of, double least) {
        depth.computeIfPresent(of, (k, d) -> Math.max(0, d - Math.max(0, least)));
    }

    double of(String of) {
        return depth.getOrDefault(of, 0.0);
    }
}
