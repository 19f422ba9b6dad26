package org.ricasso.dsl.vocabulary;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Type;

/** What rules for settings speak of: a thing that a step names in one of its settings, alone or in a list. */
public final class Used {
    /** The name that stands for the thing, and for these rules. */
    public static final String SETTING = "setting";

    private Used() {}

    /** The kind of the things that a setting names, or null where it names none. */
    public static Type.ThingOf kind(EntryType setting) {
        Type type = setting.type() instanceof Type.ListOf list ? list.element() : setting.type();
        return type instanceof Type.ThingOf of ? of : null;
    }

    /** The kinds of things that any operation takes, in the order of the operations. */
    static Set<Type.ThingOf> kinds(Iterable<Operation> operations) {
        Set<Type.ThingOf> kinds = new LinkedHashSet<>();
        operations.forEach(operation -> operation.takes().stream().map(Used::kind).filter(java.util.Objects::nonNull)
                .forEach(kinds::add));
        return kinds;
    }

    /** The name that a rule for settings may use besides those of a rule for steps. */
    static Map<String, Type> names(Type.ThingOf kind) {
        return Map.of(SETTING, kind);
    }
}
