package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.CheckedStep;

/** What a piece must be like when it arrives at a step, and the times that have to be written down for it. */
final class Arrivals {
    private final CheckedProduct product;
    private final Sheets sheets;
    private final Tongue tongue;

    Arrivals(CheckedProduct product, Sheets sheets, Tongue tongue) {
        this.product = product;
        this.sheets = sheets;
        this.tongue = tongue;
    }

    /** What the piece must be like on arrival, but for times. */
    List<WorkInstruction.Arrival> of(CheckedStep step) {
        return step.arrival().stream()
                .filter(a -> !a.isDuty())
                .map(a -> new WorkInstruction.Arrival(tongue.property(product.product(), a.path(), step.works()), condition(a),
                        complaint(step, a)))
                .toList();
    }

    private String condition(CheckedStep.Arrival arrival) {
        Where where = Tongue.property(product.product(), arrival.path());
        if (arrival.asked() == null) {
            return tongue.typeset(tongue.quoted(arrival.condition()));
        }
        return arrival.asked() instanceof Value.Several several
                ? tongue.page().join("values.either", several.values().stream().map(v -> tongue.values().line(v, where)).toList())
                : tongue.values().typeset(arrival.asked(), where);
    }

    /** Times that the step has to keep. */
    List<WorkInstruction.Clock> timeIn(CheckedStep step) {
        return step.arrival().stream()
                .filter(CheckedStep.Arrival::isDuty)
                .map(a -> clock(step, a, sheets.step(a.since())))
                .toList();
    }

    /** Clocks of later steps that begin with this one. */
    List<WorkInstruction.Clock> timeOut(CheckedStep step) {
        List<WorkInstruction.Clock> result = new ArrayList<>();
        for (CheckedStep later : product.steps()) {
            for (CheckedStep.Arrival arrival : later.arrival()) {
                if (arrival.isDuty() && arrival.since() == step.number()) {
                    result.add(clock(later, arrival, sheets.step(later.number())));
                }
            }
        }
        return result;
    }

    private WorkInstruction.Clock clock(CheckedStep step, CheckedStep.Arrival duty, List<StepLink> other) {
        return new WorkInstruction.Clock(tongue.label(Tongue.property(product.product(), duty.path())), condition(duty), other,
                complaint(step, duty));
    }

    /** A reason as a sentence of its own. */
    private String complaint(CheckedStep step, CheckedStep.Arrival arrival) {
        String text = arrival.complaint();
        if (text == null || text.isBlank()) {
            return "";
        }
        String said = Names.capital(tongue.typeset(Sheets.operation(step), text.strip()));
        return said + (Marks.plain(said).matches("(?s).*[.!?]") ? "" : ".");
    }
}
