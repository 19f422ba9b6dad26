package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.EntryReader;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.ExpressionResult;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Quantity;

/**
 * Tries remedies: each is made in memory and the route is walked again. One holds if the finding is gone and no new error
 * has come.
 */
final class Attempts {
    private static final long MOST_HALVED = 1L << 16;
    /** How often a route is walked at most to find other steps: for a finding, and for all findings of a product. */
    private static final int WALKS = 80;
    private static final int ALL_WALKS = 400;
    private final Vocabulary vocabulary;
    private final Thing product;
    private final List<RouteStep> steps;
    private final Walk before;
    private final Practice practice;
    private int walks = ALL_WALKS;
    private int walksOfFinding;
    /** A remedy with which nothing that was found is left. */
    private Held ofAll;

    Attempts(Walk before, Practice practice) {
        this.practice = practice;
        this.vocabulary = before.vocabulary;
        this.product = before.product;
        this.steps = before.steps;
        this.before = before;
    }

    /**
     * A remedy that was walked and holds.
     *
     * @param remedy the remedy
     * @param setting where the setting stands that it changes, where it changes one that is written; else null
     * @param clears the findings that are gone with it
     * @param edge how far the setting can be moved towards what is written, or empty where that was not searched
     * @param moved the step that it takes to another place, or null
     */
    record Held(Remedy remedy, Span setting, Set<Finding> clears, String edge, Span moved) {
        Held(Remedy remedy, Span setting, Set<Finding> clears, String edge) {
            this(remedy, setting, clears, edge, null);
        }
    }

    /** The remedies of a finding that hold, in the order in which they are to be tried. */
    List<Held> of(Finding finding) {
        List<Held> result = new ArrayList<>();
        for (Finding.Attempt attempt : finding.attempts()) {
            // other steps are looked for where no setting does, and where nothing is known yet that mends all
            boolean steps = attempt instanceof Finding.Attempt.Measure || attempt instanceof Finding.Attempt.Rearrange;
            Held held = steps && (ofAll != null || !result.isEmpty()) ? null : of(finding, attempt);
            if (held != null) {
                result.add(held);
                ofAll = steps && mendsAll(held) ? held : ofAll;
            }
        }
        return result;
    }

    private Held of(Finding finding, Finding.Attempt attempt) {
        walksOfFinding = Math.min(WALKS, walks);
        if (attempt instanceof Finding.Attempt.Search search) {
            return search(finding, search, Changes.none(product), null);
        }
        if (attempt instanceof Finding.Attempt.Measure measure) {
            return new Measuring(this, before, practice).of(finding, measure);
        }
        return attempt instanceof Finding.Attempt.Rearrange rearrange ? rearranged(finding, rearrange) : changed(finding, attempt);
    }

    private Held rearranged(Finding finding, Finding.Attempt.Rearrange attempt) {
        if (steps.isEmpty()) {
            return null;
        }
        Target target = Target.of(before, attempt);
        Moves moves = new Moves(this, before, practice);
        Held best = moves.of(finding, target, true);
        if (!mendsAll(best)) {
            best = more(new Insertions(this, before, practice).of(finding, target), best);
        }
        return mendsAll(best) ? best : more(best, moves.of(finding, target, false));
    }

    /** Whether nothing that was found is left with a remedy. */
    boolean mendsAll(Held held) {
        return held != null && held.clears().containsAll(before.findings);
    }

    /** The remedy that mends more, the first of two that mend alike. */
    static Held more(Held one, Held other) {
        return one == null || other != null && other.clears().size() > one.clears().size() ? other : one;
    }

