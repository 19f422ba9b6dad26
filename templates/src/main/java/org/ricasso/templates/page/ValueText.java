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
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;

/** Values of the language as they stand on a page, in the page's language. */
final class ValueText {
    private static final String NUMBER = "([-+]?\\d+(?:\\.\\d+)?)";
    private static final Pattern DEVIATIONS =
            Pattern.compile(NUMBER + " ?\\(" + NUMBER + " ?/ ?" + NUMBER + "\\)( .+)?");

    private final Tongue tongue;

    ValueText(Tongue tongue) {
        this.tongue = tongue;
    }

    Shown shown(Value value, Where where) {
        return shown(value, where, false);
    }

    /** @param byDefault whether the value stands because nothing was written */
    Shown shown(Value value, Where where, boolean byDefault) {
        List<Shown.Line> lines = new ArrayList<>();
        boolean computed = add(lines, "", value, where);
        return new Shown(lines, computed && !byDefault, byDefault);
    }

    /** @return whether the value was computed */
    private boolean add(List<Shown.Line> lines, String at, Value value, Where where) {
        if (value instanceof Value.Num num) {
            return number(lines, at, num.quantity());
        }
        if (value instanceof Value.Along along) {
            boolean computed = false;
            for (Value.Station station : along.stations()) {
                computed |= number(lines, station.label().isEmpty() ? at
                        : tongue.say("values.station", "station", tongue.station(station.label())), station.quantity());
            }
            return computed;
        }
        if (value instanceof Value.Entries block) {
            boolean computed = false;
            Where inside = tongue.block(where);
            for (Map.Entry<String, Value> entry : block.entries().entrySet()) {
                if (!(entry.getValue() instanceof Value.Absent)) {
                    Where here = inside.in(entry.getKey());
                    computed |= add(lines, tongue.say("values.entry", "label", tongue.label(here)), entry.getValue(), here);
                }
            }
            return computed;
        }
        if (value instanceof Value.Several several && several.values().stream().anyMatch(ValueText::needsLine)) {
            boolean computed = false;
            for (Value element : several.values()) {
                computed |= add(lines, at, element, where);
            }
            return computed;
        }
        if (value instanceof Value.Ref ref) {
            lines.add(reference(at, ref.thing()));
            return false;
        }
        lines.add(new Shown.Line(at, line(value, where), "", ""));
        return computed(value);
    }

    /** Name and title, or the title alone where it says the name. */
    private Shown.Line reference(String at, Thing thing) {
        return squeezed(thing.title()).contains(squeezed(thing.name())) ? new Shown.Line(at, tongue.title(thing), "", "")
                : new Shown.Line(at, thing.name(), tongue.title(thing), "");
    }

