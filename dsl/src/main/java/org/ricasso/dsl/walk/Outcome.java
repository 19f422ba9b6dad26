package org.ricasso.dsl.walk;

import java.util.List;
import org.ricasso.dsl.evaluate.Value;

/**
 * What became of a characteristic.
 *
 * @param entry the spec's entry, such as {@code blade.hardness}
 * @param path the property that is to become it
 * @param asked what the spec asks
 * @param found what the route leaves
 * @param made proved, aimed, missed or unmade
 * @param madeAt number of the last step that changed it, 0 for none
 * @param measuredAt numbers of the steps that measure it after that
 */
public record Outcome(String entry, String path, Value asked, Value found, Made made, int madeAt,
        List<Integer> measuredAt) {
    public Outcome {
        measuredAt = List.copyOf(measuredAt);
    }

    /** The four outcomes. */
    public enum Made {
        /** All that it can come out at is inside the limit. */
        PROVED,
        /** The aim is inside, scatter reaches out; measured later. */
        AIMED,
        /** The aim is not inside. */
        MISSED,
        /** No step makes it. */
        UNMADE
    }
}
