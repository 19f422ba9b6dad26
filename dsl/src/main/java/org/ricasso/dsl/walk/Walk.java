package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;

/**
 * One walk of a workpiece through a route: needs, rules, what each step leaves, measurements. A step whose need is not met does
 * its work as if it were; what it does not change stays as it came. A walk is run once and then read.
 */
final class Walk {
    final Vocabulary vocabulary;
    final Thing product;
    final Route route;
    /** All steps: those of the parts' own routes first, then those of the route itself. */
    final List<RouteStep> steps;
    final List<Finding> findings = new ArrayList<>();
    /** Findings on values that an earlier finding made wrong: they follow from it, unless mending it leaves them. */
    final List<Finding> suspects = new ArrayList<>();
    /** Needs that were not met, for trials of single steps. */
    final List<Target.Unmet> unmet = new ArrayList<>();
    final List<Judgement> judgements = new ArrayList<>();
    /** The state before and after each step, by the step's index. */
    final Value[][] before;
    final Value[][] after;
    /** For each slot the index of the step that changed it last, -1 for none. */
    final int[] lastChange;
    /** For each slot the index of the step that may have disturbed it last, -1 for none. */
    final int[] lastDisturbed;
    /** Slots whose numbers a rule has found wrong already; what follows from them is no finding of its own. */
    final boolean[] found;
    final Value[][] settings;
    /** In-between values of each step as its page would have them, by the step's index; null where a need was not met. */
    final Value[][] lets;
    final List<List<Arrived>> arrivals = new ArrayList<>();
    private Value[] first;
    private Value[] last;
    boolean margins;
    /** Where it is noted how values came about, or null where nobody asks. */
    Passes passes;
    private final Changes changes;
    private final RuleCheck rules;
    private final Needs needs = new Needs(this);
    private final Leaving leaving = new Leaving(this);
    private final Loops loops = new Loops(this);
    private final Marks marks = new Marks(this);

    /** How a need was met. {@code since} is the number of the step that started a clock, for a duty. */
    record Arrived(Operation.Need need, Value condition, Value found, int since) {}

    Walk(Vocabulary vocabulary, Route route, Changes changes) {
        this.vocabulary = vocabulary;
        this.product = changes.product();
        this.route = route;
        this.steps = route.all();
        this.before = new Value[steps.size()][];
        this.after = new Value[steps.size()][];
        this.settings = new Value[steps.size()][];
        this.lets = new Value[steps.size()][];
        this.changes = changes;
        this.lastChange = new int[vocabulary.properties().size()];
        this.lastDisturbed = new int[lastChange.length];
        this.found = new boolean[lastChange.length];
        this.rules = new RuleCheck(this);
        Arrays.fill(lastChange, -1);
        Arrays.fill(lastDisturbed, -1);
    }

    /** Has the margins of rules noted, which trials of remedies do without. */
    Walk withMargins() {
        margins = true;
        return this;
    }

    /** Has noted how every value comes about. */
    Walk withPasses() {
        passes = new Passes(vocabulary);
        return this;
    }

    Walk run() {
        first = start();
        int index = 0;
        Value[] state = first;
        for (Route.PartRoute part : route.parts()) {
            // alone, on a piece of its own; only the part comes into the product
            Value[] alone = first;
            for (int i = 0; i < part.steps().size(); i++) {
                alone = step(index++, alone);
            }
            state = withPart(state, alone, part.part());
        }
        int base = index;
        for (; index < steps.size(); index++) {
            state = step(index, state);
            state = loops.around(base, index, state);
        }
        last = state;
        rules.product();
        new SettingRules(this).judge();
        new MeasurementRules(this).judge();
        return this;
    }

    private Value[] withPart(Value[] state, Value[] alone, String part) {
        Value[] result = state.clone();
        for (Property property : vocabulary.properties()) {
            if (part.equals(property.part())) {
                result[property.slot()] = alone[property.slot()];
            }
        }
        if (passes != null) {
            passes.joinedIn(result, state, alone, part);
        }
        return result;
    }

    /** The state at the start of the route. */
    Value[] first() {
        return first;
    }

    /** The state at the end of the route. */
    Value[] last() {
        return last;
    }

