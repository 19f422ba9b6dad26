package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.Arithmetic;
import org.ricasso.dsl.evaluate.Comparisons;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Solve;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.solve.Fingerprint;
import org.ricasso.dsl.solve.LockEntry;
import org.ricasso.dsl.solve.Search;
import org.ricasso.dsl.solve.SettingSteps;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.Unit;

/**
 * Solves for one setting of one product: its route is walked with every value that is tried, and what stands against some
 * values and not against others says which may be set at all.
 */
final class Solving {
    private static final Set<String> TARGETS = Set.of("characteristic-missed", "off-centre");
    /** Why a value is not known where that has been said already. */
    private static final Set<String> SAID = Set.of("a fault reported elsewhere", "reported", "an unknown step");
    private final Vocabulary vocabulary;
    private final Thing product;
    private final Route route;
    private final RouteStep step;
    private final Solution open;
    private final Solve solve;
    private final EntryType type;
    private final SolveFindings say;
    private final Map<Long, Walk> walks = new HashMap<>();
    private final Map<Long, Value> found = new HashMap<>();
    private Value asked;
    private Span place;
    private SettingSteps steps;

    Solving(Vocabulary vocabulary, Thing product, Route route, int index, Solve solve) {
        this.vocabulary = vocabulary;
        this.product = product;
        this.route = route;
        this.step = route.all().get(index);
        this.solve = solve;
        this.type = step.operation().takes().get(solve.setting());
        this.open = new Solution(product, index, solve, new LockEntry.Key(product.name(), step.number(), type.name()), null, null);
        this.say = new SolveFindings(product, step, solve, type.name());
    }

    Solution solution() {
        String path = Characteristics.specified(vocabulary, product).get(solve.property());
        if (path == null) {
            return open.with(say.notAsked());
        }
        asked = product.at(path);
        place = product.places().containsKey(path) ? product.places().get(path).value() : product.span();
        if (!(asked instanceof Value.Num limit)) {
            return open;
        }
        if (!limit.quantity().aim().isBounded()) {
            return open.with(say.openLimit(place, Shows.show(asked)));
        }
        double target;
        try {
            target = Arithmetic.onScaleOf(limit.quantity(), like()).aim().middle();
        } catch (IllegalArgumentException outsideTheHardnessTable) {
            return open;
        }
        Interval range = range();
        if (!range.isBounded()) {
            return open.with(say.noRange());
        }
        steps = steps();
        long least = steps.first(range.least());
        long most = steps.last(range.most());
        if (least > most) {
            return open.with(say.noStep(band(range), steps));
        }
        Search search = new Search(this::probe, least, most, target);
        return judged(search, search.run(), new Search.Window(least, most));
    }

    private Quantity like() {
        org.ricasso.dsl.evaluate.Type.Measured measured = (org.ricasso.dsl.evaluate.Type.Measured) solve.property().type();
        return Quantity.of(measured.measure(), 0, vocabulary.units().shownFor(measured.measure().dimension()));
    }

    /** What the operation and the centre's entry of the setting's name leave of all numbers. */
    private Interval range() {
        Interval range = type.within() == null ? Interval.EVERYTHING : type.within().aim();
        Value centre = step.centre() == null ? null : step.centre().at(type.name());
        if (centre instanceof Value.Num limits && measure().equals(limits.quantity().measure())
                && limits.quantity().aim().overlaps(range)) {
            Interval other = limits.quantity().aim();
            range = new Interval(Math.max(range.least(), other.least()), Math.min(range.most(), other.most()));
        }
        return range;
    }

    private org.ricasso.shared.quantity.Measure measure() {
        return ((org.ricasso.dsl.evaluate.Type.Measured) type.type()).measure();
    }

    private SettingSteps steps() {
        Unit written = solve.within().shown().unit();
        boolean point = measure().point();
        Unit unit = point && !written.point() ? vocabulary.units().shownFor(measure().dimension()) : written;
        Value own = step.centre() == null ? null : step.centre().at(type.name() + "-step");
        double finest = own instanceof Value.Num num && num.quantity().measure().equals(measure().difference())
                ? num.quantity().aim().middle() : Double.NaN;
        if (!(finest > 0)) {
            finest = written.toCoherent(StrictMath.pow(10, -solve.within().shown().decimals()), false);
        }
        return SettingSteps.of(unit, point, finest, solve.within().nominal());
    }

    private String band(Interval range) {
        return org.ricasso.shared.quantity.QuantityFormat.band(new Quantity(measure(), range, range, Double.NaN,
                org.ricasso.shared.quantity.Shown.in(type.within() != null ? type.within().shown().unit()
                        : vocabulary.units().shownFor(measure().dimension()))), range);
    }

    private Value read(String text) {
        return Attempts.read(vocabulary, product, text, type);
    }

