package org.ricasso.dsl.house;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.LimitFindings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.source.Limits;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Damage;
import org.ricasso.dsl.syntax.EntryValue;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.syntax.RouteItem;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** Reads a whole route: its steps, the routes of its parts, and its loops, which have to be able to mend what failed. */
final class Loops {
    private static final int MOST = 3;
    private final Vocabulary vocabulary;
    private final Findings findings;
    private final RouteReader reader;

    /** @param changesLost whether what the product changes of the steps it takes over could not be read whole */
    Loops(Vocabulary vocabulary, Findings findings, Thing product, Damage damage, boolean changesLost) {
        this.vocabulary = vocabulary;
        this.findings = findings;
        this.reader = new RouteReader(vocabulary, findings, product, damage, changesLost);
    }

    /**
     * @param text where the route is written, or null where it comes from several
     * @return null after a finding, where the route is longer than is walked
     */
    Route read(ResolvedRoute route, Span text) {
        if (isTooLong(route)) {
            return null;
        }
        List<RouteStep> steps = reader.read(route.steps(), text);
        List<Route.PartRoute> parts = new ArrayList<>();
        for (ResolvedRoute.Part part : route.parts()) {
            part(part.item(), reader.read(part.steps(), null), steps, parts);
        }
        List<Route.Loop> loops = new ArrayList<>();
        int again = 0;
        for (RouteItem.Rework rework : route.loops()) {
            Route.Loop loop = loop(rework, steps);
            if (loop != null && apart(loop, loops)) {
                again += loop.times() * (loop.from() - loop.to() + 1);
                if (again > Limits.REWORK_STEPS) {
                    findings.add(LimitFindings.reworkTooLong(loop.span()));
                    break;
                }
                loops.add(loop);
            }
        }
        Route result = new Route(steps, parts, loops);
        oneSolve(result);
        return result;
    }

    /** Two unknowns have no one solution. */
    private void oneSolve(Route route) {
        List<Solve> solves = route.all().stream().flatMap(s -> s.solves().stream()).toList();
        for (Solve other : solves.subList(Math.min(1, solves.size()), solves.size())) {
            findings.add(Diagnostic.error("solve-twice", new Mark(other.span(), "a route solves for one setting only"))
                    .and(new Mark(solves.get(0).span(), "first here"))
                    .because("of two unknowns each could make up for the other"));
        }
    }

    private boolean isTooLong(ResolvedRoute route) {
        int steps = route.steps().size();
        for (ResolvedRoute.Part part : route.parts()) {
            steps += part.steps().size();
        }
        if (steps > Limits.ROUTE_STEPS) {
            // the step with which it is too long, or where a part's route is taken over
            Span place = route.steps().size() > Limits.ROUTE_STEPS
                    ? route.steps().get(Limits.ROUTE_STEPS).step().number().span()
                    : route.parts().get(route.parts().size() - 1).item().span();
            findings.add(LimitFindings.routeTooLong(place, steps));
        }
        return steps > Limits.ROUTE_STEPS;
    }

    private void part(RouteItem.Part part, List<RouteStep> own, List<RouteStep> steps, List<Route.PartRoute> parts) {
        String name = part.part().text();
        if (!vocabulary.parts().contains(name)) {
            findings.unknownName(part.part().span(), "part", name, vocabulary.parts());
            return;
        }
        for (RouteStep step : own) {
            steps.stream().filter(s -> s.number() == step.number()).findFirst().ifPresent(s -> findings.add(
                    Diagnostic.error("step-number-twice", new Mark(step.numbered(), "step " + step.number()
                            + " stands in the route of the " + vocabulary.productKind() + ", too"))
                            .and(new Mark(s.numbered(), "here")).and(new Mark(part.span(), "taken for the "
                                    + name))));
            if (step.operation() != null && step.operation().works() != null && !step.operation().works().equals(name)) {
                findings.add(Diagnostic.error("part-not-worked", new Mark(step.span(), step.operation().name()
                        + " works the " + step.operation().works() + ", this is the route of the " + name))
                        .and(new Mark(part.span(), "taken for the " + name)));
            }
        }
        List<RouteStep> joining = steps.stream().filter(s -> s.operation() != null && s.operation().joins().contains(name)).toList();
        if (joining.isEmpty()) {
            findings.error("part-not-joined", part.span(), "no step of the route joins the " + name);
        } else if (joining.size() > 1) {
            findings.add(Diagnostic.error("part-joined-twice", new Mark(joining.get(1).span(), "step " + joining.get(0).number()
                    + " has joined the " + name + " already")).and(new Mark(joining.get(0).span(), "here")));
        }
        parts.add(new Route.PartRoute(name, own, part.span()));
    }

