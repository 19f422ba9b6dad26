package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Table;
import org.ricasso.dsl.evaluate.Uses;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Origin;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.calculation.Calculation;

/** Which knowledge of a library or of the works' own a step rests on. */
final class StepOrigins {
    private final Vocabulary vocabulary;
    private final Thing product;

    StepOrigins(Vocabulary vocabulary, Thing product) {
        this.vocabulary = vocabulary;
        this.product = product;
    }

    /** @param frame the step's frame, with settings, in-between values and the state before it */
    List<Brought> of(Operation operation, Frame frame) {
        Set<Brought> result = new LinkedHashSet<>();
        Origin written = Origin.of(operation.span());
        if (!written.isOurs()) {
            result.add(new Brought("operation", operation.name(), operation.title(), written, Brought.place(operation.span()),
                    vocabulary.replaced("operation", operation.name()) != null));
        }
        for (Value setting : frame.settings) {
            things(setting, result);
        }
        for (Operation.Leave leave : operation.leaves()) {
            leave.reads().product.forEach(path -> things(product.at(path), result));
        }
        for (Operation.Need need : operation.needs()) {
            need.reads().product.forEach(path -> things(product.at(path), result));
        }
        if (operation.leaves().stream().anyMatch(l -> l.reads().calls.stream().anyMatch(this::brought))) {
            used(operation, frame, result);
        }
        return List.copyOf(result);
    }

    /** Whether a table holds rows, or a calculation is, of a library or of the works' own. */
    private boolean brought(String call) {
        Table table = vocabulary.table(call);
        if (table != null) {
            return !Origin.of(table.span()).isOurs() || table.rows().stream().anyMatch(r -> r.layer() != Table.Layer.TABLE);
        }
        Calculation calculation = vocabulary.calculation(call);
        return calculation != null && !calculation.provider().library().isEmpty();
    }

    /** Works out again what the step leaves, to see which rows are asked. */
    private void used(Operation operation, Frame frame, Set<Brought> result) {
        Frame again = new Frame();
        again.product = frame.product;
        again.centre = frame.centre;
        again.settings = frame.settings;
        again.before = frame.before;
        again.uses = new Uses();
        List<Node> lets = operation.lets();
        again.lets = new Value[lets.size()];
        for (int i = 0; i < again.lets.length; i++) {
            again.lets[i] = lets.get(i).eval(again);
        }
        operation.leaves().forEach(leave -> leave.value().eval(again));
        again.uses.rows.forEach((row, table) -> {
            Origin origin = Origin.of(row.span());
            if (!origin.isOurs()) {
                result.add(new Brought("table", table.name(), table.title(), origin, Brought.place(row.span()),
                        row.layer() != Table.Layer.TABLE));
            }
        });
        for (Calculation calculation : again.uses.calculations) {
            if (!calculation.provider().library().isEmpty()) {
                result.add(new Brought("calculation", calculation.name(), calculation.title(),
                        Origin.of(calculation.provider().library()), calculation.provider().type(), false));
            }
        }
    }

    /** Things of a library, and those that stand in place of what is shipped; all others are the works' own by nature. */
    private static void things(Value value, Set<Brought> result) {
        List<Value> values = new ArrayList<>();
        if (value instanceof Value.Several several) {
            values.addAll(several.values());
        } else {
            values.add(value);
        }
        for (Value one : values) {
            if (one instanceof Value.Ref ref) {
                Brought.of(ref.thing()).ifPresent(result::add);
            }
        }
    }
}
