package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.Comparisons;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;

/**
 * One walk of a workpiece through a route: needs, rules, what each step leaves, measurements. After a finding it goes on as
 * if the need were met. A walk is run once and then read.
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
    /** Whether a step is walked again in a loop: what its page needs has been noted. */
    private boolean again;
    boolean margins;
    /** Where it is noted how values came about, or null where nobody asks. */
    Passes passes;
    private final Changes changes;
    private final RuleCheck rules;

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
            state = rework(base, index, state);
        }
        last = state;
        rules.product();
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

    /** The loops that end at a step, the inner ones first: unrolled, and all ways out joined. */
    private Value[] rework(int base, int index, Value[] state) {
        Value[] joined = state;
        for (Route.Loop loop : route.loops()) {
            if (base + loop.from() != index) {
                continue;
            }
            Value[] round = joined;
            for (int i = 0; i < loop.times(); i++) {
                boolean outer = again;
                again = true;
                for (int j = base + loop.to(); j <= index; j++) {
                    round = step(j, round);
                }
                again = outer;
                Value[] both = joined(joined, round);
                if (passes != null) {
                    passes.joined(index, steps.get(index), both, joined, round);
                }
                joined = both;
            }
            after[index] = joined;
        }
        return joined;
    }

    private Value[] joined(Value[] a, Value[] b) {
        Value[] result = new Value[a.length];
        for (int slot = 0; slot < a.length; slot++) {
            result[slot] = org.ricasso.dsl.evaluate.Joins.join(a[slot], b[slot], vocabulary.arithmetic());
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
                    ? new Value.Unknown("no step says " + property.path(), false) : settled(property, value);
        }
        if (passes != null) {
            passes.begin(state, frame);
        }
        return state;
    }

    private Value[] step(int index, Value[] from) {
        RouteStep step = steps.get(index);
        Value[] arrives = from.clone();
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
        List<Arrived> arrived = needs(index, frame);
        if (!again) {
            arrivals.add(arrived);
        }
        Value[] leaves = leave(index, operation, frame);
        frame.after = leaves;
        if (!again) {
            lets[index] = Arrays.equals(from, arrives) ? frame.lets : null;
            after[index] = leaves;
        }
        if (passes != null) {
            passes.step(index, step, from, frame);
        }
        rules.step(index, frame);
        spread(findings.subList(known, findings.size()));
        operation.disturbs().forEach(slot -> lastDisturbed[slot] = index);
        measured(index, leaves);
        if (again) {
            onlyNew(known);
        }
        return leaves;
    }

    /** Another round says only what the first one did not. */
    private void onlyNew(int known) {
        List<Finding> earlier = findings.subList(0, known);
        List<Finding> fresh = new ArrayList<>(findings.subList(known, findings.size()));
        fresh.removeIf(f -> earlier.stream().anyMatch(f::sameAs));
        findings.subList(known, findings.size()).clear();
        findings.addAll(fresh);
    }

    /** Where a finding on a property goes: to the suspects where the property is wrong already. */
    List<Finding> into(int slot) {
        return found[slot] ? suspects : findings;
    }

    /** What a step left from a setting that is wrong is wrong for the same reason. */
    private void spread(List<Finding> fresh) {
        for (Finding finding : fresh) {
            if (finding.severity() != Severity.ERROR) {
                continue;
            }
            for (int i = 0; i < steps.size() && settings[i] != null; i++) {
                Span[] places = steps.get(i).places();
                for (int k = 0; k < places.length; k++) {
                    if (finding.primary().equals(places[k])) {
                        spread(i, k);
                    }
                }
            }
        }
    }

    private void spread(int index, int setting) {
        for (Operation.Leave leave : steps.get(index).operation().leaves()) {
            int slot = leave.property().slot();
            if (leave.reads().settings.contains(setting) && lastChange[slot] == index) {
                found[slot] = true;
            }
        }
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

    private List<Arrived> needs(int index, Frame frame) {
        RouteStep step = steps.get(index);
        List<Arrived> result = new ArrayList<>();
        for (Operation.Need need : step.operation().needs()) {
            int slot = need.property().slot();
            Value found = frame.before[slot];
            frame.clearNotes();
            Value asked = need.condition().eval(frame);
            int since = 0;
            if (isReported(found) || isReported(asked) || asked instanceof Value.Absent) {
                result.add(new Arrived(need, asked, found, 0));
                continue;
            }
            if (found instanceof Value.Unknown || asked instanceof Value.Unknown) {
                unmet(index, need, found, asked, Truth.UNKNOWN);
                frame.before[slot] = new Value.Unknown("reported", true);
            } else {
                Truth met = Comparisons.meets(found, asked, false);
                if (found instanceof Value.Clock && met == Truth.UNKNOWN) {
                    since = lastChange[slot] < 0 ? 0 : steps.get(lastChange[slot]).number();
                } else if (met != Truth.ALL) {
                    unmet(index, need, found, asked, met);
                    frame.before[slot] = asIfMet(need.property(), found, asked);
                }
            }
            result.add(new Arrived(need, asked, found, since));
        }
        return result;
    }

    private void unmet(int index, Operation.Need need, Value found, Value asked, Truth met) {
        RouteStep step = steps.get(index);
        Property property = need.property();
        String text;
        if (found instanceof Value.Unknown unknown) {
            text = "nothing says " + property.name() + ", " + step.operation().name() + " needs " + Conditions.text(asked);
        } else if (asked instanceof Value.Unknown unknown) {
            text = "it cannot be told what " + property.name() + " has to be: " + unknown.reason();
        } else {
            text = property.name() + (met == Truth.SOME ? " can be " : " is ") + Shows.show(found) + ", "
                    + step.operation().name() + " needs " + Conditions.text(asked);
        }
        List<Mark> others = new ArrayList<>();
        leftBy(property.slot(), step.span()).ifPresent(others::add);
        for (int setting : need.reads().settings) {
            if (step.places()[setting] != null) {
                others.add(new Mark(step.places()[setting], "asked for here"));
            }
        }
        into(property.slot()).add(new Finding("need-unmet", Severity.ERROR, step.span(), text, others, List.of(need.complaint()),
                List.of(), List.of()));
    }

    /** The step that left a property as it is, or nothing where no step did. */
    java.util.Optional<Mark> leftBy(int slot, Span not) {
        int change = lastChange[slot];
        if (change < 0 || steps.get(change).span().equals(not)) {
            return java.util.Optional.empty();
        }
        RouteStep step = steps.get(change);
        return java.util.Optional.of(new Mark(step.span(), "step " + step.number() + " left "
                + vocabulary.properties().get(slot).name() + " so"));
    }

    private static Value asIfMet(Property property, Value found, Value asked) {
        if (asked instanceof Value.Several several && several.values().stream().allMatch(Value.Words.class::isInstance)) {
            return new Value.Words(several.values().stream().flatMap(v -> ((Value.Words) v).words().stream()).sorted()
                    .limit(1).toList());
        }
        if (found instanceof Value.Num || found instanceof Value.Along || found instanceof Value.Clock) {
            return new Value.Unknown("reported", true);
        }
        return asked instanceof Value.Several several ? several.values().get(0) : asked;
    }

    private Value[] leave(int index, Operation operation, Frame frame) {
        Value[] after = frame.before.clone();
        frame.clearNotes();
        frame.lets = new Value[operation.lets().size()];
        for (int i = 0; i < frame.lets.length; i++) {
            frame.lets[i] = operation.lets().get(i).eval(frame);
        }
        List<Frame.Refusal> fromLets = List.copyOf(frame.refusals);
        boolean[] foundBefore = found.clone();
        boolean reportedLets = frame.reported;
        for (Operation.Leave leave : operation.leaves()) {
            frame.clearNotes();
            Property property = leave.property();
            Value value = leave.value().eval(frame);
            if (value instanceof Value.Absent) {
                value = new Value.Unknown("no step says " + property.path(), false);
            } else if (value instanceof Value.Unknown unknown && !unknown.reported()) {
                // the in-between values first: they know which argument was refused
                List<Frame.Refusal> refusals = new ArrayList<>(fromLets);
                refusals.addAll(frame.refusals);
                boolean follows = leave.reads().properties.stream().anyMatch(slot -> foundBefore[slot]);
                if (!frame.reported && !reportedLets) {
                    refused(index, leave, unknown, refusals, follows ? suspects : findings);
                }
                value = new Value.Unknown(unknown.reason(), true);
            }
            value = settled(property, value);
            after[property.slot()] = value;
            found[property.slot()] = leave.reads().properties.stream().anyMatch(slot -> foundBefore[slot]);
            if (!value.equals(frame.before[property.slot()]) || value instanceof Value.Clock) {
                lastChange[property.slot()] = index;
            }
        }
        advanceClocks(index, operation, frame, after);
        return after;
    }

    /** A table or calculation gave no answer: said once, where the value stands that it was asked for. */
    private void refused(int index, Operation.Leave leave, Value.Unknown unknown, List<Frame.Refusal> refusals,
            List<Finding> into) {
        RouteStep step = steps.get(index);
        Frame.Refusal refusal = refusals.stream().filter(r -> r.reason().equals(unknown.reason())).findFirst()
                .orElse(new Frame.Refusal(unknown.reason(), leave.reads(), ""));
        int[] cause = cause(index, refusal.reads());
        Span primary = cause == null ? step.span() : steps.get(cause[0]).places()[cause[1]];
        List<Mark> others = new ArrayList<>();
        if (cause != null && cause[0] != index) {
            others.add(new Mark(step.span(), "needed here"));
        }
        List<int[]> search = Candidates.settings(this, index, leave);
        into.add(new Finding("cannot-be-told", Severity.ERROR, primary, leave.property().name()
                + " cannot be told: " + refusal.reason(), others, List.of(),
                refusal.source().isEmpty() ? List.of() : List.of(refusal.source()),
                List.of(new Finding.Attempt.Search(search, leave.property().slot()))));
    }

    /** The written setting, of this step or of the one that left what is read, behind some reads; or null. */
    private int[] cause(int index, org.ricasso.dsl.evaluate.Reads reads) {
        for (int setting : reads.settings) {
            if (steps.get(index).places()[setting] != null) {
                return new int[] {index, setting};
            }
        }
        for (int slot : reads.properties) {
            int change = lastChange[slot];
            if (change >= 0 && change < index) {
                for (Operation.Leave leave : steps.get(change).operation().leaves()) {
                    if (leave.property().slot() == slot) {
                        return cause(change, leave.reads());
                    }
                }
            }
        }
        return null;
    }

    private Value settled(Property property, Value value) {
        if (property.type() == org.ricasso.dsl.evaluate.Type.Plain.CLOCK && value instanceof Value.Num num) {
            return new Value.Clock(num.quantity().aim().least());
        }
        return Conditions.settled(property.type(), value, vocabulary.arithmetic());
    }

    /** Every step adds its own least time to clocks that run; one it starts begins when it ends. */
    private void advanceClocks(int index, Operation operation, Frame frame, Value[] after) {
        double least = Conditions.leastTime(operation.run(), frame);
        for (Property property : vocabulary.properties()) {
            int slot = property.slot();
            if (after[slot] instanceof Value.Clock clock && lastChange[slot] != index) {
                after[slot] = new Value.Clock(clock.atLeast() + least);
            }
        }
    }

    private void measured(int index, Value[] after) {
        for (RouteStep.Measure measure : steps.get(index).measures()) {
            Value found = after[measure.property().slot()];
            if (measure.limit() == null || isReported(measure.limit()) || isReported(found)
                    || found instanceof Value.Unknown) {
                continue;
            }
            if (Comparisons.meets(found, measure.limit(), false) == Truth.NONE) {
                List<Mark> others = new ArrayList<>();
                leftBy(measure.property().slot(), steps.get(index).span()).ifPresent(others::add);
                into(measure.property().slot()).add(new Finding("limit-out-of-reach", Severity.ERROR, measure.span(),
                        measure.property().name() + " is " + Shows.show(found) + " here, the limit is "
                                + Conditions.text(measure.limit()), others, List.of(), List.of(), List.of()));
            }
        }
    }

    /** Marks in every finding on a value that is taken over where it is taken over, too. */
    void markTakenOver() {
        Map<Span, Span> taken = new HashMap<>();
        product.places().values().forEach(place -> {
            if (place.inheritedAt() != null) {
                taken.put(place.value(), place.inheritedAt());
            }
        });
        for (RouteStep step : steps) {
            if (step.takenAt() == null) {
                continue;
            }
            taken.put(step.span(), step.takenAt());
            for (Span place : step.places()) {
                if (place != null && step.takenAt(place) != null) {
                    taken.put(place, step.takenAt());
                }
            }
            step.measures().forEach(m -> taken.put(m.span(), step.takenAt()));
        }
        findings.replaceAll(finding -> {
            Span at = taken.get(finding.primary());
            return at == null ? finding : finding.and(new Mark(at, "taken over by " + product.name() + " here"));
        });
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