    private Route.Loop loop(RouteItem.Rework rework, List<RouteStep> steps) {
        int from = index(rework.from(), steps);
        int to = index(rework.to(), steps);
        if (from < 0 || to < 0) {
            return null;
        }
        if (to > from) {
            findings.error("rework-forward", rework.span(), "rework goes back: step " + rework.to() + " stands behind step "
                    + rework.from());
            return null;
        }
        Name when = null;
        int times = 0;
        Span timesSpan = rework.span();
        for (Block.Item item : rework.block().items()) {
            if (!(item instanceof Block.Item.Entry entry)) {
                continue;
            }
            EntryValue value = entry.value();
            if (entry.path().text().equals("when") && value instanceof Expression.NameUse use) {
                when = use.name();
            } else if (entry.path().text().equals("times") && value instanceof Expression.Literal literal
                    && literal.unit() == null && literal.first().digits().matches("[0-9]{1,3}")) {
                times = Integer.parseInt(literal.first().digits());
                timesSpan = literal.span();
            } else {
                findings.unknownName(entry.path().span(), "entry of rework", entry.path().text(), List.of("when", "times"));
            }
        }
        if (times < 1 || times > MOST) {
            findings.add(Diagnostic.error("rework-limit", new Mark(timesSpan, "rework says times: 1, 2 or 3"))
                    .because("without a limit a piece goes round until it is used up"));
            return null;
        }
        return when == null ? missing(rework) : mended(rework, steps, from, to, when, times);
    }

    private Route.Loop missing(RouteItem.Rework rework) {
        findings.error("rework-when", rework.span(), "rework says when: the property that is not right");
        return null;
    }

    private Route.Loop mended(RouteItem.Rework rework, List<RouteStep> steps, int from, int to, Name when, int times) {
        Operation at = steps.get(from).operation();
        Property property = at == null ? null : vocabulary.propertyFor(at.works(), when.text());
        if (property == null) {
            if (at != null) {
                findings.unknownName(when.span(), "property", when.text(),
                        vocabulary.properties().stream().map(Property::name).toList());
            }
            return null;
        }
        if (steps.get(from).measures().stream().noneMatch(m -> m.property() == property)) {
            findings.add(Diagnostic.error("rework-unmeasured", new Mark(when.span(), "step " + rework.from()
                    + " does not measure " + when + ", so nobody knows when to go back"))
                    .and(new Mark(steps.get(from).span(), "the step")));
        }
        boolean mends = steps.subList(to, from + 1).stream().anyMatch(s -> s.operation() == null
                || s.operation().leaves().stream().anyMatch(l -> l.property() == property));
        if (!mends) {
            findings.add(Diagnostic.error("rework-cannot-mend", new Mark(when.span(), "no step from " + rework.to() + " to "
                    + rework.from() + " changes " + when))
                    .because("the piece would come round as it went"));
        }
        return new Route.Loop(from, to, property, times, rework.span(), List.of(rework.from().span(), rework.to().span()));
    }

    private int index(Name number, List<RouteStep> steps) {
        Set<String> known = new LinkedHashSet<>();
        boolean once = true;
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).numbered().text().equals(number.text())) {
                return i;
            }
            once &= known.add(steps.get(i).numbered().text());
        }
        if (!once) {
            // the step may be one of two that have the same number, which is reported
            return -1;
        }
        findings.error("unknown-step", number.span(), "there is no step " + number + "; there are "
                + String.join(", ", known));
        return -1;
    }

    /** Loops may stand inside each other but not cross. */
    private boolean apart(Route.Loop loop, List<Route.Loop> others) {
        for (Route.Loop other : others) {
            boolean crosses = loop.to() < other.to() && loop.from() >= other.to() && loop.from() < other.from()
                    || other.to() < loop.to() && other.from() >= loop.to() && other.from() < loop.from();
            if (crosses) {
                findings.add(Diagnostic.error("rework-crosses", new Mark(loop.span(), "this loop crosses another"))
                        .and(new Mark(other.span(), "the other")));
                return false;
            }
        }
        return true;
    }
}
