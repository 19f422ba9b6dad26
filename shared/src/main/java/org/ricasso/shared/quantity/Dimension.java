package org.ricasso.shared.quantity;

import java.util.Arrays;

/** A product of integer powers of the {@linkplain Base base dimensions}. Immutable, compared by value. */
public final class Dimension {
    /** The dimension of a plain number. */
    public static final Dimension NUMBER = new Dimension(new byte[Base.values().length]);

    private static final Dimension[] BASES = new Dimension[Base.values().length];

    static {
        for (Base base : Base.values()) {
            byte[] exponents = new byte[BASES.length];
            exponents[base.ordinal()] = 1;
            BASES[base.ordinal()] = new Dimension(exponents);
        }
    }

    private final byte[] exponents;

    private Dimension(byte[] exponents) {
        this.exponents = exponents;
    }

    /** The dimension of one base quantity. */
    public static Dimension of(Base base) {
        return BASES[base.ordinal()];
    }

    public int exponent(Base base) {
        return exponents[base.ordinal()];
    }

    public Dimension times(Dimension other) {
        return combine(other, 1);
    }

    public Dimension dividedBy(Dimension other) {
        return combine(other, -1);
    }

    /** This dimension to an integer power. */
    public Dimension power(int power) {
        byte[] result = new byte[exponents.length];
        for (int i = 0; i < result.length; i++) {
            result[i] = (byte) (exponents[i] * power);
        }
        return new Dimension(result);
    }

    private Dimension combine(Dimension other, int sign) {
        byte[] result = new byte[exponents.length];
        for (int i = 0; i < result.length; i++) {
            result[i] = (byte) (exponents[i] + sign * other.exponents[i]);
        }
        return new Dimension(result);
    }

    public boolean isNumber() {
        return equals(NUMBER);
    }

    /** Whether this is one of the hardness scales. */
    public boolean isHardness() {
        return equals(of(Base.ROCKWELL_C)) || equals(of(Base.VICKERS)) || equals(of(Base.BRINELL));
    }

    /** Whether values of this dimension may be points on a scale: temperature and hardness. */
    public boolean hasPoints() {
        return isHardness() || equals(of(Base.TEMPERATURE));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Dimension that && Arrays.equals(exponents, that.exponents);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(exponents);
    }

    /** The coherent unit, such as {@code kg·m/s^2}; {@code 1} for a number. */
    @Override
    public String toString() {
        StringBuilder above = new StringBuilder();
        StringBuilder below = new StringBuilder();
        for (Base base : Base.values()) {
            int exponent = exponent(base);
            if (exponent == 0) {
                continue;
            }
            StringBuilder side = exponent > 0 ? above : below;
            side.append(exponent > 0 ? side.isEmpty() ? "" : "·" : "/").append(base.symbol());
            if (Math.abs(exponent) > 1) {
                side.append('^').append(Math.abs(exponent));
            }
        }
        return (above.isEmpty() ? "1" : above.toString()) + below;
    }
}
