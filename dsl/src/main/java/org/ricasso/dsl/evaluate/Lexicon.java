package org.ricasso.dsl.evaluate;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.house.Thing;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.quantity.UnitTable;

/** What names mean in a house: all that an expression can speak of. */
public interface Lexicon {
    UnitTable units();

    Arithmetic arithmetic();

    /** A thing, or null. */
    Thing thing(String kind, String name);

    Collection<String> thingNames(String kind);

    /** The entries of a kind by name, or null for an unknown kind. */
    Map<String, EntryType> entries(String kind);

    /** The product's kind, or null while no workpiece is declared. */
    String productKind();

    /** The property of a part (null for the whole piece), or null. */
    Property property(String part, String name);

    Collection<String> parts();

    List<Property> properties();

    Table table(String name);

    Collection<String> tableNames();

    Calculation calculation(String name);

    Collection<String> calculationNames();

    Collection<Axis> axes();

    /** How far a named place along an axis is from its start on a product, in metres, or NaN where it is not known. */
    double station(Axis axis, String name, Thing product);

    /** The type of a setting of this name in some operation, or null. */
    Type anySetting(String name);

    /** The declared name of what a measure measures. */
    String nameOf(org.ricasso.shared.quantity.Measure measure);
}
