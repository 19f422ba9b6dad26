package org.ricasso.dsl.trial.faults;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A knife as a text, and where in it each thing stands. */
final class KnifeText {
    /** A stretch of the text: a step, something in it, or an entry of the spec. */
    record Stretch(int start, int end) {
        boolean holds(int from, int to) {
            return from < end && to > start;
        }
    }

    private final StringBuilder out = new StringBuilder();
    private final Map<Integer, Stretch> steps = new LinkedHashMap<>();
    private final Map<String, Stretch> inSteps = new LinkedHashMap<>();
    private final Map<String, Stretch> entries = new LinkedHashMap<>();
    private final Map<Integer, Integer> numbers = new LinkedHashMap<>();
    private final List<Stretch> loops = new ArrayList<>();

    KnifeText(WrittenKnife knife) {
        knife.parts().forEach((part, of) -> {
            out.append("route ").append(route(knife, part)).append(" \"").append(part).append("\" {\n");
            steps(of, 5000);
            out.append("}\n\n");
        });
        out.append("knife ").append(knife.name()).append(" \"").append(knife.title()).append("\" {\n");
        spec(knife.spec());
        out.append("    route {\n");
        steps(knife.steps(), 0);
        knife.parts().keySet().forEach(part -> out.append("        part ").append(part).append(" like ").append(route(knife, part)).append('\n'));
        for (WrittenKnife.Loop loop : knife.loops()) {
            int start = out.length();
            out.append("        rework ").append(numbers.get(loop.from())).append(" to ").append(numbers.get(loop.to()))
                    .append(" { when: ").append(loop.when()).append("; times: ").append(loop.times()).append(" }\n");
            loops.add(new Stretch(start, out.length()));
        }
        out.append("    }\n}\n");
    }

    String text() {
        return out.toString();
    }

    Stretch step(int id) {
        return steps.get(id);
    }

    /** A setting or a measurement of a step. */
    Stretch in(int id, String name) {
        return inSteps.get(id + " " + name);
    }

    Stretch entry(String path) {
        return entries.get(path);
    }

    List<Stretch> loops() {
        return loops;
    }

    private static String route(WrittenKnife knife, String part) {
        return knife.name() + "-" + part;
    }

    private void spec(Map<String, String> spec) {
        List<String> open = new ArrayList<>();
        for (Map.Entry<String, String> entry : spec.entrySet()) {
            List<String> path = List.of(entry.getKey().split("\\."));
            List<String> blocks = path.subList(0, path.size() - 1);
            int same = 0;
            while (same < Math.min(open.size(), blocks.size()) && open.get(same).equals(blocks.get(same))) {
                same++;
            }
            close(open, same);
            for (String block : blocks.subList(same, blocks.size())) {
                indent(open.size() + 1).append(block).append(" {\n");
                open.add(block);
            }
            int start = out.length();
            indent(open.size() + 1).append(path.get(path.size() - 1)).append(": ").append(entry.getValue()).append('\n');
            entries.put(entry.getKey(), new Stretch(start, out.length()));
        }
        close(open, 0);
    }

    private void close(List<String> open, int left) {
        while (open.size() > left) {
            indent(open.size()).append("}\n");
            open.remove(open.size() - 1);
        }
    }

    private StringBuilder indent(int depth) {
        return out.append("    ".repeat(depth));
    }

    /** @param after the number after which they are numbered: no two steps of a knife share one */
    private void steps(List<WrittenStep> of, int after) {
        int number = after;
        for (WrittenStep step : of) {
            number += 10;
            numbers.put(step.id(), number);
            int start = out.length();
            indent(2).append(number).append(' ').append(step.operation());
            if (step.centre() != null) {
                out.append(" at ").append(step.centre());
            }
            out.append(" {\n");
            step.settings().forEach((setting, value) -> {
                int from = out.length();
                indent(3).append(setting).append(": ").append(value).append('\n');
                inSteps.put(step.id() + " " + setting, new Stretch(from, out.length()));
            });
            step.measures().forEach((measured, how) -> {
                int from = out.length();
                indent(3).append(measured).append(" {\n");
                how.forEach((entry, value) -> indent(4).append(entry).append(": ").append(value).append('\n'));
                indent(3).append("}\n");
                inSteps.put(step.id() + " " + measured, new Stretch(from, out.length()));
            });
            indent(2).append("}\n");
            steps.put(step.id(), new Stretch(start, out.length()));
        }
    }
}
