package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** What each step's page needs, taken from a walk. */
final class StepPages {
    private final Walk walk;
    private final Vocabulary vocabulary;

    StepPages(Walk walk) {
        this.walk = walk;
        this.vocabulary = walk.vocabulary;
    }

    List<CheckedStep> steps() {
        List<CheckedStep> result = new ArrayList<>();
        Map<Property, String> specified = Characteristics.specified(vocabulary, walk.product);
        for (int i = 0; i < walk.steps.size(); i++) {
            if (walk.steps.get(i).operation() != null) {
                result.add(step(i, specified));
            }
        }
        // a part's own steps stand where their numbers say, before the step that joins it
        result.sort(java.util.Comparator.comparingInt(CheckedStep::number));
        return result;
    }

    /** A route's rework, by the numbers of the steps. */
    static List<CheckedProduct.Loop> loops(Route route) {
        return route.loops().stream().map(loop -> new CheckedProduct.Loop(route.steps().get(loop.from()).number(),
                route.steps().get(loop.to()).number(), loop.when().path(), loop.times())).toList();
    }

    private CheckedStep step(int index, Map<Property, String> specified) {
        RouteStep step = walk.steps.get(index);
        Operation operation = step.operation();
        Frame frame = new Frame();
        frame.product = walk.product;
        frame.centre = step.centre();
        frame.settings = walk.settings[index];
        frame.before = walk.before[index];
        frame.after = walk.after[index];
        frame.lets = walk.lets[index];
        if (frame.lets == null) {
            frame.lets = new Value[operation.lets().size()];
            for (int i = 0; i < frame.lets.length; i++) {
                frame.lets[i] = operation.lets().get(i).eval(frame);
            }
        }
        List<CheckedStep.Setting> settings = new ArrayList<>();
        for (int i = 0; i < operation.takes().size(); i++) {
            if (!(frame.settings[i] instanceof Value.Absent)) {
                settings.add(new CheckedStep.Setting(operation.takes().get(i).name(), frame.settings[i],
                        step.settings()[i] == null));
            }
        }
        List<CheckedStep.Arrival> arrival = new ArrayList<>();
        for (Walk.Arrived arrived : walk.arrivals.get(index)) {
            Property property = arrived.need().property();
            arrival.add(new CheckedStep.Arrival(property.path(), property.name(), Conditions.text(arrived.condition()),
                    arrived.need().complaint(), arrived.found(), arrived.condition(), arrived.since()));
        }
        List<CheckedStep.Measured> measured = new ArrayList<>();
        for (RouteStep.Measure measure : step.measures()) {
            String path = specified.get(measure.property());
            Value limit = measure.limit() != null ? measure.limit() : path == null ? new Value.Absent("limit")
                    : walk.product.at(path);
            measured.add(new CheckedStep.Measured(measure.property().path(), measure.property().name(), limit,
                    path != null, measure.entries().entries()));
        }
        List<CheckedStep.Watched> watched = step.watches().stream().map(watch -> new CheckedStep.Watched(
                operation.takes().get(watch.setting()).name(), frame.settings[watch.setting()], watch.entries().entries())).toList();
        double setUp = operation.setUp() == null ? Double.NaN : Conditions.leastTime(operation.setUp(), frame);
        Value run = operation.run() == null ? null : operation.run().eval(frame);
        return new CheckedStep(step.number(), operation.name(), operation.title(), operation.purpose(),
                vocabulary.partTitle(operation.works()), operation.attributes(), step.centre(), settings, arrival,
                operation.instruct().stream().map(t -> t.filled(frame)).toList(), measured, watched, handOver(index),
                operation.disturbs().stream().map(slot -> vocabulary.properties().get(slot).path()).toList(), setUp, run,
                step.head(), new StepOrigins(vocabulary, walk.product).of(operation, frame));
    }

    private List<CheckedStep.HandOver> handOver(int index) {
        List<CheckedStep.HandOver> result = new ArrayList<>();
        Value[] before = walk.before[index];
        Value[] after = walk.after[index];
        for (Operation.Leave leave : walk.steps.get(index).operation().leaves()) {
            Property property = leave.property();
            Value value = after[property.slot()];
            if (!value.equals(before[property.slot()]) && !(value instanceof Value.Clock)
                    && !(value instanceof Value.Unknown)) {
                result.add(new CheckedStep.HandOver(property.path(), property.name(), value));
            }
        }
        return result;
    }
}
