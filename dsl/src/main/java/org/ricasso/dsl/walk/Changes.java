package org.ricasso.dsl.walk;

import java.util.HashMap;
import java.util.Map;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;

/**
 * What is different from the text when a remedy is tried.
 *
 * @param product the product, with another entry perhaps
 * @param settings other values of settings, by step index and setting index
 * @param measurements other entries of measurements, by the place of their names
 */
record Changes(Thing product, Map<Integer, Map<Integer, Value>> settings, Map<Span, Value.Entries> measurements) {
    Changes(Thing product, Map<Integer, Map<Integer, Value>> settings) {
        this(product, settings, Map.of());
    }

    static Changes none(Thing product) {
        return new Changes(product, Map.of());
    }

    /** These and another value for one setting. */
    Changes and(int step, int setting, Value value) {
        Map<Integer, Map<Integer, Value>> all = new HashMap<>(settings);
        Map<Integer, Value> ofStep = new HashMap<>(all.getOrDefault(step, Map.of()));
        ofStep.put(setting, value);
        all.put(step, ofStep);
        return new Changes(product, all, measurements);
    }

    /** These and other entries of one measurement. */
    Changes and(Span measurement, Value.Entries entries) {
        Map<Span, Value.Entries> all = new HashMap<>(measurements);
        all.put(measurement, entries);
        return new Changes(product, settings, all);
    }
}
