package org.ricasso.oracle;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Windows of settings. {@code settings.csv} says which of the reference's parameters a setting of ours is; the reference's table
 * gives least and most. What a step is set to must lie inside, its tolerance may reach out.
 */
public final class Windows {
    /** A window: least and most in a unit as the reference writes it. */
    public record Window(double least, double most, double typical, String unit, String parameter) {
        public boolean holds(double value) {
            return value >= least - 1e-9 && value <= most + 1e-9;
        }
    }

    private static final Map<String, Window> WINDOWS = read();
    /** Units of the reference's table that say what is meant as well. */
    private static final Map<String, String> UNITS = Map.of("count", "", "count alternating", "", "% of thickness", "%", "% mass", "%",
            "% of injection", "%", "µm Ra", "µm", "x handle length", "", "knives", "", "mN/m", "", "P", "");

    /** What settings measure, by a unit of it. */
    private static final Map<String, String> KINDS = Table.rows("kinds.csv").stream()
            .collect(Collectors.toMap(r -> r.get("setting"), r -> r.get("unit")));

    private Windows() {}

    private static Map<String, Window> read() {
        Map<String, Map<String, String>> parameters = new HashMap<>();
        Table.rows("operation-parameters.csv").forEach(r -> parameters.put(r.get("op_id") + " " + r.get("parameter"), r));
        return Table.rows("settings.csv").stream().collect(Collectors.toMap(r -> r.get("operation") + " " + r.get("setting"), r -> {
            Map<String, String> p = parameters.get(r.get("op") + " " + r.get("parameter"));
            return new Window(Double.parseDouble(p.get("min")), Double.parseDouble(p.get("max")),
                    Double.parseDouble(p.get("typical")), p.get("unit"), r.get("op") + " " + r.get("parameter"));
        }));
    }

    /** The window of a step's setting, in the reference's unit; null where the reference has none for it. */
    public static Window of(Job job, int step, String setting) {
        Job.Step s = job.steps().get(step);
        Window window = WINDOWS.get(s.operation() + " " + setting);
        if (s.operation().equals("wash") && isMounted(job, step)) {
            // with a handle on: OP350
            return switch (setting) {
                case "temperature" -> new Window(40, 60, 50, "°C", "OP350 temperature with plastic/laminate handle");
                case "hold" -> new Window(1, 5, 3, "min", "OP350 time");
                default -> window;
            };
        }
        if (s.operation().equals("wash") && setting.equals("temperature") && isHard(job, step)) {
            return new Window(55, 80, 65, "°C", "OP350 temperature metal only");
        }
        if (setting.equals("bow-to")) {
            return s.operation().equals("straighten") || s.operation().equals("clamp-temper")
                    ? new Window(0, 0.8, 0.4, "mm", "OP220 straightness") : new Window(0, 0.4, 0.25, "mm", "OP140 flatness");
        }
        if (s.operation().equals("sharpen-on-belt") && setting.equals("angle-to")) {
            return new Window(12, 25, 17, "°", "OP530 angle per side");
        }
        if (s.operation().equals("cure-print") && setting.equals("temperature")) {
            return isMounted(job, step) ? new Window(60, 80, 70, "°C", "OP400 cure plastics")
                    : new Window(120, 160, 150, "°C", "OP400 cure metal");
        }
        return window == null ? null : new Window(window.least, window.most, window.typical,
                UNITS.getOrDefault(window.unit, window.unit), window.parameter);
    }

    private static boolean isMounted(Job job, int step) {
        return job.steps().subList(0, step).stream().anyMatch(s -> States.OPERATIONS.get(s.operation()).leaves().containsKey("mount"));
    }

    private static boolean isHard(Job job, int step) {
        return job.steps().subList(0, step).stream().anyMatch(s -> s.operation().startsWith("quench-"));
    }

    /** How many of another unit one is. */
    public static double in(Figure.Number one, String other) {
        return Units.convert(one.middle(), one.unit(), other);
    }

    static void judge(Reading reading) {
        List<Job.Step> steps = reading.job.steps();
        for (int i = 0; i < steps.size(); i++) {
            for (Map.Entry<String, Figure> setting : steps.get(i).settings().entrySet()) {
                Window window = of(reading.job, i, setting.getKey());
                String kind = KINDS.get(setting.getKey());
                boolean share = setting.getKey().equals("clearance") && reading.job.steps().get(i).operation().startsWith("c");
                if (window == null && kind != null && setting.getValue() instanceof Figure.Number number
                        && number.in(share ? "%" : kind) == null) {
                    reading.add("unit", true, i, setting.getKey(), "it does not measure what " + (share ? "%" : kind) + " does");
                }
                if (window != null && setting.getValue() instanceof Figure.Number number) {
                    Figure.Number asked = number.in(window.unit());
                    if (asked == null) {
                        reading.add("unit", true, i, setting.getKey(), number.unit() + " does not measure what " + window.unit() + " does");
                    } else if (!window.holds(asked.middle()) && asked.middle() != Double.POSITIVE_INFINITY) {
                        reading.add(window.parameter(), false, i, setting.getKey(), asked.middle() + " " + window.unit() + " is outside "
                                + window.least() + ".." + window.most());
                    }
                }
            }
        }
    }
}
