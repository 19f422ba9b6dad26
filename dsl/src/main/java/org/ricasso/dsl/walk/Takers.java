package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.StepText;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;

/**
 * What a change of a text means for all products that take the text over: it is offered only if none of them has a finding with it
 * that it does not have without. Asked for by many products at once; the answers depend on the question alone.
 */
final class Takers {
    private final House house;
    private final Practice practice;
    private final Map<Thing, List<Finding>> known = new ConcurrentHashMap<>();
    private final Map<List<?>, Boolean> answers = new ConcurrentHashMap<>();

    Takers(House house, Practice practice) {
        this.house = house;
        this.practice = practice;
    }

    /** Whether steps may be written at a place of a text, for all but the product that they were tried on. */
    boolean mayInsert(Thing product, Spot spot, List<String> texts) {
        return all(product, spot.beside(), List.of(spot.key(), texts), (taker, route) -> {
            int index = spot.index(route);
            Route result = route;
            for (int i = 0; i < texts.size() && index >= 0; i++) {
                RouteStep step = StepText.read(house.vocabulary(), taker, texts.get(i));
                if (step == null || isTaken(result, step.number(), null)) {
                    return null;
                }
                result = result.inserted(spot.among(route), index + i, step);
            }
            return index < 0 ? null : result;
        });
    }

    /** Whether a step may be taken to another place of its text, for all but the product that it was tried on. */
    boolean mayMove(Thing product, RouteStep step, Spot spot, int number) {
        // where a route adds it, its number says where it comes
        List<RouteStep> places = new ArrayList<>(Spot.isAdded(step) ? List.of() : spot.beside());
        places.add(step);
        return all(product, places, List.of(spot.key(), step.head(), number), (taker, route) -> {
            int from = indexOf(route, step.head());
            int gap = spot.index(route);
            if (from < 0 || gap < 0 || isTaken(route, number, step.head()) || isEnd(route, from)) {
                return null;
            }
            RouteStep own = route.all().get(from);
            return route.moved(from, gap > from ? gap - 1 : gap, own.with(number, own.measures()));
        });
    }

    /** Whether a step of a text may measure other things. */
    boolean mayMeasure(Thing product, List<RouteStep> steps, List<?> key, BiFunction<Thing, Route, Route> change) {
        return all(product, steps, key, change);
    }

    /** All numbers by which products name a step that they take over. */
    Set<Span> names(RouteStep step) {
        Set<Span> names = new LinkedHashSet<>();
        for (Thing taker : practice.takers(step.head())) {
            Route route = house.routes().get(taker);
            RouteStep own = route.all().get(indexOf(route, step.head()));
            own.named().stream().sorted().forEach(names::add);
            route.loops().forEach(loop -> loop.numbers().stream().filter(n -> n.text().equals(step.numbered().text()))
                    .forEach(names::add));
        }
        return names;
    }

    private static boolean isEnd(Route route, int index) {
        int own = index - route.begin(route.all().size() - 1);
        return route.loops().stream().anyMatch(l -> l.from() != l.to() && (l.from() == own || l.to() == own));
    }

    private static boolean isTaken(Route route, int number, Span but) {
        return route.all().stream().anyMatch(s -> s.number() == number && !s.head().equals(but));
    }

    static int indexOf(Route route, Span head) {
        List<RouteStep> steps = route.all();
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).head().equals(head)) {
                return i;
            }
        }
        return -1;
    }

    private boolean all(Thing product, List<RouteStep> steps, List<?> key, BiFunction<Thing, Route, Route> change) {
        Set<Thing> takers = new LinkedHashSet<>();
        steps.forEach(step -> takers.addAll(practice.takers(step.head())));
        takers.remove(product);
        for (Thing taker : takers) {
            List<Object> question = new ArrayList<>(key);
            question.add(taker);
            // no computeIfAbsent: a walk may take long, and what is asked twice at once is answered alike
            Boolean answer = answers.get(question);
            if (answer == null) {
                Route changed = change.apply(taker, house.routes().get(taker));
                answer = changed != null && isNoWorse(taker, changed);
                answers.put(question, answer);
            }
            if (!answer) {
                return false;
            }
        }
        return true;
    }

    private boolean isNoWorse(Thing taker, Route changed) {
        List<Finding> before = known.get(taker);
        if (before == null) {
            before = findings(taker, house.routes().get(taker));
            known.put(taker, before);
        }
        List<Finding> had = before;
        return findings(taker, changed).stream().allMatch(one -> had.stream().anyMatch(one::sameAs));
    }

    private List<Finding> findings(Thing product, Route route) {
        Walk walk = new Walk(house.vocabulary(), route, Changes.none(product)).run();
        new Characteristics(walk).judge();
        List<Finding> result = new ArrayList<>(walk.findings);
        result.addAll(walk.suspects);
        return result;
    }
}
