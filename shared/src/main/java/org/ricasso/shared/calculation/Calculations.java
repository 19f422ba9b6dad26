package org.ricasso.shared.calculation;

import java.util.Collections;
import java.util.List;
import java.util.ServiceLoader;
import java.util.SortedMap;
import java.util.TreeMap;

/** A provider of calculations, found by {@link java.util.ServiceLoader}; a works brings its own the same way. */
@FunctionalInterface
public interface Calculations {
    /** The calculations offered, each name once. */
    List<Calculation> calculations();

    /**
     * All calculations that a class loader sees, by name.
     *
     * @throws IllegalStateException if two providers offer one name
     */
    static SortedMap<String, Calculation> all(ClassLoader loader) {
        SortedMap<String, Calculation> all = new TreeMap<>();
        for (Calculations provider : ServiceLoader.load(Calculations.class, loader)) {
            for (Calculation calculation : provider.calculations()) {
                if (all.putIfAbsent(calculation.name(), calculation) != null) {
                    throw new IllegalStateException("the calculation " + calculation.name() + " is offered twice");
                }
            }
        }
        return Collections.unmodifiableSortedMap(all);
    }
}
