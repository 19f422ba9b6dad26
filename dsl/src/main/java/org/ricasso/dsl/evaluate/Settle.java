package org.ricasso.dsl.evaluate;

/** Values as they are kept: a condition's outcome as yes or no, a number that varies as its band where one is asked. */
public final class Settle {
    private Settle() {}

    public static Value as(Type type, Value value, Arithmetic arithmetic) {
        if (value instanceof Value.Logic logic) {
            return logic.truth() == Truth.UNKNOWN ? new Value.Unknown("a condition that nothing decides", false)
                    : Comparisons.plain(value);
        }
        if (value instanceof Value.Along along && type instanceof Type.Measured) {
            return new Value.Num(Alongs.hull(along, arithmetic));
        }
        return value;
    }
}
