package org.ricasso.shared.quantity;

/**
 * What a number measures: a dimension, and whether the number is a point on a scale (180 °C, 57 HRC) or an amount or
 * difference (20 K, ± 1 HRC, 12 mm).
 *
 * @param dimension the dimension
 * @param point whether the number is a point; only where {@link Dimension#hasPoints()}
 */
public record Measure(Dimension dimension, boolean point) {
    public static final Measure NUMBER = new Measure(Dimension.NUMBER, false);
    public static final Measure LENGTH = amount(Base.LENGTH);
    public static final Measure MASS = amount(Base.MASS);
    public static final Measure DURATION = amount(Base.TIME);
    public static final Measure CURRENT = amount(Base.CURRENT);
    public static final Measure ANGLE = amount(Base.ANGLE);
    public static final Measure TEMPERATURE = new Measure(Dimension.of(Base.TEMPERATURE), true);
    public static final Measure TEMPERATURE_DIFFERENCE = amount(Base.TEMPERATURE);
    public static final Measure HARDNESS = new Measure(Dimension.of(Base.ROCKWELL_C), true);
    public static final Measure HARDNESS_DIFFERENCE = amount(Base.ROCKWELL_C);

    private static Measure amount(Base base) {
        return new Measure(Dimension.of(base), false);
    }

    /** The measure of a difference of two such values. */
    public Measure difference() {
        return point ? new Measure(dimension, false) : this;
    }

    /**
     * Whether a value of the other measure may stand where one of this is asked: the same measure, or hardness on
     * another scale (points, which the published table joins, or differences, which are kept on their scale).
     */
    public boolean accepts(Measure other) {
        return equals(other) || point == other.point && dimension.isHardness() && other.dimension.isHardness();
    }
}
