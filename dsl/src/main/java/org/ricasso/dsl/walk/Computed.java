package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ricasso.dsl.evaluate.Derivation;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Input;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Trace;
import org.ricasso.dsl.evaluate.Value;

/**
 * A value with all that is needed to compute it again.
 *
 * @param name the name of its formula: the same name, the same expression, in one house
 * @param node the expression
 * @param value what it is worth
 * @param left for each state that it reads, by the way it is written, the pass that left it so
 * @param found what tables and calculations answered on the way, each with its source
 */
public record Computed(String name, Node node, Value value, Map<String, String> left, List<Derivation> found) {
    public Computed {
        left = java.util.Collections.unmodifiableMap(left);
        found = List.copyOf(found);
    }

    /** Says which pass left a state as an expression reads it; null where none did. */
    @FunctionalInterface
    interface Leaver {
        String of(Input.Source.State state);
    }

    /** The value of an expression that reads no state of the workpiece. */
    public static Computed of(String name, Node node, Frame frame) {
        return of(name, node, frame, state -> null);
    }

    static Computed of(String name, Node node, Frame frame, Leaver leaver) {
        Trace before = frame.trace;
        frame.trace = new Trace(true);
        Value value = node.eval(frame);
        List<Derivation> found = new ArrayList<>();
        frame.trace.finished().forEach(derivation -> collect(derivation, found));
        frame.trace = before;
        return new Computed(name, node, value, left(node, leaver), found);
    }

    static Map<String, String> left(Node node, Leaver leaver) {
        Map<String, String> left = new TreeMap<>();
        for (Input input : node.inputs()) {
            if (input.from() instanceof Input.Source.State state) {
                String pass = leaver.of(state);
                if (pass != null) {
                    left.put(input.as(), pass);
                }
            }
        }
        return left;
    }

    /** Answers inside another answer's arguments come first, as they were asked first. */
    private static void collect(Derivation derivation, List<Derivation> found) {
        derivation.inputs().forEach(input -> collect(input, found));
        if (!derivation.source().isEmpty() && found.stream().noneMatch(f -> f.text().equals(derivation.text()))) {
            found.add(new Derivation(derivation.text(), derivation.value(), derivation.source(), List.of()));
        }
    }
}
