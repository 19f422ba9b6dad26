package org.ricasso.dsl.walk;

import java.util.HashMap;
import java.util.Map;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;

/**
 * What is different from the text when a remedy is tried.
 *
 * @param product the product, with another entry perhaps
 * @param settings other values of settings, by step index and setting index
 */
record Changes(Thing product, Map<Integer, Map<Integer, Value>> settings) {
    static Changes none(Thing product) {
        return new Changes(product, Map.of());
    }

    /** These and another value for one setting. */
    Changes and(int step, int setting, Value value) {
        Map<Integer, Map<Integer, Value>> all = new HashMap<>(settings);
        Map<Integer, Value> ofStep = new HashMap<>(all.getOrDefault(step, Map.of()));
        ofStep.put(setting, value);
        all.put(step, ofStep);
        return new Changes(product, all);
    }
}
