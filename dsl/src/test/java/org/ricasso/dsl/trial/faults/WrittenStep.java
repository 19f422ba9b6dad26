package org.ricasso.dsl.trial.faults;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A step as text.
 *
 * @param id its number in the house, by which it is known wherever it goes; changed steps keep it
 * @param centre the centre's name, or null
 * @param settings what is written of each setting
 * @param measures the entries of each measurement, by the property's name
 */
record WrittenStep(int id, String operation, String centre, Map<String, String> settings,
        Map<String, Map<String, String>> measures) {
    WrittenStep {
        settings = new LinkedHashMap<>(settings);
        measures = new LinkedHashMap<>(measures);
    }

    WrittenStep at(String other) {
        return new WrittenStep(id, operation, other, settings, measures);
    }

    WrittenStep with(String setting, String value) {
        Map<String, String> changed = new LinkedHashMap<>(settings);
        changed.put(setting, value);
        return new WrittenStep(id, operation, centre, changed, measures);
    }

    WrittenStep without(String measured) {
        Map<String, Map<String, String>> left = new LinkedHashMap<>(measures);
        left.remove(measured);
        return new WrittenStep(id, operation, centre, settings, left);
    }

    WrittenStep measuring(String measured, Map<String, String> how) {
        Map<String, Map<String, String>> more = new LinkedHashMap<>(measures);
        more.put(measured, how);
        return new WrittenStep(id, operation, centre, settings, more);
    }

    @Override
    public String toString() {
        return id + " " + operation;
    }
}
