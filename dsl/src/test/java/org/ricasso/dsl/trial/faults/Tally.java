package org.ricasso.dsl.trial.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.ricasso.oracle.Violation;

/** Counts of outcomes by kind of fault, and the report of them. */
final class Tally {
    private final List<Outcome> outcomes;

    Tally(List<Outcome> outcomes) {
        this.outcomes = List.copyOf(outcomes);
    }

    int seeded() {
        return outcomes.size();
    }

    long sound() {
        return count(o -> !o.unsound());
    }

    long wronglyRefused() {
        return count(o -> !o.unsound() && !o.passes());
    }

    double caught() {
        return share(Outcome::caught, Outcome::unsound);
    }

    double located() {
        return share(Outcome::located, o -> o.unsound() && o.caught());
    }

    double working() {
        return (double) sum(Outcome::work) / sum(Outcome::remedies);
    }

    private double share(Predicate<Outcome> of, Predicate<Outcome> all) {
        return (double) count(all.and(of)) / count(all);
    }

    private long count(Predicate<Outcome> of) {
        return outcomes.stream().filter(of).count();
    }

    private int sum(ToIntFunction<Outcome> of) {
        return outcomes.stream().mapToInt(of).sum();
    }

    /**
     * The report as JSON.
     *
     * @param refused routes in which nothing was seeded, and why
     */
    String json(Map<String, String> refused) {
        StringBuilder out = new StringBuilder("{\n  \"total\": ");
        counts(out, outcomes);
        out.append(",\n  \"kinds\": {");
        Map<String, List<Outcome>> kinds = outcomes.stream().collect(Collectors.groupingBy(o -> o.fault().kind(), TreeMap::new,
                Collectors.toList()));
        List<String> lines = new ArrayList<>();
        kinds.forEach((kind, of) -> {
            StringBuilder line = new StringBuilder("\n    ").append(quoted(kind)).append(": ");
            counts(line, of);
            lines.add(line.toString());
        });
        out.append(String.join(",", lines)).append("\n  }");
        Map<String, Long> rules = outcomes.stream().flatMap(o -> o.violations().stream().map(Violation::rule).distinct())
                .collect(Collectors.groupingBy(rule -> rule, TreeMap::new, Collectors.counting()));
        out.append(",\n  \"faults by what they violate\": {").append(rules.entrySet().stream()
                .map(e -> "\n    " + quoted(e.getKey()) + ": " + e.getValue()).collect(Collectors.joining(","))).append("\n  }");
        out.append(",\n  \"routes left out\": {").append(refused.entrySet().stream()
                .map(e -> "\n    " + quoted(e.getKey()) + ": " + quoted(e.getValue())).collect(Collectors.joining(","))).append("\n  }");
        cases(out, "missed", kinds, o -> o.unsound() && !o.caught());
        cases(out, "refused though sound", kinds, o -> !o.unsound() && !o.passes());
        cases(out, "not located", kinds, o -> o.unsound() && o.caught() && !o.located());
        cases(out, "remedies that do not make the build pass", kinds, o -> o.work() < o.remedies());
        return out.append("\n}\n").toString();
    }

    private static void counts(StringBuilder out, List<Outcome> of) {
        Tally tally = new Tally(of);
        out.append("{ \"seeded\": ").append(of.size())
                .append(", \"sound\": ").append(tally.sound())
                .append(", \"refused though sound\": ").append(tally.wronglyRefused())
                .append(", \"unsound\": ").append(tally.count(Outcome::unsound))
                .append(", \"caught\": ").append(tally.count(o -> o.unsound() && o.caught()))
                .append(", \"located\": ").append(tally.count(o -> o.unsound() && o.caught() && o.located()))
                .append(", \"remedies offered\": ").append(tally.sum(Outcome::remedies))
                .append(", \"remedies that work\": ").append(tally.sum(Outcome::work)).append(" }");
    }

    private static void cases(StringBuilder out, String name, Map<String, List<Outcome>> kinds, Predicate<Outcome> which) {
        out.append(",\n  ").append(quoted(name)).append(": {");
        List<String> lists = new ArrayList<>();
        kinds.forEach((kind, of) -> {
            List<String> lines = of.stream().filter(which).map(o -> "\n      " + quoted(o.line())).toList();
            if (!lines.isEmpty()) {
                lists.add("\n    " + quoted(kind) + ": [" + String.join(",", lines) + "\n    ]");
            }
        });
        out.append(String.join(",", lists)).append("\n  }");
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + '"';
    }
}
