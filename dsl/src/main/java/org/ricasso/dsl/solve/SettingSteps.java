package org.ricasso.dsl.solve;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.ricasso.shared.quantity.Unit;

/**
 * The values that a setting can be set to: whole steps, counted from nought in its unit, each with the same tolerance.
 *
 * @param unit the unit in which they are written
 * @param point whether they are points on a scale
 * @param step the step in that unit, above nought
 * @param tolerance the tolerance either way in that unit
 */
public record SettingSteps(Unit unit, boolean point, BigDecimal step, BigDecimal tolerance) {
    private static final MathContext NINE_DIGITS = new MathContext(9, RoundingMode.HALF_EVEN);
    private static final double TINY = 1e-9;

    /** @param step and {@code tolerance} as differences in coherent units */
    public static SettingSteps of(Unit unit, boolean point, double step, double tolerance) {
        return new SettingSteps(unit, point, written(unit, step), written(unit, tolerance));
    }

    private static BigDecimal written(Unit unit, double difference) {
        BigDecimal digits = new BigDecimal(unit.fromCoherent(difference, false)).round(NINE_DIGITS).stripTrailingZeros();
        return digits.scale() < 0 ? digits.setScale(0) : digits;
    }

    /** The first value that is not below a coherent number with its tolerance. */
    public long first(double least) {
        return (long) StrictMath.ceil(count(least) + tolerance.doubleValue() / step.doubleValue() - TINY);
    }

    /** The last value that is not above a coherent number with its tolerance. */
    public long last(double most) {
        return (long) StrictMath.floor(count(most) - tolerance.doubleValue() / step.doubleValue() + TINY);
    }

    /** How many steps from nought a coherent number is. */
    public double count(double coherent) {
        return unit.fromCoherent(coherent, point) / step.doubleValue();
    }

    /** A value as an engineer would write it, such as {@code 205 ± 5 °C}. */
    public String text(long at) {
        int decimals = Math.max(step.scale(), tolerance.scale());
        return step.multiply(BigDecimal.valueOf(at)).setScale(decimals).toPlainString() + " ± " + tolerance.toPlainString()
                + (unit.sign().isEmpty() ? "" : " " + unit.sign());
    }
}
