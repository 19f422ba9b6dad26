package org.ricasso.dsl.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.LongFunction;
import org.ricasso.shared.quantity.Numbers;

/**
 * Searches the steps of a setting for the one that brings a number nearest to the middle of its limit.
 *
 * <p>The steps are counted. A value is allowed if nothing stands against it but what stands against every value. First a
 * coarse scan, and what findings offer, show where allowed values are; bisection finds where they end. In between the number
 * has to move one way, which a finer scan tests (all steps where there are few); bisection finds where it crosses the middle.
 */
public final class Search {
    private static final int COARSE = 25;
    private static final int FINE = 33;
    private static final int GENERATIONS = 2;
    private final LongFunction<Probe> function;
    private final long least;
    private final long most;
    private final double target;
    private final TreeMap<Long, Probe> probes = new TreeMap<>();
    private Set<Object> common;

    /**
     * What one value of the setting gives.
     *
     * @param number the middle of the number's aim, or NaN where it cannot be told
     * @param meets whether the aim is inside the limit
     * @param against what stands against the value
     * @param offered values that what stands against it offers instead
     */
    public record Probe(double number, boolean meets, Set<?> against, Set<Long> offered) {
        public Probe {
            against = Set.copyOf(against);
            offered = Set.copyOf(offered);
        }
    }

    /** What came out. */
    public sealed interface Result {
        /** @param window the first and the last allowed value around it */
        record Found(long at, Window window) implements Result {}

        /**
         * More than one value is right, or nothing says that there are not more.
         *
         * @param values the values that are right
         * @param turn where the number turns, or null where there are several windows
         */
        record Ambiguous(List<Long> values, Long turn) implements Result {}

        /** No allowed value is right; {@code best} is the nearest to the limit's middle. */
        record Missed(long best, Window window) implements Result {}

        /** The number is the same whatever the setting. */
        record NoEffect() implements Result {}

        /** Something stands against every value, or the number cannot be told at any; {@code tried} is one of them. */
        record NoWindow(long tried) implements Result {}
    }

    /** Neighbouring allowed values, from the first to the last. */
    public record Window(long first, long last) {}

    /**
     * @param function what each value gives
     * @param least the first value
     * @param most the last value, not less
     * @param target the middle of the limit
     */
    public Search(LongFunction<Probe> function, long least, long most, double target) {
        this.function = function;
        this.least = least;
        this.most = most;
        this.target = target;
    }

    /** The search. */
    public Result run() {
        scan(least, most, COARSE);
        Set<Long> offered = new TreeSet<>();
        for (int i = 0; i < GENERATIONS; i++) {
            probes.values().forEach(p -> offered.addAll(p.offered()));
            offered.stream().filter(k -> k >= least && k <= most).forEach(this::probe);
        }
        common = common();
        for (Window window : windows()) {
            scan(window.first(), window.last(), FINE);
        }
        List<Window> windows = windows();
        if (windows.isEmpty()) {
            return new Result.NoWindow(probes.firstKey());
        }
        if (isFlat(windows)) {
            return new Result.NoEffect();
        }
        return judged(windows);
    }

    /** The values tried inside a window, with what they gave. */
    public NavigableMap<Long, Probe> inside(Window window) {
        return probes.subMap(window.first(), true, window.last(), true);
    }

    /** What a value gives. */
    public Probe probe(long at) {
        Probe known = probes.get(at);
        if (known == null) {
            known = function.apply(at);
            probes.put(at, known);
        }
        return known;
    }

    private void scan(long from, long to, int count) {
        long width = to - from;
        if (width < count) {
            for (long k = from; k <= to; k++) {
                probe(k);
            }
            return;
        }
        for (int i = 0; i < count; i++) {
            probe(from + StrictMath.round(width * (i / (count - 1.0))));
        }
    }

    private Set<Object> common() {
        Set<Object> result = new HashSet<>(probes.firstEntry().getValue().against());
        probes.values().forEach(p -> result.retainAll(p.against()));
        return result;
    }

    private boolean allowed(long at) {
        Probe probe = probe(at);
        return !Double.isNaN(probe.number()) && common.containsAll(probe.against());
    }