    private Held changed(Finding finding, Finding.Attempt attempt) {
        Changes none = Changes.none(product);
        Changes changes;
        Remedy remedy;
        Span place = null;
        if (attempt instanceof Finding.Attempt.Setting setting) {
            RouteStep step = steps.get(setting.step());
            EntryType type = step.operation().takes().get(setting.setting());
            Value value = read(setting.value(), type);
            if (value == null) {
                return null;
            }
            place = step.places()[setting.setting()];
            changes = none.and(setting.step(), setting.setting(), value);
            remedy = new Remedy("set " + type.name() + " of step " + step.number() + " to " + setting.value(),
                    place == null ? List.of() : List.of(new Edit(place, setting.value())));
        } else if (attempt instanceof Finding.Attempt.Instead instead) {
            changes = none.and(instead.measurement(), instead.entries());
            remedy = new Remedy(instead.text(), List.of(new Edit(instead.place(), instead.name())));
        } else {
            Finding.Attempt.Entry entry = (Finding.Attempt.Entry) attempt;
            EntryType type = vocabulary.entryType(product.kind(), entry.path());
            Value value = type == null ? null : read(entry.value(), type);
            if (value == null) {
                return null;
            }
            Thing.Place written = product.places().get(entry.path());
            changes = new Changes(product.with(entry.path(), value), none.settings());
            remedy = new Remedy("set " + entry.path() + " to " + entry.value(),
                    written == null || written.inheritedAt() != null ? List.of()
                            : List.of(new Edit(written.value(), entry.value())));
        }
        Walk after = walked(changes);
        List<Finding> left = left(finding, after);
        if (left.isEmpty()) {
            return new Held(remedy, place, cleared(after), "");
        }
        return left.size() == 1 && !left.get(0).attempts().isEmpty()
                && left.get(0).attempts().get(0) instanceof Finding.Attempt.Search search
                        ? search(finding, search, changes, remedy) : null;
    }

    /** The value that a text writes, read as the house reads it; null where it would be a finding. */
    private Value read(String text, EntryType type) {
        return read(vocabulary, product, text, type);
    }

    /** The value that a text writes for a setting of a product, read as the house reads it; null where it would be a finding. */
    static Value read(Vocabulary vocabulary, Thing product, String text, EntryType type) {
        ExpressionResult parsed = Parser.parseExpression(new SourceFile("remedy", text, false));
        if (parsed.expression() == null || !parsed.diagnostics().isEmpty()) {
            return null;
        }
        Findings own = new Findings();
        Value value = new EntryReader(vocabulary, own, product).read(parsed.expression(), type);
        return own.isEmpty() ? value : null;
    }

    /** Whether enough has been tried for a finding. */
    boolean isSpent() {
        return walksOfFinding <= 0;
    }

    /** The product's walk on another route. */
    Walk walked(Route route) {
        walksOfFinding--;
        walks--;
        Walk walk = new Walk(vocabulary, route, Changes.none(product)).run();
        new Characteristics(walk).judge();
        return walk;
    }

    private Walk walked(Changes changes) {
        Walk walk = new Walk(vocabulary, before.route, changes).run();
        new Characteristics(walk).judge();
        return walk;
    }

    /**
     * What still stands against a change: the finding itself, other errors on the same value, what lacks the same later, and all that
     * is new.
     */
    List<Finding> left(Finding finding, Walk after) {
        List<Finding> known = all(before);
        return all(after).stream().filter(one -> one.sameAs(finding) || known.stream().noneMatch(one::sameAs)
                || one.severity() == Severity.ERROR && one.primary().equals(finding.primary())
                || one.name().equals(finding.name()) && one.about().equals(finding.about()) && !one.about().isEmpty()
                && before.suspects.stream().anyMatch(one::sameAs)).toList();
    }

    /** Whether a change puts a finding right, be it with a new warning: how far a setting may go. */
    private boolean holds(Finding finding, Walk after) {
        return left(finding, after).stream().noneMatch(one -> one.severity() == Severity.ERROR || one.sameAs(finding));
    }

    Set<Finding> cleared(Walk after) {
        Set<Finding> result = new LinkedHashSet<>();
        List<Finding> left = all(after);
        all(before).stream().filter(f -> left.stream().noneMatch(f::sameAs)).forEach(result::add);
        return result;
    }

    /** How many findings that seemed to follow from others are still there. */
    private long suspects(Walk after) {
        List<Finding> left = all(after);
        return before.suspects.stream().filter(f -> left.stream().anyMatch(f::sameAs)).count();
    }

    private static List<Finding> all(Walk walk) {
        List<Finding> result = new ArrayList<>(walk.findings);
        result.addAll(walk.suspects);
        return result;
    }

