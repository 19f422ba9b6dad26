package org.ricasso.dsl.walk;

import java.util.stream.Collectors;
import org.ricasso.dsl.evaluate.Arithmetic;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Settle;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;

/** Conditions as text, and values as a property keeps them. */
final class Conditions {
    private Conditions() {}

    /** {@code annealed or tempered}, {@code max 4 h}, {@code 20..60 °C}. */
    static String text(Value condition) {
        if (condition instanceof Value.Several several) {
            return several.values().stream().map(Shows::show).collect(Collectors.joining(" or "));
        }
        return Shows.show(condition);
    }

    /** The value as a property of this type keeps it. */
    static Value settled(Type type, Value value, Arithmetic arithmetic) {
        return Settle.as(type, value, arithmetic);
    }

    /** The least time in seconds that a step takes, zero where nothing says. */
    static double leastTime(Node run, Frame frame) {
        if (run == null) {
            return 0;
        }
        Value value = run.eval(frame);
        double least = value instanceof Value.Rate rate && rate.amount() != null ? rate.amount().aim().least()
                : value instanceof Value.Num num ? num.quantity().aim().least() : 0;
        return Double.isInfinite(least) || least < 0 ? 0 : least;
    }
}