    private Value[] start() {
        Value[] state = new Value[lastChange.length];
        Frame frame = new Frame();
        frame.product = product;
        for (Property property : vocabulary.properties()) {
            Value value = property.starts() == null ? null : property.starts().eval(frame);
            state[property.slot()] = value == null || value instanceof Value.Absent
                    ? new Value.Unknown("no step says " + property.path(), false) : leaving.settled(property, value);
        }
        if (passes != null) {
            passes.begin(state, frame);
        }
        return state;
    }

    /** Walks a step: what it leaves of what comes. */
    Value[] step(int index, Value[] from) {
        RouteStep step = steps.get(index);
        Value[] arrives = from.clone();
        boolean again = loops.again();
        if (!again) {
            before[index] = from;
        }
        if (step.operation() == null) {
            // nothing can be said of a step that is not known, nor of the piece after it
            Arrays.fill(arrives, new Value.Unknown("an unknown step", true));
            settings[index] = new Value[0];
            after[index] = arrives;
            if (!again) {
                arrivals.add(List.of());
            }
            if (passes != null) {
                passes.unknown(arrives);
            }
            return arrives;
        }
        Operation operation = step.operation();
        int known = findings.size();
        Frame frame = new Frame();
        frame.product = product;
        frame.centre = step.centre();
        frame.operation = operation.title();
        frame.before = arrives;
        frame.settings = settings(index, step, frame);
        settings[index] = frame.settings;
        List<Arrived> arrived = needs.judge(index, frame);
        if (!again) {
            arrivals.add(arrived);
        }
        Value[] leaves = leaving.leave(index, operation, frame, from);
        frame.after = leaves;
        if (!again) {
            lets[index] = Arrays.equals(from, arrives) ? frame.lets : null;
            after[index] = leaves;
        }
        if (passes != null) {
            passes.step(index, step, from, frame);
        }
        rules.step(index, frame);
        for (int slot = 0; slot < from.length; slot++) {
            // a need that was not met: whoever lacks the same later follows from it
            found[slot] |= arrives[slot] != from[slot] && lastChange[slot] != index;
        }
        marks.spread(findings.subList(known, findings.size()));
        operation.disturbs().forEach(slot -> lastDisturbed[slot] = index);
        marks.measured(index, leaves);
        if (again) {
            loops.onlyNew(known);
        }
        return leaves;
    }

    /** Where a finding on a property goes: to the suspects where the property is wrong already. */
    List<Finding> into(int slot) {
        return found[slot] ? suspects : findings;
    }

    /** The entries of a measurement, marked by its name in the step. */
    Value.Entries measurement(Span name, Value.Entries written) {
        return changes.measurements().getOrDefault(name, written);
    }

    private Value[] settings(int index, RouteStep step, Frame frame) {
        Value[] result = new Value[step.settings().length];
        Map<Integer, Value> other = changes.settings().getOrDefault(index, Map.of());
        for (int i = 0; i < result.length; i++) {
            Value value = other.getOrDefault(i, step.settings()[i]);
            result[i] = value != null ? value : step.operation().takes().get(i).byDefault().eval(frame);
        }
        return result;
    }

    /** The step that left a property as it is, or nothing where no step did. */
    Optional<Mark> leftBy(int slot, Span not) {
        int change = lastChange[slot];
        if (change < 0 || steps.get(change).span().equals(not)) {
            return Optional.empty();
        }
        RouteStep step = steps.get(change);
        return Optional.of(new Mark(step.span(), "step " + step.number() + " left "
                + vocabulary.properties().get(slot).name() + " so"));
    }

    /** Marks in every finding on a value that is taken over where it is taken over, too. */
    void markTakenOver() {
        marks.takenOver();
    }

    static boolean isReported(Value value) {
        return value instanceof Value.Unknown unknown && unknown.reported();
    }

    /** The node that left a property last, with its step; or null. */
    Node leftFrom(int slot) {
        int change = lastChange[slot];
        if (change < 0) {
            return null;
        }
        for (Operation.Leave leave : steps.get(change).operation().leaves()) {
            if (leave.property().slot() == slot) {
                return leave.value();
            }
        }
        return null;
    }
}
