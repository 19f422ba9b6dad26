package org.ricasso.dsl.evaluate;

import java.util.stream.Collectors;
import org.ricasso.shared.quantity.QuantityFormat;

/** Values as text. */
public final class Shows {
    private Shows() {}

    /** The value as a person reads it; a number as written, else its aim. */
    public static String show(Value value) {
        if (value instanceof Value.Num num) {
            return QuantityFormat.show(num.quantity());
        }
        if (value instanceof Value.Along along) {
            return along.stations().stream().map(s -> s.label() + " " + QuantityFormat.show(s.quantity()))
                    .collect(Collectors.joining(", "));
        }
        if (value instanceof Value.Words words) {
            return String.join(" or ", words.words());
        }
        if (value instanceof Value.Ref ref) {
            return ref.thing().name();
        }
        if (value instanceof Value.Logic logic) {
            return switch (logic.truth()) {
                case ALL -> "yes";
                case NONE -> "no";
                case SOME -> "for some values";
                case UNKNOWN -> "unknown";
            };
        }
        if (value instanceof Value.Txt text) {
            return text.text();
        }
        if (value instanceof Value.Date date) {
            return date.date();
        }
        if (value instanceof Value.Several several) {
            return several.values().stream().map(Shows::show).collect(Collectors.joining(", "));
        }
        if (value instanceof Value.Rate rate) {
            return rate.amount() == null ? rate.each()
                    : QuantityFormat.show(rate.amount()) + " per " + rate.each();
        }
        if (value instanceof Value.Entries entries) {
            return entries.entries().entrySet().stream().map(e -> e.getKey() + ": " + show(e.getValue()))
                    .collect(Collectors.joining("; "));
        }
        if (value instanceof Value.Clock clock) {
            return "at least " + duration(clock);
        }
        if (value instanceof Value.Unknown) {
            return "unknown";
        }
        return "not stated";
    }

    /** The least time on a clock, in minutes. */
    public static String duration(Value.Clock clock) {
        return QuantityFormat.number(
                org.ricasso.shared.quantity.Quantity.of(org.ricasso.shared.quantity.Measure.DURATION, 0,
                        org.ricasso.shared.quantity.Unit.of("min",
                                org.ricasso.shared.quantity.Measure.DURATION.dimension(), 60, 0)),
                clock.atLeast());
    }
}
