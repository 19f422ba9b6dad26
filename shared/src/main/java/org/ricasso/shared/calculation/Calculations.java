package org.ricasso.shared.calculation;

import java.util.Collections;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ricasso.shared.Library;
import org.ricasso.shared.LibraryException;

/** A provider of calculations, found by {@link java.util.ServiceLoader}; a works brings its own the same way. */
@FunctionalInterface
public interface Calculations {
    /** The calculations offered, each name once. */
    List<Calculation> calculations();

    /**
     * All calculations that a class loader sees, by name; each knows who brings it.
     *
     * @throws LibraryException if two providers offer one name, or one cannot be used
     */
    static SortedMap<String, Calculation> all(ClassLoader loader) {
        SortedMap<String, Calculation> all = new TreeMap<>();
        try {
            for (Calculations offers : ServiceLoader.load(Calculations.class, loader)) {
                Calculation.Provider provider =
                        new Calculation.Provider(Library.bringing(offers.getClass()), offers.getClass().getName());
                for (Calculation calculation : offers.calculations()) {
                    Calculation earlier = all.putIfAbsent(calculation.name(), calculation.by(provider));
                    if (earlier != null) {
                        throw new LibraryException("the calculation " + calculation.name() + " is offered twice, by "
                                + earlier.provider() + " and by " + provider
                                + ": take one library out of the plugin's dependencies, or give one calculation another name");
                    }
                }
            }
        } catch (ServiceConfigurationError unusable) {
            throw new LibraryException("a library's calculations cannot be used: " + unusable.getMessage(), unusable);
        }
        return Collections.unmodifiableSortedMap(all);
    }
}
