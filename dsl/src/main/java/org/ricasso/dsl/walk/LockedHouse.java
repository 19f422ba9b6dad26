package org.ricasso.dsl.walk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Solve;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.solve.LockEntry;
import org.ricasso.dsl.source.Span;

/** A house in which what was solved stands in place of what asks for it, and the lock that has to say the same. */
public final class LockedHouse {
    private LockedHouse() {}

    /** The settings to be solved for, of the products meant; empty means all. A route with several has no solution. */
    public static List<Solution> solutions(House house, Set<String> only) {
        return house.routes().entrySet().parallelStream().filter(e -> only.isEmpty() || HouseCheck.isMeant(e.getKey(), only))
                .flatMap(e -> solutions(house, e.getKey(), e.getValue()).stream()).toList();
    }

    private static List<Solution> solutions(House house, Thing product, Route route) {
        List<RouteStep> steps = route.all();
        for (int i = 0; i < steps.size(); i++) {
            if (!steps.get(i).solves().isEmpty()) {
                boolean one = steps.stream().mapToInt(s -> s.solves().size()).sum() == 1;
                return one ? List.of(new Solving(house.vocabulary(), product, route, i, steps.get(i).solves().get(0)).solution())
                        : List.of();
            }
        }
        return List.of();
    }

    /** The keys of all settings in a house that are to be solved for. */
    public static Set<LockEntry.Key> keys(House house) {
        Set<LockEntry.Key> keys = new TreeSet<>();
        house.routes().forEach((product, route) -> route.all().forEach(step -> step.solves().forEach(solve ->
                keys.add(key(product, step, solve)))));
        return keys;
    }

    private static LockEntry.Key key(Thing product, RouteStep step, Solve solve) {
        return new LockEntry.Key(product.name(), step.number(), step.operation().takes().get(solve.setting()).name());
    }

    /**
     * Solves and compares with the lock.
     *
     * @param only names or numbers of the products that are checked; empty for all. In others what the lock says stands
     * @param findings what loading found; gets what stands against the lock
     */
    public static House of(House house, Lock lock, Set<String> only, Findings findings) {
        boolean sound = findings.all().stream().noneMatch(d -> d.severity() == Severity.ERROR);
        Map<LockEntry.Key, Solution> solved = new LinkedHashMap<>();
        solutions(house, only).forEach(s -> solved.put(s.key(), s));
        Map<Thing, Route> routes = new LinkedHashMap<>();
        house.routes().forEach((product, route) -> routes.put(product, standIn(house, product, route, lock, solved)));
        solved.values().forEach(solution -> compare(solution, routes.get(solution.product()), lock, findings));
        if (sound) {
            stale(house, lock, findings);
        }
        return new House(house.vocabulary(), java.util.Collections.unmodifiableMap(routes), house.written());
    }

    private static Route standIn(House house, Thing product, Route route, Lock lock, Map<LockEntry.Key, Solution> solved) {
        Route result = route;
        List<RouteStep> steps = route.all();
        for (int i = 0; i < steps.size(); i++) {
            RouteStep step = steps.get(i);
            for (Solve solve : step.solves()) {
                LockEntry.Key key = key(product, step, solve);
                Solution solution = solved.get(key);
                LockEntry locked = lock.entry(key);
                // where it was solved and failed nothing stands: what follows would be said twice
                LockEntry entry = solution == null || solution.entry() == null && solution.failure() == null ? locked
                        : solution.entry();
                EntryType type = step.operation().takes().get(solve.setting());
                Value value = entry == null ? null : Attempts.read(house.vocabulary(), product, entry.value(), type);
                if (value != null) {
                    step = step.solved(solve, value, locked == null ? null : lock.lines().get(key).value());
                }
            }
            if (step != steps.get(i)) {
                result = result.with(i, step);
            }
        }
        return result;
    }

    private static void compare(Solution solution, Route route, Lock lock, Findings findings) {
        LockEntry entry = solution.entry();
        if (entry == null) {
            if (solution.failure() != null) {
                findings.add(solution.failure());
            }
            return;
        }
        Lock.Line line = lock.lines().get(solution.key());
        RouteStep step = route.all().get(solution.step());
        Mark at = new Mark(solution.solve().span(), "");
        if (line == null) {
            findings.add(taken(step, at, solution, Diagnostic.error("solve-missing", new Mark(at.span(), "the lock says nothing of "
                    + solution.key() + "; solved, it is " + entry.value() + " (leaves " + entry.property() + " " + entry.leaves()
                    + ")")).because("what was solved is printed only when it stands in version control")));
        } else if (!line.entry().saysAs(entry)) {
            findings.add(taken(step, at, solution, differs(at.span(), entry, line)));
        } else if (!line.entry().equals(entry)) {
            findings.add(taken(step, at, solution, Diagnostic.warning("solve-outdated", new Mark(at.span(), solution.key() + " is "
                    + entry.value() + " still, but what it was solved from has changed")).and(new Mark(line.span(),
                    line.entry().leaves().equals(entry.leaves()) ? "solved from other numbers"
                            : "it leaves " + entry.leaves() + " now"))));
        }
    }

    private static Diagnostic differs(Span place, LockEntry entry, Lock.Line line) {
        boolean same = line.entry().value().equals(entry.value());
        Diagnostic result = Diagnostic.error("solve-differs", new Mark(place, entry.key() + (same ? " is " + entry.value()
                + " still, but solved for something else" : " is " + entry.value() + " when solved now (leaves " + entry.property()
                + " " + entry.leaves() + "), the lock says " + line.entry().value())))
                .and(new Mark(line.value(), "locked here"));
        LockEntry was = line.entry();
        if (!was.property().equals(entry.property()) || !was.asked().equals(entry.asked())) {
            return result.because("it was solved for " + was.property() + " " + was.asked() + ", now for " + entry.property() + " "
                    + entry.asked());
        }
        return was.operation().equals(entry.operation()) ? result
                : result.because("it was solved for a step of " + was.operation() + ", which is " + entry.operation() + " now");
    }

    private static Diagnostic taken(RouteStep step, Mark at, Solution solution, Diagnostic diagnostic) {
        Span taken = step.takenAt(at.span());
        Diagnostic result = diagnostic.remedy(Lock.REMEDY);
        return taken == null ? result : result.and(new Mark(taken, "taken over by " + solution.product().name() + " here"));
    }

    private static void stale(House house, Lock lock, Findings findings) {
        Set<LockEntry.Key> keys = keys(house);
        lock.lines().forEach((key, line) -> {
            if (!keys.contains(key)) {
                findings.add(Diagnostic.warning("solve-stale", new Mark(line.span(), "nothing solves for " + key + " any more"))
                        .remedy(Lock.REMEDY));
            }
        });
    }
}
