package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * How a value came about.
 *
 * @param text the expression as written
 * @param value what it was worth
 * @param source the table rows, formula or place behind it, or empty
 * @param inputs what it was made from
 */
public record Derivation(String text, Value value, String source, List<Derivation> inputs) {
    public Derivation {
        inputs = List.copyOf(inputs);
    }

    /** The derivation as indented lines; what only repeats its text is left out. */
    public List<String> lines() {
        List<String> result = new ArrayList<>();
        print(result, "");
        return result;
    }

    private void print(List<String> lines, String indent) {
        String shown = shownWithReach();
        boolean plain = inputs.isEmpty() && source.isEmpty() && shown.equals(text);
        if (!plain) {
            lines.add(indent + text + " = " + shown + (source.isEmpty() ? "" : "   [" + source + "]"));
            for (Derivation input : inputs) {
                input.print(lines, indent + "  ");
            }
        }
    }

    private String shownWithReach() {
        String shown = Shows.show(value);
        if (value instanceof Value.Num num && num.quantity().hasScatter()) {
            return shown + " (reach " + org.ricasso.shared.quantity.QuantityFormat.reach(num.quantity()) + ")";
        }
        return shown;
    }

    /** All sources in it, outermost first, each once. */
    public Set<String> sources() {
        Set<String> result = new LinkedHashSet<>();
        collect(result);
        return result;
    }

    private void collect(Set<String> result) {
        if (!source.isEmpty()) {
            result.add(source);
        }
        for (Derivation input : inputs) {
            input.collect(result);
        }
    }
}
