package org.ricasso.shared.quantity;

/**
 * A number with its unit, tolerance and scatter.
 *
 * <p>Every number is a pair of bands: the <em>aim</em>, central values carried over the tolerances of the settings,
 * and the <em>reach</em>, the aim plus the scatter that tables, formulas and work centres state. A limit such as
 * {@code max 0.4 µm} is a band with an infinite end.
 *
 * @param measure what it measures
 * @param aim the band of central values, coherent units
 * @param reach the aim and all scatter, coherent units; holds {@code aim}
 * @param nominal the nominal value, coherent units, or NaN where there is none (a range, a limit)
 * @param shown how it is shown
 */
public record Quantity(Measure measure, Interval aim, Interval reach, double nominal, Shown shown) {

    /** A single exact value. */
    public static Quantity of(Measure measure, double coherent, Unit unit) {
        return new Quantity(measure, Interval.of(coherent), Interval.of(coherent), coherent, Shown.in(unit));
    }

    /** A band without scatter and nominal. */
    public static Quantity band(Measure measure, Interval aim, Unit unit) {
        double nominal = aim.isSingle() ? aim.least() : Double.NaN;
        return new Quantity(measure, aim, aim, nominal, Shown.in(unit));
    }

    public boolean hasNominal() {
        return !Double.isNaN(nominal);
    }

    /** Whether scatter reaches beyond the aim. */
    public boolean hasScatter() {
        return !reach.isInside(aim);
    }

    public boolean isSingle() {
        return reach.isSingle();
    }
}
