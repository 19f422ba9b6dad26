package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Reads;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Operation;

/** What a step leaves: all of it reads the piece as it arrived. */
final class Leaving {
    private final Walk walk;

    Leaving(Walk walk) {
        this.walk = walk;
    }

    /** @param from the piece as it came, before needs were taken to be met */
    Value[] leave(int index, Operation operation, Frame frame, Value[] from) {
        Value[] after = frame.before.clone();
        for (int slot = 0; slot < after.length; slot++) {
            // what was lacking is lacking still, unless the step makes it
            after[slot] = from[slot] instanceof Value.Unknown ? after[slot] : from[slot];
        }
        frame.clearNotes();
        frame.lets = new Value[operation.lets().size()];
        for (int i = 0; i < frame.lets.length; i++) {
            frame.lets[i] = operation.lets().get(i).eval(frame);
        }
        List<Frame.Refusal> fromLets = List.copyOf(frame.refusals);
        boolean[] foundBefore = walk.found.clone();
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
                    refused(index, leave, unknown, refusals, follows ? walk.suspects : walk.findings);
                }
                value = new Value.Unknown(unknown.reason(), true);
            }
            value = settled(property, value);
            boolean changed = !value.equals(after[property.slot()]) || value instanceof Value.Clock;
            after[property.slot()] = value;
            walk.found[property.slot()] = leave.reads().properties.stream().anyMatch(slot -> foundBefore[slot]);
            if (changed) {
                walk.lastChange[property.slot()] = index;
            }
        }
        advanceClocks(index, operation, frame, after);
        return after;
    }

    /** A table or calculation gave no answer: said once, where the value stands that it was asked for. */
    private void refused(int index, Operation.Leave leave, Value.Unknown unknown, List<Frame.Refusal> refusals,
            List<Finding> into) {
        RouteStep step = walk.steps.get(index);
        Frame.Refusal refusal = refusals.stream().filter(r -> r.reason().equals(unknown.reason())).findFirst()
                .orElse(new Frame.Refusal(unknown.reason(), leave.reads(), ""));
        int[] cause = cause(index, refusal.reads());
        Span primary = cause == null ? step.span() : walk.steps.get(cause[0]).places()[cause[1]];
        List<Mark> others = new ArrayList<>();
        if (cause != null && cause[0] != index) {
            others.add(new Mark(step.span(), "needed here"));
        }
        List<int[]> search = Candidates.settings(walk, index, leave);
        into.add(new Finding("cannot-be-told", Severity.ERROR, primary, leave.property().name()
                + " cannot be told: " + refusal.reason(), others, List.of(),
                refusal.source().isEmpty() ? List.of() : List.of(refusal.source()),
                List.of(new Finding.Attempt.Search(search, leave.property().slot()))));
    }

    /** The written setting, of this step or of the one that left what is read, behind some reads; or null. */
    private int[] cause(int index, Reads reads) {
        for (int setting : reads.settings) {
            if (walk.steps.get(index).places()[setting] != null) {
                return new int[] {index, setting};
            }
        }
        for (int slot : reads.properties) {
            int change = walk.lastChange[slot];
            if (change >= 0 && change < index) {
                for (Operation.Leave leave : walk.steps.get(change).operation().leaves()) {
                    if (leave.property().slot() == slot) {
                        return cause(change, leave.reads());
                    }
                }
            }
        }
        return null;
    }

    Value settled(Property property, Value value) {
        if (property.type() == Type.Plain.CLOCK && value instanceof Value.Num num) {
            return new Value.Clock(num.quantity().aim().least());
        }
        return Conditions.settled(property.type(), value, walk.vocabulary.arithmetic());
    }

    /** Every step adds its own least time to clocks that run; one it starts begins when it ends. */
    private void advanceClocks(int index, Operation operation, Frame frame, Value[] after) {
        double least = Conditions.leastTime(operation.run(), frame);
        for (Property property : walk.vocabulary.properties()) {
            int slot = property.slot();
            if (after[slot] instanceof Value.Clock clock && walk.lastChange[slot] != index) {
                after[slot] = new Value.Clock(clock.atLeast() + least);
            }
        }
    }
}