    /** In a line: a code as it stands on the floor, but a name that is a word in the page's language. */
    private String called(Thing thing) {
        boolean code = thing.name().chars().anyMatch(Character::isDigit);
        return !code && squeezed(thing.title()).contains(squeezed(thing.name())) ? tongue.title(thing) : thing.name();
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

    private boolean number(List<Shown.Line> lines, String at, Quantity quantity) {
        boolean computed = quantity.shown().written() == null;
        String text = number(quantity);
        String reach = computed && quantity.hasScatter() ? tongue.numbers().number(QuantityFormat.reach(quantity)) : "";
        lines.add(new Shown.Line(at, text, window(quantity.shown().written()), reach.equals(text) ? "" : reach));
        return computed;
    }

    private String number(Quantity quantity) {
        return tongue.numbers().number(QuantityFormat.show(quantity));
    }

    /**
     * The ends of a number whose deviations differ, because {@code 120 (+20/0) min} is hard to say: {@code 120 to 140
     * min}. Exact: a limit is never rounded. Empty for all other numbers.
     */
    private String window(String written) {
        Matcher parts = written == null ? null : DEVIATIONS.matcher(written);
        if (parts == null || !parts.matches()) {
            return "";
        }
        BigDecimal nominal = new BigDecimal(parts.group(1));
        String least = nominal.add(new BigDecimal(parts.group(3))).toPlainString();
        String most = nominal.add(new BigDecimal(parts.group(2))).toPlainString();
        return tongue.numbers().number(least + ".." + most + (parts.group(4) == null ? "" : parts.group(4)));
    }

    /** The value on one line. */
    String line(Value value, Where where) {
        if (value instanceof Value.Num num) {
            return number(num.quantity());
        }
        if (value instanceof Value.Along along) {
            return along.stations().stream().map(s -> tongue.station(s.label()) + " " + number(s.quantity()))
                    .collect(Collectors.joining(", "));
        }
        if (value instanceof Value.Words words) {
            return tongue.page().join("values.either", words.words().stream().map(word -> tongue.word(where, word)).toList());
        }
        if (value instanceof Value.Txt text) {
            return tongue.text(where.owner(), text.text());
        }
        if (value instanceof Value.Logic logic) {
            return truth(logic.truth());
        }
        if (value instanceof Value.Several several) {
            return several.values().stream().map(v -> line(v, where)).collect(Collectors.joining(", "));
        }
        if (value instanceof Value.Ref ref) {
            return called(ref.thing());
        }
        if (value instanceof Value.Entries block) {
            Where inside = tongue.block(where);
            return block.entries().entrySet().stream().map(e -> tongue.say("values.entry", "label",
                    tongue.name(inside.in(e.getKey()))) + " " + line(e.getValue(), inside.in(e.getKey())))
                    .collect(Collectors.joining("; "));
        }
        if (value instanceof Value.Rate rate) {
            return rate.amount() == null ? tongue.each(rate.each())
                    : tongue.say("values.rate", "amount", amount(rate.amount()), "unit", tongue.each(rate.each()));
        }
        if (value instanceof Value.Unknown unknown) {
            return unknown.reason().isEmpty() ? tongue.say("values.not-known")
                    : tongue.say("values.not-known-why", "reason", tongue.quoted(unknown.reason()));
        }
        if (value instanceof Value.Clock clock) {
            return tongue.say("values.clock", "duration", tongue.numbers().number(Shows.duration(clock)));
        }
        if (value instanceof Value.Absent) {
            return tongue.say("values.not-stated");
        }
        return Marks.clean(Shows.show(value));
    }

    private String truth(Truth truth) {
        return tongue.say(switch (truth) {
            case ALL -> "values.yes";
            case NONE -> "values.no";
            case SOME -> "values.some";
            case UNKNOWN -> "values.unknown";
        });
    }

    /** The value with the numbers of its texts set. */
    String typeset(Value value, Where where) {
        return tongue.typeset(line(value, where));
    }

    private String amount(Quantity quantity) {
        boolean computed = quantity.shown().written() == null && quantity.measure().equals(Measure.DURATION)
                && quantity.aim().isBounded();
        if (!computed) {
            return number(quantity);
        }
        String least = time(quantity.aim().least());
        String most = time(quantity.aim().most());
        return least.equals(most) ? least : tongue.say("numbers.range", "least", least, "most", most);
    }

    /** Seconds as people say them: {@code 40 s}, {@code 15 min}, {@code 1 h 30 min}; empty for NaN. */
    String time(double seconds) {
        if (Double.isNaN(seconds)) {
            return "";
        }
        long whole = (long) StrictMath.ceil(seconds - 1e-6);
        List<String> parts = new ArrayList<>();
        if (whole >= 3600) {
            parts.add(tongue.numbers().with(whole / 3600, "h"));
        }
        if (whole % 3600 >= 60) {
            parts.add(tongue.numbers().with(whole % 3600 / 60, "min"));
        }
        if (whole % 60 > 0 || parts.isEmpty()) {
            parts.add(tongue.numbers().with(whole % 60, "s"));
        }
        return String.join(" ", parts);
    }
}
