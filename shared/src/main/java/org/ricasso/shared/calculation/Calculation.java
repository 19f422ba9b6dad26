package org.ricasso.shared.calculation;

import java.util.List;
import java.util.OptionalInt;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;

/**
 * A calculation that the language can call by name: a pure function on numbers in coherent units (metres, kilograms,
 * seconds, kelvins, radians; HRC for hardness; plain fractions for percentages).
 *
 * @param name the name in the language, such as {@code flank-thickness}
 * @param title one line: what it gives
 * @param arguments the arguments in order
 * @param result what the result measures
 * @param source where the formula comes from, with its confidence
 * @param function the function itself; called only with arguments inside their ranges
 * @param bands the interval form, required when an argument is {@link Sense#NEITHER}, else {@code null}: the form then
 *     follows from the senses
 * @param provider who brings it; {@link Provider#OURS} until it is found by {@link Calculations#all}
 */
public record Calculation(String name, String title, List<Argument> arguments, Measure result, String source,
        Function function, Bands bands, Provider provider) {

    /** @throws IllegalArgumentException if an argument neither rises nor falls and no interval form is given */
    public Calculation {
        arguments = List.copyOf(arguments);
        if (bands == null && arguments.stream().anyMatch(a -> a.sense() == Sense.NEITHER)) {
            throw new IllegalArgumentException(name + ": an argument that neither rises nor falls needs an interval form");
        }
    }

    /** A calculation that does not say who brings it. */
    public Calculation(String name, String title, List<Argument> arguments, Measure result, String source,
            Function function, Bands bands) {
        this(name, title, arguments, result, source, function, bands, Provider.OURS);
    }

    /** The same calculation, brought by a library. */
    Calculation by(Provider other) {
        return new Calculation(name, title, arguments, result, source, function, bands, other);
    }

    /** The source, and the library behind it where it is not ours. */
    public String cited() {
        return provider.library().isEmpty() ? source : source + "; " + name + " of " + provider.library();
    }

    /**
     * Who brings a calculation.
     *
     * @param library the library's name, its jar without the ending; empty for ours
     * @param type the full name of the class that offers it; empty where nothing says it
     */
    public record Provider(String library, String type) {
        /** Ours. */
        public static final Provider OURS = new Provider("", "");

        @Override
        public String toString() {
            return type + (library.isEmpty() ? "" : " in " + library);
        }
    }

    /** The value for single numbers. */
    @FunctionalInterface
    public interface Function {
        /** @throws IllegalArgumentException if the numbers are outside what the formula holds for; the message says so */
        double of(double[] arguments);
    }

    /** A band that holds the function's value for every point of the arguments' bands. */
    @FunctionalInterface
    public interface Bands {
        Interval of(Interval[] arguments);
    }

    /** How the result moves when the argument grows. */
    public enum Sense { RISES, FALLS, NEITHER }

    /**
     * One argument.
     *
     * @param name its name for calls by name
     * @param measure what it measures
     * @param sense how the result moves with it
     * @param least the least value the formula holds for, coherent units
     * @param most the greatest value the formula holds for, coherent units
     */
    public record Argument(String name, Measure measure, Sense sense, double least, double most) {

        /** The values the formula holds for. */
        public Interval range() {
            return new Interval(least, most);
        }
    }

    /** The place of the first argument whose band is not inside what the formula holds for; empty if all are. */
    public OptionalInt outside(Interval[] values) {
        for (int i = 0; i < values.length; i++) {
            if (!values[i].isInside(arguments.get(i).range())) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * The value for single numbers.
     *
     * @throws IllegalArgumentException as {@link #over}
     */
    public double at(double... values) {
        Interval[] singles = new Interval[values.length];
        for (int i = 0; i < values.length; i++) {
            singles[i] = Interval.of(values[i]);
        }
        Interval[] inside = inside(singles);
        double[] clamped = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            clamped[i] = inside[i].least();
        }
        return function.of(clamped);
    }

    /**
     * The band of results for bands of arguments.
     *
     * @throws IllegalArgumentException if a band reaches outside its argument's range, or the function refuses; the
     *     message says why and gives the range in coherent units
     */
    public Interval over(Interval[] given) {
        Interval[] values = inside(given);
        if (bands != null) {
            return bands.of(values);
        }
        double[] low = new double[values.length];
        double[] high = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            boolean rises = arguments.get(i).sense() == Sense.RISES;
            low[i] = rises ? values[i].least() : values[i].most();
            high[i] = rises ? values[i].most() : values[i].least();
        }
        return Interval.between(function.of(low), function.of(high));
    }

    /** The bands, those inside at nine digits made inside to the last: no function sees a number outside its range. */
    private Interval[] inside(Interval[] values) {
        if (values.length != arguments.size()) {
            throw new IllegalArgumentException(name + " takes " + arguments.size() + " arguments");
        }
        outside(values).ifPresent(i -> {
            Argument argument = arguments.get(i);
            throw Refusal.outside(argument.name(), values[i], argument.range(), argument.measure().dimension());
        });
        Interval[] result = new Interval[values.length];
        for (int i = 0; i < values.length; i++) {
            result[i] = values[i].clampedTo(arguments.get(i).range());
        }
        return result;
    }
}
