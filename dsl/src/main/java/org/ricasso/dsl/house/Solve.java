package org.ricasso.dsl.house;

import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.source.Span;
import org.ricasso.shared.quantity.Quantity;

/**
 * A setting that is solved for: {@code temperature: solve(hardness, within: 5 °C)}.
 *
 * @param setting the setting's index in its operation
 * @param property the property that is to come out as the product asks
 * @param within the tolerance that the setting gets either way, a difference above nought
 * @param span where it is written
 * @param locked where the lock says what was found, or null
 */
public record Solve(int setting, Property property, Quantity within, Span span, Span locked) {
    Solve at(Span place) {
        return new Solve(setting, property, within, span, place);
    }
}
