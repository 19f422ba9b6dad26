package org.ricasso.shared.quantity;

/**
 * How a quantity is shown.
 *
 * @param unit the unit
 * @param decimals decimals of a computed value; a bound that is not written is rounded outward to them
 * @param written the text as an engineer wrote it, digits kept, or {@code null} for a computed value
 */
public record Shown(Unit unit, int decimals, String written) {
    public static Shown in(Unit unit) {
        return new Shown(unit, unit.decimals(), null);
    }

    /** The same unit and decimals for a value that is computed from this one. */
    public Shown computed() {
        return written == null ? this : new Shown(unit, Math.max(decimals, unit.decimals()), null);
    }
}
