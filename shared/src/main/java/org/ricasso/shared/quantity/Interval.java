package org.ricasso.shared.quantity;

/**
 * A closed interval of numbers in coherent units; an end may be infinite. Arithmetic is plain interval arithmetic.
 *
 * @param least the lower end
 * @param most the upper end, not below {@code least}
 */
public record Interval(double least, double most) {
    public static final Interval EVERYTHING = new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** @throws IllegalArgumentException if the ends are not numbers or stand the wrong way round */
    public Interval {
        if (!(least <= most)) {
            throw new IllegalArgumentException("not an interval: " + least + ".." + most);
        }
        // one zero: 0.0 and -0.0 must print and compare alike
        least = least + 0.0;
        most = most + 0.0;
    }

    public static Interval of(double value) {
        return new Interval(value, value);
    }

    /** The interval between two numbers given in either order. */
    public static Interval between(double a, double b) {
        return a <= b ? new Interval(a, b) : new Interval(b, a);
    }

    public boolean isSingle() {
        return Numbers.compare(least, most) == 0;
    }

    public boolean isBounded() {
        return !Double.isInfinite(least) && !Double.isInfinite(most);
    }

    /** Half way between the ends; of everything, zero. */
    public double middle() {
        if (equals(EVERYTHING)) {
            return 0;
        }
        return least == most ? least : (least + most) / 2;
    }

    public double width() {
        return most - least;
    }

    public Interval plus(Interval other) {
        return new Interval(least + other.least, most + other.most);
    }

    public Interval minus(Interval other) {
        return new Interval(least - other.most, most - other.least);
    }

    public Interval negated() {
        return new Interval(-most, -least);
    }

    public Interval times(Interval other) {
        return corners(product(least, other.least), product(least, other.most),
                product(most, other.least), product(most, other.most));
    }

    /** @throws ArithmeticException if the divisor holds zero */
    public Interval dividedBy(Interval other) {
        if (other.least <= 0 && other.most >= 0) {
            throw new ArithmeticException("division by an interval that holds zero");
        }
        return corners(quotient(least, other.least), quotient(least, other.most),
                quotient(most, other.least), quotient(most, other.most));
    }

    /** Two infinite ends divide to anything of one sign; the other corners already reach from zero to infinity. */
    private static double quotient(double a, double b) {
        return Double.isInfinite(a) && Double.isInfinite(b) ? 0 : a / b;
    }

    private static double product(double a, double b) {
        return a == 0 || b == 0 ? 0 : a * b;
    }

    private static Interval corners(double a, double b, double c, double d) {
        return new Interval(Math.min(Math.min(a, b), Math.min(c, d)), Math.max(Math.max(a, b), Math.max(c, d)));
    }

    public Interval min(Interval other) {
        return new Interval(Math.min(least, other.least), Math.min(most, other.most));
    }

    public Interval max(Interval other) {
        return new Interval(Math.max(least, other.least), Math.max(most, other.most));
    }

    public Interval absolute() {
        if (least >= 0) {
            return this;
        }
        return most <= 0 ? negated() : new Interval(0, Math.max(-least, most));
    }

    /** The smallest interval that holds both. */
    public Interval hull(Interval other) {
        return new Interval(Math.min(least, other.least), Math.max(most, other.most));
    }

    /** This interval with each end moved outward by {@code by}, which is not negative. */
    public Interval widened(double by) {
        return new Interval(least - by, most + by);
    }

    /** Whether this lies within the other, at nine digits. */
    public boolean isInside(Interval other) {
        return Numbers.compare(least, other.least) >= 0 && Numbers.compare(most, other.most) <= 0;
    }

    /** Whether the two share a point, at nine digits. */
    public boolean overlaps(Interval other) {
        return Numbers.compare(least, other.most) <= 0 && Numbers.compare(most, other.least) >= 0;
    }

    /** The part of this inside the other; where they do not meet, the nearest end of the other. */
    public Interval clampedTo(Interval other) {
        double low = Math.min(Math.max(least, other.least), other.most);
        double high = Math.max(Math.min(most, other.most), other.least);
        return between(low, high);
    }
}
