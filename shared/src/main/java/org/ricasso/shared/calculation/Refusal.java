package org.ricasso.shared.calculation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.ricasso.shared.quantity.Dimension;
import org.ricasso.shared.quantity.Interval;

/** How a calculation says that it does not hold for the numbers it was given: what, how much, and what would do. */
public final class Refusal {
    private Refusal() {}

    /** A number outside a range, both in {@code factor} coherent units, named {@code unit}. */
    public static IllegalArgumentException outside(String what, double value, double least, double most, String unit,
            double factor) {
        return new IllegalArgumentException(what + " " + digits(value / factor) + unit(unit) + " is outside "
                + digits(least / factor) + ".." + digits(most / factor) + unit(unit));
    }

    static IllegalArgumentException outside(String what, Interval value, Interval range, Dimension dimension) {
        String unit = dimension.isNumber() ? "" : dimension.toString();
        String given = value.isSingle() ? digits(value.least()) : band(value);
        return new IllegalArgumentException(what + " " + given + unit(unit) + " is outside " + band(range) + unit(unit));
    }

    private static String band(Interval band) {
        return digits(band.least()) + ".." + digits(band.most());
    }

    private static String unit(String unit) {
        return unit.isEmpty() ? "" : " " + unit;
    }

    /** Five significant digits, without an exponent where the number is of ordinary size. */
    private static String digits(double value) {
        if (Double.isInfinite(value) || Double.isNaN(value)) {
            return Double.isNaN(value) ? "unknown" : value > 0 ? "∞" : "-∞";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(5));
        if (rounded.signum() == 0) {
            return "0";
        }
        double size = Math.abs(value);
        return size >= 1e-4 && size < 1e7 ? rounded.stripTrailingZeros().toPlainString()
                : String.format(Locale.ROOT, "%.4g", value);
    }
}
