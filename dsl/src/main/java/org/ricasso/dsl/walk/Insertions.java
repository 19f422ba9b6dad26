package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.StepText;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Operation;

/**
 * Searches for a step to be put into a route so that a property is as a later step asks: an operation that leaves it so, set as the
 * house sets it elsewhere, where in the house it stands between such neighbours. At most two steps are put in together.
 */
final class Insertions {
    private static final int TRIES = 16;
    private static final int PLACES = 40;
    private static final int NEIGHBOUR = 4;
    private static final int SAME_CENTRE = 3;
    private static final int PAIRS = 6;
    private static final int SHOWN = 90;
    private final Attempts attempts;
    private final Practice practice;
    private final House house;
    private final Walk before;
    private final Thing product;

    Insertions(Attempts attempts, Walk before, Practice practice) {
        this.attempts = attempts;
        this.practice = practice;
        this.house = practice.house();
        this.before = before;
        this.product = before.product;
    }

    /** What might be put in, and where; {@code like} is the step that shows how, or null where all is as a rule. */
    private record Candidate(Operation operation, Practice.Use like, int index, int score) {}

    /** A step at a place, with the text that writes it. */
    private record Put(RouteStep step, String text, Practice.Use like) {}

    /** The insertion that holds and mends most, or what to put in as words alone, or null. */
    Attempts.Held of(Finding finding, Target target) {
        List<Pair> pairs = new ArrayList<>();
        Attempts.Held best = null;
        int tried = 0;
        for (Candidate candidate : candidates(target, target.step(), target.from())) {
            if (tried == TRIES || attempts.isSpent() || attempts.mendsAll(best)) {
                break;
            }
            Spot spot = spot(target, candidate.index());
            List<Integer> numbers = spot.numbers(1);
            Put put = numbers.isEmpty() ? null : put(candidate, numbers.get(0), true, false);
            Trial trial = put == null ? null : new Trial(put.step(), target.comes(before, candidate.index()));
            if (trial == null || !target.isMet(trial.leaves())) {
                continue;
            }
            if (trial.unmet().size() == 1 && pairs.size() < PAIRS) {
                pairs.add(new Pair(candidate, trial.unmet().get(0)));
            }
            if (trial.unmet().isEmpty()) {
                tried++;
                best = Attempts.more(best, alone(finding, target, candidate, spot, put));
            }
        }
        for (Pair pair : pairs) {
            best = best == null ? two(finding, target, pair) : best;
        }
        return best == null ? inWords(finding, target) : best;
    }

    /** As the house does it, without what could be left out, or with what it measures. */
    private Attempts.Held alone(Finding finding, Target target, Candidate candidate, Spot spot, Put put) {
        Attempts.Held held = held(finding, target, spot, candidate.index(), List.of(put));
        for (boolean measures : held != null || put.like() == null ? new boolean[0] : new boolean[] {false, true}) {
            Put other = put(candidate, put.step().number(), measures, measures);
            if (held == null && other != null && !other.text().equals(put.text())) {
                held = held(finding, target, spot, candidate.index(), List.of(other));
            }
        }
        return held;
    }

    /** A candidate that lacks one thing, and what that is. */
    private record Pair(Candidate candidate, Target.Unmet lacks) {}

    private Attempts.Held two(Finding finding, Target target, Pair pair) {
        int index = pair.candidate().index();
        Target first = target.other(index, pair.lacks());
        Spot spot = spot(target, index);
        List<Integer> numbers = spot.numbers(2);
        if (numbers.size() < 2) {
            return null;
        }
        for (Candidate candidate : candidates(first, index, index)) {
            Put one = put(candidate, numbers.get(0), true, false);
            Trial trial = one == null ? null : new Trial(one.step(), target.comes(before, index));
            if (trial == null || !trial.unmet().isEmpty() || !first.isMet(trial.leaves())) {
                continue;
            }
            Put other = put(pair.candidate(), numbers.get(1), true, false);
            Attempts.Held held = held(finding, target, spot, index, List.of(one, other));
            if (held != null || attempts.isSpent()) {
                return held;
            }
        }
        return null;
    }

