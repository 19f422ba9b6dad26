package org.ricasso.dsl.trial.faults;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.oracle.Figure;
import org.ricasso.oracle.Job;

/** Texts as plain figures: literals are read here once more, so that the second opinion owes nothing to how they are checked. */
final class Plain {
    private static final String N = "([+-]?\\d+(?:\\.\\d+)?)";
    private static final String U = "\\s*([^\\s\\d(±]\\S*)?";
    private static final Pattern EITHER = Pattern.compile(N + "(?:\\s*(°C|°F|°|[^\\s\\d(±]\\S*))?\\s*±\\s*" + N + U);
    private static final Pattern UNEVEN = Pattern.compile(N + "\\s*\\(\\+" + N + "/-?" + N + "\\)" + U);
    private static final Pattern RANGE = Pattern.compile(N + "\\.\\." + N + U);
    private static final Pattern LIMIT = Pattern.compile("(max|min)\\s+" + N + U);
    private static final Pattern SINGLE = Pattern.compile(N + U);

    /** Entries that name a thing whose name may look like a number. */
    private static final List<String> NAMED = List.of("blade.steel");

    private Plain() {}

    static Figure figure(String text) {
        String value = text.strip();
        if (value.startsWith("|")) {
            Map<String, Figure.Number> places = new LinkedHashMap<>();
            value.lines().skip(1).map(line -> line.strip().split("\\|")).forEach(cells -> {
                Figure.Number number = number(cells[2].strip());
                if (number != null) {
                    places.put(cells[1].strip(), number);
                }
            });
            return new Figure.Along(places);
        }
        if (value.startsWith("\"")) {
            return new Figure.Word(value.substring(1, value.length() - 1));
        }
        Figure.Number number = number(value);
        if (number != null) {
            return number;
        }
        if (value.contains(",")) {
            List<Figure> figures = new ArrayList<>();
            for (String element : value.split(",")) {
                figures.add(figure(element));
            }
            return new Figure.Several(figures);
        }
        return new Figure.Word(value);
    }

    /** A number with its ends, or null. */
    static Figure.Number number(String text) {
        Matcher either = EITHER.matcher(text);
        if (either.matches()) {
            double middle = Double.parseDouble(either.group(1));
            double way = Double.parseDouble(either.group(3));
            String unit = unit(either.group(2), either.group(4));
            if ("%".equals(either.group(4)) && either.group(2) != null && !"%".equals(either.group(2))) {
                way = Math.abs(middle) * way / 100;
                unit = either.group(2);
            }
            return new Figure.Number(middle - way, middle, middle + way, unit);
        }
        Matcher uneven = UNEVEN.matcher(text);
        if (uneven.matches()) {
            double middle = Double.parseDouble(uneven.group(1));
            return new Figure.Number(middle - Double.parseDouble(uneven.group(3)), middle,
                    middle + Double.parseDouble(uneven.group(2)), unit(uneven.group(4), null));
        }
        Matcher range = RANGE.matcher(text);
        if (range.matches()) {
            double least = Double.parseDouble(range.group(1));
            double most = Double.parseDouble(range.group(2));
            return new Figure.Number(least, (least + most) / 2, most, unit(range.group(3), null));
        }
        Matcher limit = LIMIT.matcher(text);
        if (limit.matches()) {
            double end = Double.parseDouble(limit.group(2));
            boolean max = limit.group(1).equals("max");
            return new Figure.Number(max ? Double.NEGATIVE_INFINITY : end, end, max ? end : Double.POSITIVE_INFINITY,
                    unit(limit.group(3), null));
        }
        Matcher single = SINGLE.matcher(text);
        if (single.matches()) {
            double value = Double.parseDouble(single.group(1));
            return new Figure.Number(value, value, value, unit(single.group(2), null));
        }
        return null;
    }

    private static String unit(String first, String second) {
        return first != null ? first : second != null ? second : "";
    }

    /** A knife as a job. */
    static Job job(WrittenKnife knife, Map<String, Map<String, Figure>> things) {
        Map<String, Figure> spec = new LinkedHashMap<>();
        knife.spec().forEach((path, text) -> spec.put(path, NAMED.contains(path) ? new Figure.Word(text) : figure(text)));
        List<WrittenStep> all = knife.all();
        List<Job.Step> steps = all.stream().map(Plain::step).toList();
        List<Integer> ids = all.stream().map(WrittenStep::id).toList();
        List<Job.Loop> loops = knife.loops().stream()
                .map(l -> new Job.Loop(ids.indexOf(l.from()), ids.indexOf(l.to()), l.when(), l.times())).toList();
        return new Job(spec.get("number") instanceof Figure.Word w ? w.word() : "", spec, steps, loops, things);
    }

    private static Job.Step step(WrittenStep step) {
        Map<String, Figure> settings = new LinkedHashMap<>();
        step.settings().forEach((setting, text) -> settings.put(setting, figure(text)));
        Map<String, Figure> limits = new LinkedHashMap<>();
        step.measures().forEach((measured, how) -> limits.put(measured, figure(how.getOrDefault("limit", ""))));
        return new Job.Step(step.operation(), step.centre(), settings, limits);
    }

    /** A thing's entries. */
    static Map<String, Figure> entries(Thing thing) {
        Map<String, Figure> result = new LinkedHashMap<>();
        thing.entries().forEach((name, value) -> {
            Figure figure = figure(value);
            if (figure != null) {
                result.put(name, figure);
            }
        });
        return result;
    }

    private static Figure figure(Value value) {
        if (value instanceof Value.Several several) {
            return new Figure.Several(several.values().stream().map(Plain::figure).filter(f -> f != null).toList());
        }
        if (value instanceof Value.Ref || value instanceof Value.Words) {
            return new Figure.Word(Shows.show(value));
        }
        if (value instanceof Value.Num) {
            return figure(Shows.show(value));
        }
        return value instanceof Value.Txt text ? new Figure.Word(text.text()) : null;
    }
}
