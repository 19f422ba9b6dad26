package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.StepText;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/**
 * Searches for a step that stands at the wrong place: the one that lacks something goes behind a later one that leaves it or before
 * the one that took it away, a later one that leaves it comes before, or what took it away goes before or behind both.
 */
final class Moves {
    private static final int TRIES = 20;
    private static final int PROVIDERS = 2;
    private static final int NEAR = 2;
    /** How many places further a step is taken where it does not do at the nearest. */
    private static final int FURTHER = 4;
    private final Attempts attempts;
    private final Practice practice;
    private final House house;
    private final Walk before;
    private final Thing product;

    Moves(Attempts attempts, Walk before, Practice practice) {
        this.attempts = attempts;
        this.practice = practice;
        this.house = practice.house();
        this.before = before;
        this.product = before.product;
    }

    /**
     * A step taken to another place.
     *
     * @param step its index
     * @param gap the index of the step before which it comes, as the steps stand now
     */
    private record Move(int step, int gap) {
        int to() {
            return gap > step ? gap - 1 : gap;
        }

        int distance() {
            return Math.abs(to() - step);
        }
    }

    /**
     * The shortest move that holds and mends most, or null.
     *
     * @param near whether only moves are tried that speak for themselves: a short way, or a later step that is not missed where it stood
     */
    Attempts.Held of(Finding finding, Target target, boolean near) {
        Attempts.Held best = null;
        int tried = 0;
        for (Move move : moves(target)) {
            if (near != (move.distance() <= NEAR || isOfLater(target, move))) {
                continue;
            }
            if (tried == TRIES || attempts.isSpent() || attempts.mendsAll(best)) {
                break;
            }
            RouteStep step = before.steps.get(move.step());
            Spot spot = new Spot(house, product, before.route, target.among(), move.gap(), step);
            List<Integer> numbers = spot.numbers(1);
            if (numbers.isEmpty() || !isMovable(move.step())) {
                continue;
            }
            tried++;
            Walk after = attempts.walked(before.route.moved(move.step(), move.to(), step.with(numbers.get(0), step.measures())));
            if (attempts.left(finding, after).isEmpty() && !isMissed(target, move, after)) {
                Attempts.Held held = new Attempts.Held(remedy(step, spot, numbers.get(0)), null, attempts.cleared(after), "",
                        step.span());
                best = Attempts.more(best, held);
            }
        }
        return best;
    }

    /** Whether a later step that was taken away is missed where it stood: its like is to be put in, not it. */
    private boolean isMissed(Target target, Move move, Walk after) {
        return isOfLater(target, move) && target.asked() != null && !target.isMet(after.after[move.step()]);
    }

    private static boolean isOfLater(Target target, Move move) {
        return move.step() > target.step() && move.gap() <= target.step();
    }

    /** Not where a loop begins or ends, unless it is the step's own; nor where a lock speaks of its number. */
    private boolean isMovable(int index) {
        int own = index - before.route.begin(before.steps.size() - 1);
        RouteStep step = before.steps.get(index);
        return step.operation() != null && step.solves().isEmpty() && before.route.loops().stream()
                .allMatch(l -> l.from() == l.to() || l.from() != own && l.to() != own);
    }

    /** All moves that may help, the shortest first. */
    private List<Move> moves(Target target) {
        int begin = before.route.begin(target.among());
        int end = before.route.end(target.among());
        int asks = target.step();
        int took = target.from() - 1;
        Set<Move> moves = new LinkedHashSet<>();
        List<Integer> providers = new ArrayList<>();
        for (int i = asks + 1; i < end && providers.size() < PROVIDERS; i++) {
            if (Target.changes(before, i, target.slots()) && target.isMet(before.after[i])) {
                providers.add(i);
            }
        }
        for (int provider : providers) {
            for (int gap = provider + 1; gap <= Math.min(end, provider + FURTHER); gap++) {
                moves.add(new Move(asks, gap));
            }
        }
        if (took >= begin && asks < end) {
            for (int gap = took; gap >= Math.max(begin, took - FURTHER); gap--) {
                moves.add(new Move(asks, gap));
            }
        }
        if (took >= begin) {
            earlier(target, took, begin, moves);
            for (int gap = asks + 1; gap <= Math.min(end, asks + FURTHER); gap++) {
                moves.add(new Move(took, gap));
            }
        }
        for (int provider : providers) {
            for (int gap = asks; gap > Math.max(took, asks - FURTHER); gap--) {
                moves.add(new Move(provider, gap));
            }
        }
        List<Move> result = new ArrayList<>(moves);
        result.removeIf(m -> m.distance() == 0);
        result.sort(Comparator.comparingInt(Move::distance));
        return result;
    }

