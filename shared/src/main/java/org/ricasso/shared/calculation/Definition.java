package org.ricasso.shared.calculation;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.shared.calculation.Calculation.Argument;
import org.ricasso.shared.calculation.Calculation.Bands;
import org.ricasso.shared.calculation.Calculation.Function;
import org.ricasso.shared.calculation.Calculation.Sense;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;

/** A calculation's registration under construction: name, then each argument with its sense and range, then result. */
public final class Definition {
    private final String name;
    private final String title;
    private final List<Argument> arguments = new ArrayList<>();

    private Definition(String name, String title) {
        this.name = name;
        this.title = title;
    }

    /** Begins the registration of a calculation. */
    public static Definition define(String name, String title) {
        return new Definition(name, title);
    }

    /** The next argument; the result never falls when it grows. The range is in coherent units. */
    public Definition rises(String argument, Measure measure, double least, double most) {
        return with(argument, measure, Sense.RISES, least, most);
    }

    /** The next argument; the result never rises when it grows. */
    public Definition falls(String argument, Measure measure, double least, double most) {
        return with(argument, measure, Sense.FALLS, least, most);
    }

    /** The next argument; which way the result moves with it depends on the others or on its size. */
    public Definition either(String argument, Measure measure, double least, double most) {
        return with(argument, measure, Sense.NEITHER, least, most);
    }

    /** Ends the registration of a calculation whose interval form follows from the senses. */
    public Calculation gives(Measure result, String source, Function function) {
        return gives(result, source, function, null);
    }

    /** Ends the registration of a calculation that brings its interval form. */
    public Calculation gives(Measure result, String source, Function function, Bands bands) {
        return new Calculation(name, title, arguments, result, source, function, bands);
    }

    /**
     * Ends the registration of a calculation which, all other arguments held, moves one way with each argument, though
     * which way may depend on the others. Its extremes then lie at corners of the box, and all are taken. Also for a
     * calculation that refuses some combinations which the two corners of the senses would not show.
     */
    public Calculation givesAtCorners(Measure result, String source, Function function) {
        return gives(result, source, function, values -> corners(function, values));
    }

    private static Interval corners(Function function, Interval[] values) {
        double[] point = new double[values.length];
        Interval result = null;
        for (int corner = 0; corner < 1 << values.length; corner++) {
            for (int i = 0; i < values.length; i++) {
                point[i] = (corner >> i & 1) == 0 ? values[i].least() : values[i].most();
            }
            Interval here = Interval.of(function.of(point));
            result = result == null ? here : result.hull(here);
        }
        return result;
    }

    private Definition with(String argument, Measure measure, Sense sense, double least, double most) {
        arguments.add(new Argument(argument, measure, sense, least, most));
        return this;
    }
}