    private List<Window> windows() {
        List<Window> result = new ArrayList<>();
        Long first = null;
        Long before = null;
        for (long k : new ArrayList<>(probes.keySet())) {
            boolean allowed = allowed(k);
            if (allowed && first == null) {
                first = before == null ? k : edge(k, before);
            } else if (!allowed && first != null) {
                result.add(new Window(first, edge(before, k)));
                first = null;
            }
            before = k;
        }
        if (first != null) {
            result.add(new Window(first, before));
        }
        return result;
    }

    /** The last allowed value between one that is and one that is not. */
    private long edge(long allowed, long not) {
        while (Math.abs(not - allowed) > 1) {
            long middle = allowed + (not - allowed) / 2;
            if (allowed(middle)) {
                allowed = middle;
            } else {
                not = middle;
            }
        }
        return allowed;
    }

    private boolean isFlat(List<Window> windows) {
        double any = probe(windows.get(0).first()).number();
        return windows.stream().allMatch(w -> inside(w).values().stream().allMatch(p -> Numbers.compare(p.number(), any) == 0))
                && windows.stream().anyMatch(w -> w.last() > w.first());
    }

    private Result judged(List<Window> windows) {
        List<Long> right = new ArrayList<>();
        Window holds = null;
        Window best = windows.get(0);
        long nearest = best.first();
        Long turn = null;
        for (Window window : windows) {
            Long turns = turn(window);
            List<Long> here = crossings(window, turns == null);
            for (long at : here) {
                if (distance(at) < distance(nearest)) {
                    nearest = at;
                    best = window;
                }
            }
            here.removeIf(at -> !probe(at).meets());
            if (!here.isEmpty()) {
                right.addAll(here);
                holds = window;
                turn = turn == null ? turns : turn;
            }
        }
        if (right.isEmpty()) {
            return new Result.Missed(nearest, best);
        }
        return right.size() == 1 && turn == null ? new Result.Found(right.get(0), holds)
                : new Result.Ambiguous(right.stream().distinct().toList(), turn);
    }

    /** Where the number turns back inside a window, or null where it moves one way. */
    private Long turn(Window window) {
        int sense = 0;
        Map.Entry<Long, Probe> before = null;
        for (Map.Entry<Long, Probe> entry : inside(window).entrySet()) {
            int now = before == null ? 0 : Numbers.compare(entry.getValue().number(), before.getValue().number());
            if (now != 0 && sense != 0 && now != sense) {
                return before.getKey();
            }
            sense = now == 0 ? sense : now;
            before = entry;
        }
        return null;
    }

    /** The values at which the number comes nearest to the middle: at each crossing, else at the nearest value. */
    private List<Long> crossings(Window window, boolean oneWay) {
        List<Long> result = new ArrayList<>();
        long nearest = window.first();
        Long before = null;
        for (long k : new ArrayList<>(inside(window).keySet())) {
            if (before == null && side(k) == 0) {
                result.add(k);
            } else if (before != null && side(before) != side(k) && side(before) != 0) {
                result.add(crossing(before, k));
            }
            nearest = distance(k) < distance(nearest) ? k : nearest;
            before = k;
        }
        if (result.isEmpty()) {
            result.add(nearest);
        }
        if (oneWay) {
            result.replaceAll(at -> first(window.first(), at));
        }
        return result;
    }

    private int side(long at) {
        return Numbers.compare(probe(at).number(), target);
    }

    private double distance(long at) {
        return Math.abs(probe(at).number() - target);
    }

    private long crossing(long low, long high) {
        while (high - low > 1) {
            long middle = low + (high - low) / 2;
            if (side(middle) == side(low)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return distance(low) <= distance(high) ? low : high;
    }

    /** Of the values up to one that are as near as it is, the first; the number moves one way. */
    private long first(long from, long at) {
        long low = from;
        long high = at;
        while (low < high) {
            long middle = low + (high - low) / 2;
            if (Numbers.compare(distance(middle), distance(at)) <= 0) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return high;
    }
}