    private Spot spot(Target target, int index) {
        return new Spot(house, product, before.route, target.among(), index, null);
    }

    private Attempts.Held held(Finding finding, Target target, Spot spot, int index, List<Put> puts) {
        Route route = before.route;
        for (int i = 0; i < puts.size(); i++) {
            route = route.inserted(target.among(), index + i, puts.get(i).step());
        }
        Walk after = attempts.walked(route);
        if (!attempts.left(finding, after).isEmpty()) {
            return null;
        }
        return new Attempts.Held(remedy(spot, puts), null, attempts.cleared(after), "");
    }

    /** In the text that all take over where it does for all, else in the product's own route. */
    private List<Edit> edits(Spot spot, List<Put> puts) {
        List<String> texts = puts.stream().map(Put::text).toList();
        Edit edit = spot.edit(texts);
        if (edit == null || !practice.shared().mayInsert(product, spot, texts)) {
            edit = spot.added(texts, puts.get(0).step().number());
        }
        return edit == null ? List.of() : LaidOut.edits(List.of(edit));
    }

    private Remedy remedy(Spot spot, List<Put> puts) {
        StringBuilder text = new StringBuilder("insert ");
        for (Put put : puts) {
            boolean shown = put.text().length() <= SHOWN && !put.text().contains("\n");
            text.append(put == puts.get(0) ? "" : " and ").append(shown ? put.text() : StepText.of(put.step().number(),
                    put.step().operation(), put.step().centre(), List.of()));
            if (put.like() != null && put.text().contains("{")) {
                text.append(shown ? " as" : ", set as").append(" step ").append(put.like().step().number())
                        .append(put.like().product() == product ? "" : " of " + put.like().product().name());
            }
        }
        return new Remedy(text.append(' ').append(spot).toString(), edits(spot, puts));
    }

    /** Where nothing shows how an operation is set, or each product has its own settings: what would do if these do. */
    private Attempts.Held inWords(Finding finding, Target target) {
        Attempts.Held best = null;
        Spot spot = spot(target, target.step());
        for (Operation operation : operations(target)) {
            List<String> open = new ArrayList<>();
            for (EntryType setting : operation.takes()) {
                if (setting.byDefault() == null && !setting.optional()) {
                    open.add(setting.name());
                }
            }
            boolean unknown = practice.uses(operation).isEmpty() || operation.takes().stream().anyMatch(EntryType::sized);
            if (open.isEmpty() || !unknown || attempts.isSpent() || attempts.mendsAll(best)) {
                continue;
            }
            RouteStep step = open(operation);
            Trial trial = new Trial(step, target.comes(before, target.step()));
            Walk after = trial.unmet().isEmpty() && target.isMet(trial.leaves())
                    ? attempts.walked(before.route.inserted(target.among(), target.step(), step)) : null;
            if (after != null && attempts.left(finding, after).isEmpty()) {
                best = Attempts.more(best, new Attempts.Held(new Remedy("put in a step of " + operation.name() + " " + spot
                        + "; it takes " + String.join(", ", open), List.of()), null, attempts.cleared(after), ""));
            }
        }
        return best;
    }

    /** A step of an operation whose settings nobody has said. */
    private RouteStep open(Operation operation) {
        Value[] settings = new Value[operation.takes().size()];
        for (int i = 0; i < settings.length; i++) {
            EntryType setting = operation.takes().get(i);
            settings[i] = setting.byDefault() != null ? null : setting.optional() ? new Value.Absent(setting.name())
                    : new Value.Unknown("a setting that is not written", true);
        }
        Span span = operation.span();
        return new RouteStep(0, operation, centre(operation), settings, new Span[settings.length], List.of(), List.of(), span, span, span, span, null,
                Set.of(), Set.of(), List.of());
    }

