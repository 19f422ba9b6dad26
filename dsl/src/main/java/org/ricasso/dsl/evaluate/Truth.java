package org.ricasso.dsl.evaluate;

/** The outcomes of a comparison over bands, and Kleene's tables over them. */
public enum Truth {
    /** Holds for all values. */
    ALL,
    /** Holds for some values only. */
    SOME,
    /** Holds for none. */
    NONE,
    /** Nothing says. */
    UNKNOWN;

    public static Truth of(boolean holds) {
        return holds ? ALL : NONE;
    }

    public Truth and(Truth other) {
        if (this == NONE || other == NONE) {
            return NONE;
        }
        if (this == UNKNOWN || other == UNKNOWN) {
            return UNKNOWN;
        }
        return this == ALL && other == ALL ? ALL : SOME;
    }

    public Truth or(Truth other) {
        if (this == ALL || other == ALL) {
            return ALL;
        }
        if (this == UNKNOWN || other == UNKNOWN) {
            return UNKNOWN;
        }
        return this == NONE && other == NONE ? NONE : SOME;
    }

    public Truth not() {
        return switch (this) {
            case ALL -> NONE;
            case NONE -> ALL;
            case SOME -> SOME;
            case UNKNOWN -> UNKNOWN;
        };
    }
}
