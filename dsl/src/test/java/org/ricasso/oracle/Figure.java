package org.ricasso.oracle;

import java.util.List;
import java.util.Map;

/** What stands behind a name in a spec, a step, or a list of machines and tools. */
public sealed interface Figure {

    /**
     * A number with its ends.
     *
     * @param least the least, minus infinity where it has no lower end
     * @param middle what it is set to, or the middle of its ends
     * @param most the most
     * @param unit as written, empty for a plain count
     */
    record Number(double least, double middle, double most, String unit) implements Figure {
        /** In another unit; null where that measures something else. */
        Number in(String other) {
            double a = Units.convert(least, unit, other);
            double b = Units.convert(middle, unit, other);
            double c = Units.convert(most, unit, other);
            return Double.isNaN(b) ? null : new Number(a, b, c, other);
        }
    }

    /** A word, a name, or a text. */
    record Word(String word) implements Figure {}

    /** A list. */
    record Several(List<Figure> figures) implements Figure {
        public Several {
            figures = List.copyOf(figures);
        }
    }

    /** A number at places along the blade. */
    record Along(Map<String, Number> places) implements Figure {
        public Along {
            places = Map.copyOf(places);
        }
    }
}
