package org.ricasso.dsl.trial.faults;

import static org.ricasso.dsl.trial.faults.Fault.in;
import static org.ricasso.dsl.trial.faults.Fault.places;
import static org.ricasso.dsl.trial.faults.Fault.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ricasso.oracle.Figure;
import org.ricasso.oracle.Job;
import org.ricasso.oracle.Windows;

/** Mistakes in what steps are set to: values outside their windows and, honestly, inside; other units; other centres. */
final class ChangedSettings {
    /** The first number of a literal and its unit. */
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:\\.\\d+)?");
    /** A unit that is mistaken for another of the same kind. */
    private static final Map<String, String> MISTAKEN = Map.ofEntries(Map.entry("mm", "inch"), Map.entry("°C", "°F"),
            Map.entry("min", "h"), Map.entry("h", "min"), Map.entry("s", "min"), Map.entry("bar", "mbar"), Map.entry("kN", "N"),
            Map.entry("MN", "kN"), Map.entry("m/s", "mm/s"), Map.entry("mm/s", "m/s"), Map.entry("MPa", "bar"), Map.entry("kHz", "Hz"),
            Map.entry("W", "kW"), Map.entry("N", "kN"), Map.entry("µm", "mm"), Map.entry("g", "kg"));
    private static final List<String> SIZES = List.of("edge-to", "tang-to", "bolster-to", "height-to", "length-to", "width-to",
            "thickness-to", "counterbore-to", "thick-to", "shut-off", "angle-to", "bow-to", "pitch-to", "deep-to", "depth");
    private final WrittenKnife knife;
    private final Job job;
    private final Random random;
    private final List<Fault> faults = new ArrayList<>();

    private ChangedSettings(WrittenKnife knife, Job job, Random random) {
        this.knife = knife;
        this.job = job;
        this.random = random;
    }

    static List<Fault> of(WrittenKnife knife, Job job, Random random) {
        ChangedSettings seeds = new ChangedSettings(knife, job, random);
        List<WrittenStep> all = knife.all();
        for (int i = 0; i < all.size(); i++) {
            for (String setting : all.get(i).settings().keySet()) {
                seeds.values(i, all.get(i), setting);
            }
        }
        return seeds.faults;
    }

    private void values(int place, WrittenStep step, String setting) {
        String text = step.settings().get(setting);
        if (Plain.figure(text) instanceof Figure.Along) {
            along(step, setting, text);
            return;
        }
        Figure.Number number = Plain.number(text);
        if (number == null || Double.isInfinite(number.least()) || Double.isInfinite(number.most())) {
            return;
        }
        Windows.Window window = Windows.of(job, place, setting);
        if (window != null) {
            window(step, setting, text, number, window);
        } else if (SIZES.contains(setting)) {
            double way = Math.max(number.most() - number.least(), 0.02 * number.middle());
            value(step, setting, text, 3 * way, "value off", "far larger");
            if (number.least() - 3 * way > 0) {
                value(step, setting, text, -3 * way, "value off", "far smaller");
            }
            value(step, setting, text, (random.nextBoolean() || number.least() == 0 ? 0.02 : -0.02) * way, "value within", "a trifle off");
        }
        if (window != null || SIZES.contains(setting)) {
            unit(step, setting, text, number.unit());
        }
        if (!number.unit().isEmpty() && random.nextInt(3) == 0) {
            String other = List.of("s", "min", "h", "d").contains(number.unit()) ? "mm" : "min";
            add("unit of another kind", step, setting, unitIn(text, number.unit(), other), "in " + other);
        }
    }

    private void along(WrittenStep step, String setting, String text) {
        List<String> lines = text.lines().toList();
        int line = 2 + random.nextInt(lines.size() - 2);
        for (double by : new double[] {0.4, -0.4, 0.005}) {
            List<String> other = new ArrayList<>(lines);
            String[] cells = lines.get(line).split("\\|");
            other.set(line, cells[0] + "|" + cells[1] + "|" + moved(cells[2], by) + "|");
            add(Math.abs(by) > 0.1 ? "value off" : "value within", step, setting, String.join("\n", other),
                    by + " mm at " + cells[1].strip());
        }
    }

    /** Inside the window at a random place, a little outside at an end, and a slip of the decimal point. */
    private void window(WrittenStep step, String setting, String text, Figure.Number number, Windows.Window window) {
        double scale = scale(window.unit(), number.unit());
        double width = window.most() - window.least();
        boolean whole = number.unit().isEmpty() && !text.contains(".");
        double inside = window.least() + width * (0.25 + 0.5 * random.nextDouble());
        double high = window.most() + 0.3 * width;
        double low = window.least() - 0.3 * width;
        set("value within", step, setting, text, number, whole ? Math.rint(inside) : inside, scale, "elsewhere in its window");
        set("value off", step, setting, text, number, whole ? Math.ceil(high) : high, scale, "above its window");
        if (low > 0 || window.least() < 0) {
            set("value off", step, setting, text, number, whole ? Math.floor(low) : low, scale, "below its window");
        }
        set("value off", step, setting, text, number, number.middle() / scale * 10, scale, "ten times");
    }

    private void set(String kind, WrittenStep step, String setting, String text, Figure.Number number, double to, double scale,
            String what) {
        double by = to * scale - number.middle();
        if (!number.unit().equals("°C") && !number.unit().equals("°F") || scale == 1) {
            value(step, setting, text, by, kind, what);
        }
    }

    private static double scale(String from, String to) {
        Figure.Number one = new Figure.Number(1, 1, 1, from);
        return from.equals(to) ? 1 : Windows.in(one, to);
    }

    private void value(WrittenStep step, String setting, String text, double by, String kind, String what) {
        add(kind, step, setting, moved(text, by), what);
    }

    /** The literal with all its absolute numbers moved; tolerances stay. */
    private static String moved(String text, double by) {
        StringBuilder out = new StringBuilder();
        Matcher numbers = NUMBER.matcher(text);
        int end = 0;
        while (numbers.find()) {
            String before = text.substring(end, numbers.start());
            out.append(before);
            boolean tolerance = before.contains("±") || before.contains("(") || before.contains("/");
            double value = Double.parseDouble(numbers.group());
            out.append(tolerance ? numbers.group() : number(value + by, numbers.group()));
            end = numbers.end();
        }
        return out.append(text.substring(end)).toString();
    }

    private static String number(double value, String like) {
        int decimals = like.contains(".") ? Math.max(3, like.length() - like.indexOf('.') - 1) : value == Math.rint(value) ? 0 : 3;
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    private void unit(WrittenStep step, String setting, String text, String unit) {
        String other = MISTAKEN.get(unit);
        if (other != null) {
            add("unit", step, setting, unitIn(text, unit, other), "in " + other);
        }
    }

    private static String unitIn(String text, String unit, String other) {
        return text.replaceAll("(?<=[\\d\\s)])" + Pattern.quote(unit) + "(?=\\s|$)", Matcher.quoteReplacement(other));
    }

    private void add(String kind, WrittenStep step, String setting, String value, String what) {
        if (!value.equals(step.settings().get(setting))) {
            faults.add(new Fault(kind, step.operation() + " " + setting + " " + what, knife.with(step.with(setting, value)),
                    places(in(step.id(), setting)), false));
        }
    }

    /**
     * Centres: of another kind, an equal one, and one that is too small.
     *
     * @param centres all centres; those named {@code …-twin} and {@code …-small} are made for this
     */
    static List<Fault> centres(WrittenKnife knife, Random random, Map<String, Map<String, Figure>> centres) {
        List<Fault> faults = new ArrayList<>();
        List<String> plain = centres.keySet().stream().filter(c -> !c.endsWith("-twin") && !c.endsWith("-small")).sorted().toList();
        for (WrittenStep step : knife.all()) {
            if (step.centre() == null) {
                continue;
            }
            String other = plain.get(random.nextInt(plain.size()));
            for (String centre : List.of(other, step.centre() + "-twin", step.centre() + "-small")) {
                // every second or third is enough
                if (random.nextInt(centre.endsWith("-twin") ? 3 : 2) == 0 && centres.containsKey(centre) && !centre.equals(step.centre())) {
                    String kind = centre.equals(other) ? "wrong centre" : centre.endsWith("twin") ? "equal centre" : "small centre";
                    faults.add(new Fault(kind, kind + " for " + step.operation() + ("wrong centre".equals(kind) ? ": " + other : ""),
                            knife.with(step.at(centre)), places(step(step.id())), false));
                }
            }
        }
        return faults;
    }
}
