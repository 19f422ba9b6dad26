package org.ricasso.dsl.vocabulary;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Type;

/**
 * What a measurement reads with: the block of a thing that it names, called as the dimension of its limit is.
 *
 * @param entry the measurement's entry that names the thing
 * @param block the entry of the thing
 * @param type the type of the block
 */
public record Reading(String entry, String block, Type type) {
    public static final String MEASUREMENT = "measurement";
    /** Names that stand for something in rules for measurements, besides the measurement's own entries. */
    public static final String LIMIT = "limit";
    public static final String READING = "reading";
    public static final String PROPERTY = "property";

    /** What reads values of a type, or null where no thing that a measurement names has a block for them. */
    public static Reading of(Vocabulary vocabulary, Type limit) {
        Map<String, EntryType> entries = vocabulary.entries(MEASUREMENT);
        if (entries == null || !(limit instanceof Type.Measured measured)) {
            return null;
        }
        String dimension = vocabulary.nameOf(measured.measure());
        for (EntryType entry : entries.values()) {
            Map<String, EntryType> blocks = entry.type() instanceof Type.ThingOf of ? vocabulary.entries(of.kind()) : null;
            EntryType block = blocks == null ? null : blocks.get(dimension);
            if (block != null && block.type() instanceof Type.ThingOf) {
                return new Reading(entry.name(), dimension, block.type());
            }
        }
        return null;
    }

    /** The types that limits of measurements can have; along an axis that of a station. */
    static Set<Type> limits(Vocabulary vocabulary) {
        Set<Type> types = new LinkedHashSet<>();
        vocabulary.properties().forEach(property -> types.add(limit(property.type())));
        vocabulary.operations().forEach(operation -> operation.takes().forEach(taken -> types.add(limit(taken.type()))));
        return types;
    }

    /** The type of the limit of what is measured. */
    public static Type limit(Type measured) {
        return measured instanceof Type.AlongAxis along ? along.element()
                : measured instanceof Type.WordsOf ? new Type.ListOf(measured) : measured;
    }

    /** The type of the name of what is measured: a word for each property and setting. */
    static Type propertyNames(Vocabulary vocabulary) {
        Set<String> measured = new TreeSet<>();
        vocabulary.properties().stream().map(Property::name).forEach(measured::add);
        vocabulary.operations().forEach(operation -> operation.takes().forEach(taken -> measured.add(taken.name())));
        return new Type.WordsOf(List.copyOf(measured));
    }

    /**
     * The names that a rule for measurements may use besides the entries, for limits of a type.
     *
     * @param property the type of {@link #propertyNames}
     */
    static Map<String, Type> names(Vocabulary vocabulary, Type limit, Type property) {
        Map<String, Type> names = new LinkedHashMap<>();
        names.put(LIMIT, limit);
        names.put(PROPERTY, property);
        Reading reading = of(vocabulary, limit);
        if (reading != null) {
            names.put(READING, reading.type());
        }
        return names;
    }
}