    private Search.Probe probe(long at) {
        Value value = read(steps.text(at));
        if (value == null) {
            return new Search.Probe(Double.NaN, false, Set.of("outside the range"), Set.of());
        }
        Walk walk = new Walk(vocabulary, route, Changes.none(product).and(open.step(), solve.setting(), value)).run();
        new Characteristics(walk).judge();
        walks.put(at, walk);
        Value left = walk.last()[solve.property().slot()];
        found.put(at, left);
        Set<Object> against = new LinkedHashSet<>();
        Set<Long> offered = new TreeSet<>();
        for (Finding finding : against(walk)) {
            against.add(List.of(finding.name(), finding.primary()));
            for (Finding.Attempt attempt : finding.attempts()) {
                if (attempt instanceof Finding.Attempt.Setting other && other.step() == open.step()
                        && other.setting() == solve.setting() && read(other.value()) instanceof Value.Num num) {
                    double count = steps.count(num.quantity().aim().middle());
                    offered.add((long) StrictMath.floor(count));
                    offered.add((long) StrictMath.ceil(count));
                }
            }
        }
        double number = left instanceof Value.Num num ? num.quantity().aim().middle() : Double.NaN;
        return new Search.Probe(number, meets(left), against, offered);
    }

    /** Errors and warnings of a walk, but for what the search itself is to bring right. */
    private List<Finding> against(Walk walk) {
        List<Finding> result = new ArrayList<>(walk.findings);
        result.addAll(walk.suspects);
        result.removeIf(f -> f.severity() == Severity.NOTE || TARGETS.contains(f.name()) && f.primary().equals(place));
        return result;
    }

    private boolean meets(Value left) {
        try {
            return left instanceof Value.Num && Comparisons.meets(left, asked, false) == Truth.ALL;
        } catch (IllegalArgumentException outsideTheHardnessTable) {
            return false;
        }
    }

    private Solution judged(Search search, Search.Result result, Search.Window range) {
        if (result instanceof Search.Result.Found right) {
            return open.with(new LockEntry(open.key(), step.operation().name(), steps.text(right.at()), solve.property().name(),
                    Shows.show(asked), Characteristics.aim(found.get(right.at())), fingerprint(search, right.window())));
        }
        if (result instanceof Search.Result.Ambiguous many) {
            return open.with(say.ambiguous(place, many.turn() == null ? null : steps.text(many.turn()),
                    many.values().stream().map(at -> new SolveFindings.Tried(steps.text(at),
                            Characteristics.aim(found.get(at)))).toList()));
        }
        if (result instanceof Search.Result.Missed missed) {
            return open.with(missed(search, missed, range));
        }
        if (result instanceof Search.Result.NoEffect) {
            return open.with(say.noEffect(Characteristics.aim(found.values().stream().filter(Value.Num.class::isInstance)
                    .findFirst().orElseThrow())));
        }
        return nothing();
    }

    private Diagnostic missed(Search search, Search.Result.Missed missed, Search.Window range) {
        Quantity limit = ((Value.Num) asked).quantity();
        Quantity left = ((Value.Num) found.get(missed.best())).quantity();
        Interval band = Arithmetic.onScaleOf(limit, left).aim();
        double by = Math.max(band.least() - left.aim().least(), left.aim().most() - band.most());
        String misses = SolveFindings.difference(left, by);
        long beyond = missed.best() == missed.window().first() ? missed.best() - 1
                : missed.best() == missed.window().last() ? missed.best() + 1 : missed.best();
        List<String> because = new ArrayList<>();
        if (beyond == missed.best()) {
            because.add("with " + steps.text(missed.best()) + " the aim is " + SolveFindings.difference(left, left.aim().width())
                    + " wide, the limit " + SolveFindings.difference(left, band.width()));
        } else if (beyond < range.first() || beyond > range.last()) {
            because.add(type.name() + " can be set from " + steps.text(range.first()) + " to " + steps.text(range.last()) + " here");
        } else {
            search.probe(beyond);
            because.addAll(reasons(beyond));
        }
        return say.missed(place, Shows.show(asked), new SolveFindings.Tried(steps.text(missed.best()),
                Characteristics.aim(found.get(missed.best()))), misses, because);
    }

    /** What is said against a value, but for what stands against all. */
    private List<String> reasons(long at) {
        Walk walk = walks.get(at);
        return walk == null ? List.of() : against(walk).stream()
                .filter(f -> walks.values().stream().anyMatch(w -> against(w).stream().noneMatch(f::sameAs)))
                .map(f -> steps.text(at) + ": " + f.text()).distinct().limit(2).toList();
    }

    /** Nothing may be set, or nothing can be told. */
    private Solution nothing() {
        List<Value> told = found.values().stream().filter(Value.Num.class::isInstance).toList();
        if (told.isEmpty()) {
            String reason = found.entrySet().stream().sorted(Map.Entry.comparingByKey()).map(Map.Entry::getValue)
                    .filter(Value.Unknown.class::isInstance).map(v -> ((Value.Unknown) v).reason())
                    .filter(r -> !SAID.contains(r)).findFirst().orElse(null);
            return reason == null ? open : open.with(say.cannotBeTold(reason));
        }
        List<String> because = walks.entrySet().stream().sorted(Map.Entry.comparingByKey())
                .flatMap(e -> reasons(e.getKey()).stream()).toList();
        return open.with(say.nothingAllowed(because));
    }

    private String fingerprint(Search search, Search.Window window) {
        Interval limit = ((Value.Num) asked).quantity().aim();
        Fingerprint fingerprint = new Fingerprint().add(limit.least()).add(limit.most()).add(steps.unit().sign())
                .add(steps.step().toPlainString()).add(steps.tolerance().toPlainString());
        search.inside(window).forEach((at, probe) -> {
            Interval aim = ((Value.Num) found.get(at)).quantity().aim();
            fingerprint.add(at).add(aim.least()).add(aim.most());
        });
        return fingerprint.toString();
    }
}
