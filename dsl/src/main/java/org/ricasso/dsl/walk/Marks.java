package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.Comparisons;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Operation;

/** What findings at one place mean for others: values that are wrong with it, and places that take it over. */
final class Marks {
    private final Walk walk;

    Marks(Walk walk) {
        this.walk = walk;
    }

    /** What a step left from a setting that is wrong is wrong for the same reason. */
    void spread(List<Finding> fresh) {
        for (Finding finding : fresh) {
            if (finding.severity() != Severity.ERROR) {
                continue;
            }
            for (int i = 0; i < walk.steps.size() && walk.settings[i] != null; i++) {
                Span[] places = walk.steps.get(i).places();
                for (int k = 0; k < places.length; k++) {
                    if (finding.primary().equals(places[k])) {
                        spread(i, k);
                    }
                }
            }
        }
    }

    private void spread(int index, int setting) {
        for (Operation.Leave leave : walk.steps.get(index).operation().leaves()) {
            int slot = leave.property().slot();
            if (leave.reads().settings.contains(setting) && walk.lastChange[slot] == index) {
                walk.found[slot] = true;
            }
        }
    }

    void measured(int index, Value[] after) {
        for (RouteStep.Measure measure : walk.steps.get(index).measures()) {
            Value found = after[measure.property().slot()];
            if (measure.limit() == null || Walk.isReported(measure.limit()) || Walk.isReported(found)
                    || found instanceof Value.Unknown) {
                continue;
            }
            if (Comparisons.meets(found, measure.limit(), false) == Truth.NONE) {
                List<Mark> others = new ArrayList<>();
                walk.leftBy(measure.property().slot(), walk.steps.get(index).span()).ifPresent(others::add);
                walk.into(measure.property().slot()).add(new Finding("limit-out-of-reach", Severity.ERROR, measure.span(),
                        measure.property().name() + " is " + Shows.show(found) + " here, the limit is "
                                + Conditions.text(measure.limit()), others, List.of(), List.of(), List.of()));
            }
        }
    }

    /** Marks in every finding on a value that is taken over where it is taken over, too. */
    void takenOver() {
        Map<Span, Span> taken = new HashMap<>();
        walk.product.places().values().forEach(place -> {
            if (place.inheritedAt() != null) {
                taken.put(place.value(), place.inheritedAt());
            }
        });
        for (RouteStep step : walk.steps) {
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
            step.watches().forEach(w -> taken.put(w.span(), step.takenAt()));
        }
        walk.findings.replaceAll(finding -> {
            Span at = taken.get(finding.primary());
            return at == null ? finding : finding.and(Mark.taker(at, walk.product.name()));
        });
    }
}
