package org.ricasso.dsl.evaluate;

import org.ricasso.dsl.source.Span;
import org.ricasso.shared.quantity.Quantity;

/**
 * An entry of a kind, or a setting of an operation.
 *
 * @param name its name
 * @param type its type
 * @param optional whether it may be left out
 * @param byDefault what stands where nothing is written, or null
 * @param within the sensible range, or null
 * @param usual where what it is set to usually lies, or null
 * @param madeAs for a characteristic, the path of the property that becomes it; else null
 * @param sized whether every size of a family has its own
 * @param span where it is declared
 */
public record EntryType(String name, Type type, boolean optional, Node byDefault, Quantity within, Quantity usual, String madeAs,
        boolean sized, Span span) {

    /** An entry that is neither a characteristic nor sized, without default. */
    public static EntryType plain(String name, Type type, Quantity within, Span span) {
        return new EntryType(name, type, true, null, within, null, null, false, span);
    }
}
