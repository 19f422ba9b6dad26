package org.ricasso.dsl.walk;

import java.util.List;
import java.util.stream.Collectors;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Solve;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;
import org.ricasso.shared.quantity.Shown;
import org.ricasso.shared.quantity.Unit;
import org.ricasso.dsl.solve.SettingSteps;

/** What is said where a setting cannot be solved for. */
final class SolveFindings {
    private static final int OFFERED = 3;
    private final Thing product;
    private final RouteStep step;
    private final Solve solve;
    private final String setting;
    private final String property;

    SolveFindings(Thing product, RouteStep step, Solve solve, String setting) {
        this.product = product;
        this.step = step;
        this.solve = solve;
        this.setting = setting;
        this.property = solve.property().name();
    }

    /** A value that was tried, as it would be written, and the aim that it leaves. */
    record Tried(String value, String leaves) {}

    Diagnostic notAsked() {
        return error("solve-not-asked", product.name() + " asks nothing of " + property + ", so there is no limit to solve for");
    }

    Diagnostic openLimit(Span place, String asked) {
        return error("solve-open-limit", property + " is asked for as " + asked + ", which has no middle to come near to")
                .and(new Mark(place, "asked for here")).remedy(new Remedy("write " + setting + " as a number", List.of()));
    }

    Diagnostic noRange() {
        return error("solve-no-range", "nothing says between which values " + setting + " can be set here")
                .because("a search needs an end at both sides: `within` of the operation's setting, or an entry " + setting
                        + " of the work centre");
    }

    Diagnostic noStep(String range, SettingSteps steps) {
        return error("solve-none", "no step of " + steps.step().toPlainString() + " " + steps.unit().sign() + " fits with ± "
                + steps.tolerance().toPlainString() + " " + steps.unit().sign() + " into " + range);
    }

    /** @param turn where the property turns back, or null where there are several windows */
    Diagnostic ambiguous(Span place, String turn, List<Tried> right) {
        String values = right.stream().map(t -> t.value() + " (leaves " + t.leaves() + ")").collect(Collectors.joining(", "));
        String text = turn == null ? "more than one " + setting + " is right: " + values
                : property + " does not move one way with " + setting + ": at " + turn + " it turns back; right "
                        + (right.size() == 1 ? "is " : "are ") + values;
        Diagnostic result = error("solve-ambiguous", text).and(new Mark(place, "asked for here"))
                .because("which of several is meant is the engineer's to say, and between values that were tried there may be more");
        for (Tried one : right.subList(0, Math.min(OFFERED, right.size()))) {
            result = result.remedy(new Remedy("write " + one.value(), List.of(new Edit(solve.span(), one.value()))));
        }
        return result;
    }

    Diagnostic missed(Span place, String asked, Tried best, String misses, List<String> because) {
        Diagnostic result = error("solve-none", "no " + setting + " gives " + property + " " + asked + "; the best, " + best.value()
                + ", leaves " + best.leaves() + " and misses it by " + misses).and(new Mark(place, "asked for here"));
        for (String one : because) {
            result = result.because(one);
        }
        return result;
    }

    Diagnostic noEffect(String is) {
        return error("solve-no-effect", property + " is " + is + " whatever " + setting + " is set to");
    }

    Diagnostic cannotBeTold(String reason) {
        return error("solve-none", property + " cannot be told at any " + setting + ": " + reason);
    }

    Diagnostic nothingAllowed(List<String> because) {
        Diagnostic result = error("solve-none", "something stands against every " + setting + " that can be set here");
        for (String one : because.stream().distinct().limit(OFFERED).toList()) {
            result = result.because(one);
        }
        return result;
    }

    private Diagnostic error(String name, String text) {
        Diagnostic result = Diagnostic.error(name, new Mark(solve.span(), text));
        Span taken = step.takenAt(solve.span());
        return taken == null ? result : result.and(new Mark(taken, "taken over by " + product.name() + " here"));
    }

    /** A difference of two numbers like this one, in its unit. */
    static String difference(Quantity like, double by) {
        Unit unit = like.shown().unit();
        Unit amount = unit.offset() == 0 ? unit
                : Unit.of(like.measure().dimension().toString(), like.measure().dimension(), 1, 1);
        Quantity quantity = new Quantity(new Measure(amount.dimension(), false), Interval.of(by), Interval.of(by), by,
                new Shown(amount, amount.decimals(), null));
        return QuantityFormat.number(quantity, by);
    }
}
