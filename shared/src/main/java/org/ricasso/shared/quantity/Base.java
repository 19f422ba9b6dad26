package org.ricasso.shared.quantity;

/**
 * The base dimensions. Every unit and every derived dimension is a product of powers of these; which ones exist is
 * the only knowledge about quantities that stands in Java, all units are text.
 *
 * <p>The three hardness scales are dimensions of their own: nothing but the published table joins them.
 */
public enum Base {
    LENGTH("m"),
    MASS("kg"),
    TIME("s"),
    CURRENT("A"),
    TEMPERATURE("K"),
    ANGLE("rad"),
    ROCKWELL_C("HRC"),
    VICKERS("HV"),
    BRINELL("HB");

    private final String symbol;

    Base(String symbol) {
        this.symbol = symbol;
    }

    /** The symbol of the coherent unit. */
    public String symbol() {
        return symbol;
    }
}
