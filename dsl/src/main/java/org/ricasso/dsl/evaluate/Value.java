package org.ricasso.dsl.evaluate;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.house.Thing;
import org.ricasso.shared.quantity.Quantity;

/** What an expression, an entry or a property of the workpiece is worth. Immutable. */
public sealed interface Value {

    /** A number with its bands. */
    record Num(Quantity quantity) implements Value {}

    /** A number that varies along an axis, by stations from its start; between stations it is straight. */
    record Along(List<Station> stations) implements Value {
        public Along {
            stations = List.copyOf(stations);
        }
    }

    /**
     * A station of a value along an axis.
     *
     * @param label the station as written, such as {@code heel} or {@code 100 mm}; behind a name that the axis gives to a
     *     place stands the place, as in {@code middle (100 mm)}
     * @param position distance from the axis' start in metres
     * @param quantity the value there
     */
    record Station(String label, double position, Quantity quantity) {

        /** The station as written. */
        public String name() {
            int place = label.indexOf(" (");
            return place < 0 ? label : label.substring(0, place);
        }
    }

    /** A word, or the words that are possible (sorted); {@code yes} and {@code no} are words. */
    record Words(List<String> words) implements Value {
        public Words {
            words = List.copyOf(words);
        }

        public static Words of(String word) {
            return new Words(List.of(word));
        }
    }

    /** A reference to a thing. */
    record Ref(Thing thing) implements Value {}

    /** The outcome of a comparison. */
    record Logic(Truth truth) implements Value {}

    record Txt(String text) implements Value {}

    /** A date as written, ISO 8601. */
    record Date(String date) implements Value {}

    record Several(List<Value> values) implements Value {
        public Several {
            values = List.copyOf(values);
        }
    }

    /** {@code 5 per load}; {@code amount} is {@code null} for plain {@code each}. */
    record Rate(Quantity amount, String each) implements Value {}

    /** A block's entries, a table's row, in order. */
    record Entries(Map<String, Value> entries) implements Value {
        public Entries {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }
    }

    /** Time since something on the route: at least this long in seconds, and nothing says how long at most. */
    record Clock(double atLeast) implements Value {}

    /**
     * Nothing says.
     *
     * @param reason why, for people
     * @param reported whether the cause has been reported, so that nothing more need be said
     */
    record Unknown(String reason, boolean reported) implements Value {}

    /** An optional entry that is not written. */
    record Absent(String path) implements Value {}
}