    private List<Operation> operations(Target target) {
        return before.vocabulary.operations().stream()
                .filter(o -> o.leaves().stream().anyMatch(l -> target.slots().contains(l.property().slot()))).toList();
    }

    /** All that might be put in at places between, what the house does most alike first, then the latest place. */
    private List<Candidate> candidates(Target target, int last, int first) {
        List<RouteStep> steps = before.steps;
        int begin = before.route.begin(target.among());
        int end = before.route.end(target.among());
        int from = Math.max(first, last - PLACES);
        List<Candidate> result = new ArrayList<>();
        for (Operation operation : operations(target)) {
            List<Practice.Use> uses = practice.uses(operation);
            for (int index = last; index >= from; index--) {
                RouteStep previous = index > begin ? steps.get(index - 1) : null;
                RouteStep next = index < end ? steps.get(index) : null;
                int score = uses.isEmpty() ? -1 : 0;
                Practice.Use like = null;
                for (Practice.Use use : uses) {
                    score = Math.max(score, alike(use, previous, next));
                    like = like == null || better(use, like, previous, next) ? use : like;
                }
                Thing centre = like == null ? centre(operation) : like.step().centre();
                if (previous != null && centre != null && previous.centre() == centre) {
                    // the piece is there already
                    score += SAME_CENTRE;
                }
                if (score > 0 || index == last || index == from) {
                    result.add(new Candidate(operation, like, index, score));
                }
            }
        }
        result.sort(Comparator.comparingInt(Candidate::score).thenComparingInt(Candidate::index).reversed()
                .thenComparing(c -> c.operation().name()));
        return result;
    }

    /** Whether one use shows better than another how a step is set: this product's own, where sizes matter, then between like steps. */
    private boolean better(Practice.Use one, Practice.Use other, RouteStep previous, RouteStep next) {
        boolean own = one.product() == product;
        boolean otherOwn = other.product() == product;
        if (own != otherOwn && one.step().operation().takes().stream().anyMatch(EntryType::sized)) {
            return own;
        }
        int by = alike(one, previous, next) - alike(other, previous, next);
        return by > 0 || by == 0 && own && !otherOwn;
    }

    private static int alike(Practice.Use use, RouteStep previous, RouteStep next) {
        return NEIGHBOUR * (alike(use.before(), previous) + alike(use.after(), next));
    }

    private static int alike(RouteStep a, RouteStep b) {
        return a == null || b == null ? 0 : a.operation() == b.operation() ? 1 : 0;
    }

    private Put put(Candidate candidate, int number, boolean all, boolean measures) {
        String text = candidate.like() == null ? StepText.of(number, candidate.operation(), centre(candidate.operation()), List.of())
                : StepText.of(candidate.like().step(), number, all, measures);
        RouteStep step = StepText.read(before.vocabulary, product, text);
        return step == null ? null : new Put(step, text, candidate.like());
    }

    /** A centre that the operation runs at: one that the route goes to anyway before others. */
    private Thing centre(Operation operation) {
        Thing first = null;
        for (Thing centre : before.vocabulary.things("centre")) {
            if (centre.at("is") instanceof Value.Ref ref && operation.at().contains(ref.thing())) {
                if (before.steps.stream().anyMatch(s -> s.centre() == centre)) {
                    return centre;
                }
                first = first == null ? centre : first;
            }
        }
        return first;
    }

    /** A step on its own, on the piece as it comes to some place. */
    private final class Trial {
        private final Walk walk;
        private final Value[] leaves;

        private Trial(RouteStep step, Value[] comes) {
            walk = new Walk(before.vocabulary, new Route(List.of(step), List.of(), List.of()), Changes.none(product));
            leaves = walk.step(0, comes);
        }

        private Value[] leaves() {
            return leaves;
        }

        /** What the step lacks itself. */
        private List<Target.Unmet> unmet() {
            return walk.unmet;
        }
    }
}
