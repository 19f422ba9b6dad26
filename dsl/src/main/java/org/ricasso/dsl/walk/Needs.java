package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.Comparisons;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.vocabulary.Operation;

/** What a step's operation needs of the piece that arrives, judged; what is not met is taken to be so for the step. */
final class Needs {
    private final Walk walk;

    Needs(Walk walk) {
        this.walk = walk;
    }

    /** How each need was met, in the order of the operation. */
    List<Walk.Arrived> judge(int index, Frame frame) {
        RouteStep step = walk.steps.get(index);
        List<Walk.Arrived> result = new ArrayList<>();
        for (Operation.Need need : step.operation().needs()) {
            int slot = need.property().slot();
            Value found = frame.before[slot];
            frame.clearNotes();
            Value asked = need.condition().eval(frame);
            int since = 0;
            if (Walk.isReported(found) || Walk.isReported(asked) || asked instanceof Value.Absent) {
                result.add(new Walk.Arrived(need, asked, found, 0));
                continue;
            }
            if (found instanceof Value.Unknown || asked instanceof Value.Unknown) {
                unmet(index, need, found, asked, Truth.UNKNOWN);
                frame.before[slot] = new Value.Unknown("reported", true);
            } else {
                Truth met = Comparisons.meets(found, asked, false);
                if (found instanceof Value.Clock && met == Truth.UNKNOWN) {
                    since = walk.lastChange[slot] < 0 ? 0 : walk.steps.get(walk.lastChange[slot]).number();
                } else if (met != Truth.ALL) {
                    unmet(index, need, found, asked, met);
                    frame.before[slot] = asIfMet(need.property(), found, asked);
                }
            }
            result.add(new Walk.Arrived(need, asked, found, since));
        }
        return result;
    }

    private void unmet(int index, Operation.Need need, Value found, Value asked, Truth met) {
        RouteStep step = walk.steps.get(index);
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
        walk.leftBy(property.slot(), step.span()).ifPresent(others::add);
        for (int setting : need.reads().settings) {
            if (step.places()[setting] != null) {
                others.add(new Mark(step.places()[setting], "asked for here"));
            }
        }
        walk.unmet.add(new Target.Unmet(property.slot(), asked));
        walk.into(property.slot()).add(new Finding("need-unmet", Severity.ERROR, step.span(), text, others, List.of(need.complaint()),
                List.of(), asked instanceof Value.Unknown ? List.of()
                        : List.of(new Finding.Attempt.Rearrange(index, Set.of(property.slot()), asked)))
                .about(Set.of(property.slot()), false));
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
}