    /** What took it away goes before the last step that had left it as asked. */
    private void earlier(Target target, int took, int begin, Set<Move> moves) {
        for (int i = took - 1; i >= begin; i--) {
            if (Target.changes(before, i, target.slots()) && target.isMet(before.after[i])) {
                for (int gap = i; gap >= Math.max(begin, i - FURTHER); gap--) {
                    moves.add(new Move(took, gap));
                }
                return;
            }
        }
    }

    private Remedy remedy(RouteStep step, Spot spot, int number) {
        String text = "move step " + step.number() + " " + step.operation().name() + " " + spot + ", as step " + number;
        return new Remedy(text, edits(step, spot, number));
    }

    /**
     * In the text that all take over where it does for all, else in the product's own route. Nothing where its text cannot be taken to
     * the other place.
     */
    private List<Edit> edits(RouteStep step, Spot spot, int number) {
        if (!practice.shared().mayMove(product, step, spot, number)) {
            return own(step, spot, number);
        }
        String digits = Integer.toString(number);
        List<Edit> edits = new ArrayList<>();
        practice.shared().names(step).forEach(name -> edits.add(new Edit(name, digits)));
        if (Spot.isAdded(step)) {
            // its number says where it stands
            edits.add(new Edit(step.numbered(), digits));
            return LaidOut.edits(edits);
        }
        Span lines = lines(step);
        if (lines == null || !spot.isWrittenWith(step)) {
            return own(step, spot, number);
        }
        SourceFile file = lines.file();
        edits.add(new Edit(lines, ""));
        edits.add(spot.edit(List.of(unindented(file.text().substring(lines.start(), step.numbered().start()) + digits
                + file.text().substring(step.numbered().end(), lines.end())))));
        return LaidOut.edits(edits);
    }

    /** A step that is taken over is left out and added again; not where the product changes it as well. */
    private List<Edit> own(RouteStep step, Spot spot, int number) {
        if (step.takenAt() == null || !step.own().isEmpty() || before.route.isEndOfLoop(before.steps.indexOf(step))) {
            return List.of();
        }
        Edit edit = spot.written("omit " + step.number() + " " + step.operation().name() + "\nadd "
                + StepText.of(step, number, true, true), number);
        return edit == null ? List.of() : LaidOut.edits(List.of(edit));
    }

    /** The lines of a step with the comments above and behind it, to the end of the last one; null where others stand on them. */
    private static Span lines(RouteStep step) {
        SourceFile file = step.whole().file();
        int first = step.head().line();
        int last = file.line(step.whole().end() - 1);
        String behind = file.text().substring(step.whole().end(), file.lineStart(last) + file.lineText(last).length()).strip();
        if (!file.text().substring(file.lineStart(first), step.head().start()).isBlank()
                || !behind.isEmpty() && !behind.startsWith("//")) {
            return null;
        }
        while (first > 1 && file.lineText(first - 1).strip().startsWith("//")) {
            first--;
        }
        int end = last < file.lineCount() ? file.lineStart(last + 1) : file.text().length();
        return new Span(file, file.lineStart(first), end);
    }

    private static String unindented(String text) {
        List<String> lines = text.stripTrailing().lines().toList();
        int indent = lines.stream().filter(l -> !l.isBlank()).mapToInt(l -> l.length() - l.stripLeading().length()).min().orElse(0);
        return String.join("\n", lines.stream().map(l -> l.isBlank() ? "" : l.substring(indent)).toList());
    }
}
