package org.ricasso.plugin.report.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.syntax.Expression;

/**
 * Margins computed again from the stored bands, without a call of ours: the distance between the ends that a comparison
 * looks at, along an axis the least at the stations of both sides, straight between stations.
 */
final class Distance {
    private static final double FAR = 1e300;
    private final JsonNode units;

    Distance(JsonNode units) {
        this.units = units;
    }

    /** The sign of a comparison as written; {@code in} for what has to lie inside. */
    static String sign(String comparison) {
        Expression parsed = Substitution.parsed(comparison);
        return parsed instanceof Expression.Infix infix ? infix.operator().sign() : "in";
    }

    /** Compares a stored margin with the distance between what is stored of both sides. */
    void check(JsonNode margin, String sign, JsonNode left, JsonNode right) {
        Set<Double> positions = new TreeSet<>();
        for (JsonNode side : new JsonNode[] {left, right}) {
            side.path("along").forEach(station -> positions.add(station.get("position").asDouble()));
        }
        if (positions.isEmpty()) {
            positions.add(0.0);
        }
        for (String band : new String[] {"aim", "reach"}) {
            double least = Double.POSITIVE_INFINITY;
            for (double position : positions) {
                least = Math.min(least, between(sign, band, left, right, position));
            }
            assertThat(margin.get(band).asDouble()).as("%s of %s %s %s", band, left, sign, right)
                    .isCloseTo(least, within(1e-9 * Math.max(1, Math.abs(least))));
        }
    }

    private double between(String sign, String band, JsonNode left, JsonNode right, double at) {
        assertThat(coherent(left)).isEqualTo(coherent(right));
        boolean inside = sign.equals("in");
        String other = inside ? "aim" : band;
        double below = end(right, other, "most", at, FAR) - end(left, band, "most", at, -FAR);
        double above = end(left, band, "least", at, FAR) - end(right, other, "least", at, -FAR);
        if (inside) {
            return Math.min(below, above);
        }
        return sign.startsWith("<") ? end(right, band, "least", at, FAR) - end(left, band, "most", at, FAR)
                : end(left, band, "least", at, FAR) - end(right, band, "most", at, FAR);
    }

    private String coherent(JsonNode side) {
        JsonNode number = side.has("along") ? side.at("/along/0/number") : side.get("number");
        return units.get(number.get("unit").asText()).get("coherent").asText();
    }

    private static double end(JsonNode side, String band, String end, double at, double open) {
        if (side.has("number")) {
            return side.get("number").get(band).path(end).asDouble(open);
        }
        JsonNode last = null;
        for (JsonNode next : side.get("along")) {
            double there = next.get("position").asDouble();
            double value = next.get("number").get(band).path(end).asDouble(open);
            if (at <= there) {
                if (last == null) {
                    return value;
                }
                double from = last.get("position").asDouble();
                double before = last.get("number").get(band).path(end).asDouble(open);
                return before + (value - before) * (at - from) / (there - from);
            }
            last = next;
        }
        return last.get("number").get(band).path(end).asDouble(open);
    }
}
