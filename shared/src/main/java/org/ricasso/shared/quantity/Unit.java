package org.ricasso.shared.quantity;

/**
 * A unit: how a written number becomes one in coherent units, {@code coherent = written * factor + offset}.
 *
 * @param sign how it is written, such as {@code mm} or {@code °C}
 * @param dimension its dimension
 * @param factor coherent units in one of it, positive
 * @param offset the coherent value of the written zero; not zero only for temperature scales
 * @param point whether a number with this unit is a point on a scale unless a difference is asked for
 * @param decimals how many decimals a computed value in this unit is shown with, 0..9
 */
public record Unit(String sign, Dimension dimension, double factor, double offset, boolean point, int decimals) {
    public static final Unit NONE = new Unit("", Dimension.NUMBER, 1, 0, false, 3);

    /** A base or derived unit with no offset. */
    public static Unit of(String sign, Dimension dimension, double factor, int decimals) {
        return new Unit(sign, dimension, factor, 0, false, decimals);
    }

    public Measure measure() {
        return new Measure(dimension, point);
    }

    /** The written number as a coherent one; {@code point} says whether the offset counts. */
    public double toCoherent(double written, boolean asPoint) {
        return asPoint ? written * factor + offset : written * factor;
    }

    /** The coherent number as one written in this unit. */
    public double fromCoherent(double coherent, boolean asPoint) {
        return asPoint ? (coherent - offset) / factor : coherent / factor;
    }
}
