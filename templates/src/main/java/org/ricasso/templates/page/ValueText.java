package org.ricasso.templates.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;

/** Values of the language as they stand on a page. */
final class ValueText {
    private static final String NUMBER = "([-+]?\\d+(?:\\.\\d+)?)";
    private static final Pattern DEVIATIONS =
            Pattern.compile(NUMBER + " ?\\(" + NUMBER + " ?/ ?" + NUMBER + "\\)( .+)?");

    private ValueText() {}

    static Shown shown(Value value) {
        return shown(value, false);
    }

    /** @param byDefault whether the value stands because nothing was written */
    static Shown shown(Value value, boolean byDefault) {
        List<Shown.Line> lines = new ArrayList<>();
        boolean computed = add(lines, "", value);
        return new Shown(lines, computed && !byDefault, byDefault);
    }

    /** @return whether the value was computed */
    private static boolean add(List<Shown.Line> lines, String at, Value value) {
        if (value instanceof Value.Num num) {
            return number(lines, at, num.quantity());
        }
        if (value instanceof Value.Along along) {
            boolean computed = false;
            for (Value.Station station : along.stations()) {
                computed |= number(lines, station.label().isEmpty() ? at
                        : "at " + PlainText.typeset(station.label()), station.quantity());
            }
            return computed;
        }
        if (value instanceof Value.Entries block) {
            boolean computed = false;
            for (Map.Entry<String, Value> entry : block.entries().entrySet()) {
                if (!(entry.getValue() instanceof Value.Absent)) {
                    computed |= add(lines, Names.label(entry.getKey()) + ":", entry.getValue());
                }
            }
            return computed;
        }
        if (value instanceof Value.Several several && several.values().stream().anyMatch(ValueText::needsLine)) {
            boolean computed = false;
            for (Value element : several.values()) {
                computed |= add(lines, at, element);
            }
            return computed;
        }
        if (value instanceof Value.Ref ref) {
            lines.add(reference(at, ref.thing()));
            return false;
        }
        lines.add(new Shown.Line(at, line(value), "", ""));
        return computed(value);
    }

    /** Name and title, or the title alone where it says the name. */
    private static Shown.Line reference(String at, Thing thing) {
        return squeezed(thing.title()).contains(squeezed(thing.name())) ? new Shown.Line(at, thing.title(), "", "")
                : new Shown.Line(at, thing.name(), thing.title(), "");
    }

    private static String squeezed(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    private static boolean needsLine(Value value) {
        return value instanceof Value.Ref || value instanceof Value.Entries || value instanceof Value.Along;
    }

    private static boolean computed(Value value) {
        if (value instanceof Value.Num num) {
            return num.quantity().shown().written() == null;
        }
        if (value instanceof Value.Rate rate) {
            return rate.amount() != null && rate.amount().shown().written() == null;
        }
        if (value instanceof Value.Several several) {
            return several.values().stream().anyMatch(ValueText::computed);
        }
        return value instanceof Value.Clock;
    }

    private static boolean number(List<Shown.Line> lines, String at, Quantity quantity) {
        boolean computed = quantity.shown().written() == null;
        String text = PlainText.number(QuantityFormat.show(quantity));
        String reach = computed && quantity.hasScatter() ? PlainText.number(QuantityFormat.reach(quantity)) : "";
        lines.add(new Shown.Line(at, text, window(quantity.shown().written()), reach.equals(text) ? "" : reach));
        return computed;
    }

    /**
     * The ends of a number whose deviations differ, because {@code 120 (+20/0) min} is hard to say: {@code 120 to 140
     * min}. Exact: a limit is never rounded. Empty for all other numbers.
     */
    private static String window(String written) {
        Matcher parts = written == null ? null : DEVIATIONS.matcher(written);
        if (parts == null || !parts.matches()) {
            return "";
        }
        BigDecimal nominal = new BigDecimal(parts.group(1));
        String least = nominal.add(new BigDecimal(parts.group(3))).toPlainString();
        String most = nominal.add(new BigDecimal(parts.group(2))).toPlainString();
        return PlainText.number(least + ".." + most + (parts.group(4) == null ? "" : parts.group(4)));
    }

    /** The value on one line. */
    static String line(Value value) {
        if (value instanceof Value.Num num) {
            return PlainText.number(QuantityFormat.show(num.quantity()));
        }
        if (value instanceof Value.Several several) {
            return several.values().stream().map(ValueText::line).collect(Collectors.joining(", "));
        }
        if (value instanceof Value.Rate rate) {
            return rate.amount() == null ? rate.each() : amount(rate.amount()) + " per " + each(rate.each());
        }
        if (value instanceof Value.Unknown unknown) {
            return unknown.reason().isEmpty() ? "not known" : "not known: " + unknown.reason();
        }
        if (value instanceof Value.Clock) {
            return PlainText.typeset(Shows.show(value)) + " on the route";
        }
        return Shows.show(value);
    }

    private static String amount(Quantity quantity) {
        boolean computed = quantity.shown().written() == null && quantity.measure().equals(Measure.DURATION)
                && quantity.aim().isBounded();
        if (!computed) {
            return PlainText.number(QuantityFormat.show(quantity));
        }
        String least = time(quantity.aim().least());
        String most = time(quantity.aim().most());
        return least.equals(most) ? least : least + " to " + most;
    }

    /** A unit of time in full: {@code 5 per h} is read as five per hour. */
    private static String each(String each) {
        return switch (each) {
            case "h" -> "hour";
            case "min" -> "minute";
            case "s" -> "second";
            default -> each;
        };
    }

    /** Seconds as people say them: {@code 40 s}, {@code 15 min}, {@code 1 h 30 min}; empty for NaN. */
    static String time(double seconds) {
        if (Double.isNaN(seconds)) {
            return "";
        }
        long whole = (long) StrictMath.ceil(seconds - 1e-6);
        List<String> parts = new ArrayList<>();
        if (whole >= 3600) {
            parts.add(whole / 3600 + "\u00A0h");
        }
        if (whole % 3600 >= 60) {
            parts.add(whole % 3600 / 60 + "\u00A0min");
        }
        if (whole % 60 > 0 || parts.isEmpty()) {
            parts.add(whole % 60 + "\u00A0s");
        }
        return String.join(" ", parts);
    }
}
