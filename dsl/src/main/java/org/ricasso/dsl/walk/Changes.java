package org.ricasso.dsl.walk;

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

    static Changes setting(Thing product, int step, int setting, Value value) {
        return new Changes(product, Map.of(step, Map.of(setting, value)));
    }
}
