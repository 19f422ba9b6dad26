package org.ricasso.templates.page;

import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;

/**
 * Whose sheet it is and whether it may be worked from.
 *
 * @param house the house's title
 * @param model the product's number, or its name where it has none
 * @param title the product's title
 * @param revision its revision, or empty where the vocabulary has none
 * @param status the status in words
 * @param draft whether nobody has released it
 */
public record Identity(String house, String model, String title, String revision, String status, boolean draft) {

    static Identity of(String house, Thing product, Tongue tongue) {
        String model = model(product);
        boolean has = product.entries().containsKey(KnownEntries.RELEASED);
        String released = written(product, KnownEntries.RELEASED);
        String status = !has ? tongue.say("sheet.status-not-stated")
                : released.isEmpty() ? tongue.say("sheet.draft-status") : tongue.say("sheet.released", "date", released);
        return new Identity(house, model, tongue.title(product), written(product, KnownEntries.REVISION), status,
                has && released.isEmpty());
    }

    /** What a product is called on the floor. */
    static String model(Thing product) {
        String number = written(product, KnownEntries.NUMBER);
        return number.isEmpty() ? product.name() : number;
    }

    private static String written(Thing product, String entry) {
        Value value = product.at(entry);
        return value instanceof Value.Absent || value instanceof Value.Unknown ? "" : Marks.clean(Shows.show(value));
    }
}