    /** The best value of the first setting that can put a finding right, on top of other changes. */
    private Held search(Finding finding, Finding.Attempt.Search search, Changes base, Remedy first) {
        for (int[] place : search.settings()) {
            RouteStep step = steps.get(place[0]);
            if (step.settings()[place[1]] instanceof Value.Num current) {
                EntryType type = step.operation().takes().get(place[1]);
                OneSetting one = new OneSetting(finding, base, search.slot(), place, type, current.quantity());
                RoundValues values = new RoundValues(current.quantity(), type.within());
                values.coarse().forEach(one::tryAt);
                if ((one.best == null || one.bestSuspects > 0) && !Double.isNaN(one.nearestMiddle)) {
                    values.around(one.nearestMiddle).forEach(one::tryAt);
                }
                if (one.best != null) {
                    return one.held(first);
                }
            }
        }
        return null;
    }

    /** Values tried for one setting; the best that holds and the nearest that does not are kept. */
    private final class OneSetting {
        private final Finding finding;
        private final Changes base;
        private final int slot;
        private final int[] place;
        private final EntryType type;
        private final Quantity current;
        private final Value asked;
        private String best;
        private double bestMiddle;
        private long bestSuspects = Long.MAX_VALUE;
        private Walk bestWalk;
        private double bestDistance = Double.POSITIVE_INFINITY;
        private double nearestMiddle = Double.NaN;
        private double nearest = Double.POSITIVE_INFINITY;

        private OneSetting(Finding finding, Changes base, int slot, int[] place, EntryType type, Quantity current) {
            this.finding = finding;
            this.base = base;
            this.slot = slot;
            this.place = place;
            this.type = type;
            this.current = current;
            Property property = vocabulary.properties().get(slot);
            String path = Characteristics.specified(vocabulary, base.product()).get(property);
            this.asked = path == null ? null : base.product().at(path);
        }

        private void tryAt(double middle) {
            String text = Amendments.moved(current, middle);
            Value value = text == null ? null : read(text, type);
            if (value == null) {
                return;
            }
            Walk after = walked(base.and(place[0], place[1], value));
            double distance = distance(after.last()[slot], middle);
            if (distance < nearest) {
                nearest = distance;
                nearestMiddle = middle;
            }
            long suspects = suspects(after);
            if (left(finding, after).isEmpty()
                    && (suspects < bestSuspects || suspects == bestSuspects && distance < bestDistance)) {
                best = text;
                bestMiddle = middle;
                bestSuspects = suspects;
                bestWalk = after;
                bestDistance = distance;
            }
        }

        /** How far the aim's middle is from the limit's middle; how far the setting moves where there is no such limit. */
        private double distance(Value found, double middle) {
            if (found instanceof Value.Num value && asked instanceof Value.Num limit) {
                Interval band = limit.quantity().aim();
                if (band.isBounded()) {
                    return Math.abs(value.quantity().aim().middle() - band.middle());
                }
            }
            return Math.abs(middle - current.aim().middle());
        }

        private Held held(Remedy first) {
            RouteStep step = steps.get(place[0]);
            Span written = step.places()[place[1]];
            Value found = bestWalk.last()[slot];
            String leaves = found instanceof Value.Num ? " (leaves " + vocabulary.properties().get(slot).name() + " "
                    + Characteristics.aim(found) + ")" : "";
            String text = type.name() + " of step " + step.number() + " to " + best + leaves;
            List<Edit> edits = new ArrayList<>(first == null ? List.of() : first.edits());
            edits.add(new Edit(written, best));
            return new Held(new Remedy(first == null ? "set " + text : first.text() + " and " + text, edits),
                    first == null ? written : null, cleared(bestWalk), first == null ? edge() : "");
        }

        /** The last value that holds on the way from the best to what is written, by halving, and the first that does not. */
        private String edge() {
            RoundValues.Finest finest = new RoundValues.Finest(current);
            long holds = finest.count(bestMiddle);
            long fails = finest.count(current.aim().middle());
            if (Math.abs(fails - holds) > MOST_HALVED) {
                return "";
            }
            while (Math.abs(fails - holds) > 1) {
                long middle = (holds + fails) / 2;
                String text = Amendments.moved(current, finest.value(middle));
                Value value = text == null ? null : read(text, type);
                Walk after = value == null ? null : walked(base.and(place[0], place[1], value));
                if (after != null && holds(finding, after) && suspects(after) <= bestSuspects) {
                    holds = middle;
                } else {
                    fails = middle;
                }
            }
            return Amendments.moved(current, finest.value(holds)) + " still holds, "
                    + Amendments.moved(current, finest.value(fails)) + " does not";
        }
    }
}
