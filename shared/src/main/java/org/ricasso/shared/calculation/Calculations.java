package org.ricasso.shared.calculation;

import java.util.List;

/** A provider of calculations, found by {@link java.util.ServiceLoader}; a works brings its own the same way. */
@FunctionalInterface
public interface Calculations {
    /** The calculations offered, each name once. */
    List<Calculation> calculations();
}
