package org.ricasso.dsl.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.Type;

/** What rules may speak of, by what they are for. */
final class RuleScopes {
    private final Vocabulary vocabulary;
    /** Of all properties and settings, so made once, when the first rule for measurements is read. */
    private Type propertyNames;

    RuleScopes(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    private Set<String> roots(String... more) {
        Set<String> roots = new TreeSet<>(Set.of(more));
        if (vocabulary.productKind() != null) {
            roots.add(vocabulary.productKind());
        }
        if (vocabulary.kinds.containsKey("centre") && roots.contains("operation")) {
            roots.add("centre");
        }
        return roots;
    }

    Scope inOperation(Operation operation) {
        return new Scope(operation.takes(), new ArrayList<>(), operation.works(), true, null,
                roots("operation", "before", "after"), operation.attributes(), true, false);
    }

    Scope atStep(Operation operation) {
        return atStep(operation, Map.of());
    }

    Scope atStep(Operation operation, Map<String, Type> given) {
        return new Scope(operation.takes(), new ArrayList<>(), null, false, null,
                roots("operation", "before", "after", "step"), operation.attributes(), true, false, given);
    }

    Scope anyStep() {
        return anyStep(Map.of());
    }

    Scope anySetting(Type.ThingOf kind) {
        return anyStep(Used.names(kind));
    }

    Scope anyStep(Map<String, Type> given) {
        return new Scope(List.of(), new ArrayList<>(), null, false, null, roots("operation", "before", "after", "step"),
                null, true, true, given);
    }

    Scope ofThing(String kind) {
        boolean product = kind.equals(vocabulary.productKind());
        return new Scope(List.of(), new ArrayList<>(), null, false, kind, product ? roots("after") : roots(), Map.of(),
                true, false);
    }

    private Type propertyNames() {
        if (propertyNames == null) {
            propertyNames = Reading.propertyNames(vocabulary);
        }
        return propertyNames;
    }

    /** At a measuring block: its entries by name, what it reads and against what. */
    Scope ofMeasurement(Type limit) {
        return new Scope(List.of(), new ArrayList<>(), null, false, Reading.MEASUREMENT, roots(), Map.of(), true, false,
                Reading.names(vocabulary, limit, propertyNames()));
    }
}
