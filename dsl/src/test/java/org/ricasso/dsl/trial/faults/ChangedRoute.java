package org.ricasso.dsl.trial.faults;

import static org.ricasso.dsl.trial.faults.Fault.in;
import static org.ricasso.dsl.trial.faults.Fault.places;
import static org.ricasso.dsl.trial.faults.Fault.spec;
import static org.ricasso.dsl.trial.faults.Fault.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.ricasso.oracle.Oracle;

/** Mistakes in the order of a route: steps left out, exchanged, moved; measured too early or not at all. */
final class ChangedRoute {
    private final WrittenKnife knife;
    private final Random random;
    private final List<Fault> faults = new ArrayList<>();

    private ChangedRoute(WrittenKnife knife, Random random) {
        this.knife = knife;
        this.random = random;
    }

    /** @param measurable the properties that an operation may measure */
    static List<Fault> of(WrittenKnife knife, Random random, Function<String, List<String>> measurable) {
        ChangedRoute seeds = new ChangedRoute(knife, random);
        seeds.dropped();
        seeds.swapped();
        seeds.moved();
        seeds.measured(measurable);
        return seeds.faults;
    }

    private void dropped() {
        for (int i = 0; i < knife.steps().size(); i++) {
            List<WrittenStep> left = new ArrayList<>(knife.steps());
            WrittenStep gone = left.remove(i);
            // the gap is in front of the step that follows
            faults.add(new Fault("drop", "drop " + name(gone), knife.with(left),
                    i < left.size() ? places(step(left.get(i).id())) : places(), true));
        }
    }

    /** An operation's name, and which one of it where there are several. */
    private String name(WrittenStep step) {
        List<Integer> same = knife.all().stream().filter(s -> s.operation().equals(step.operation())).map(WrittenStep::id).toList();
        return same.size() == 1 ? step.operation() : step.operation() + "-" + (same.indexOf(step.id()) + 1);
    }

    private void swapped() {
        int count = knife.steps().size();
        for (int i = 0; i + 1 < count; i++) {
            swap(i, i + 1);
        }
        for (int i = 0; i < count / 3; i++) {
            int first = random.nextInt(count - 2);
            swap(first, Math.min(count - 1, first + 2 + random.nextInt(7)));
        }
    }

    private void swap(int i, int j) {
        List<WrittenStep> other = new ArrayList<>(knife.steps());
        java.util.Collections.swap(other, i, j);
        WrittenStep first = knife.steps().get(i);
        WrittenStep second = knife.steps().get(j);
        faults.add(new Fault("swap", "swap " + name(first) + " with " + name(second), knife.with(other),
                places(step(first.id()), step(second.id())), true));
    }

    private void moved() {
        int count = knife.steps().size();
        for (int i = 0; i < count; i++) {
            int to = i;
            while (Math.abs(to - i) < 2) {
                to = Math.max(0, Math.min(count - 1, i - 12 + random.nextInt(25)));
            }
            List<WrittenStep> other = new ArrayList<>(knife.steps());
            WrittenStep moved = other.remove(i);
            other.add(to, moved);
            faults.add(new Fault("move", "move " + name(moved) + (to == 0 ? " to the beginning" : " behind " + name(other.get(to - 1))),
                    knife.with(other), places(step(moved.id())), true));
        }
    }

    private void measured(Function<String, List<String>> measurable) {
        for (int i = 0; i < knife.steps().size(); i++) {
            WrittenStep here = knife.steps().get(i);
            for (String measured : here.measures().keySet()) {
                String path = Oracle.characteristic(here.operation(), measured);
                if (path == null || !knife.spec().containsKey(path)) {
                    continue;
                }
                WrittenKnife without = knife.with(here.without(measured));
                faults.add(new Fault("not measured", "drop " + measured + " of " + name(here), without, places(spec(path), step(here.id())),
                        true));
                List<WrittenStep> earlier = knife.steps().subList(0, i).stream().filter(s -> !s.measures().containsKey(measured)
                        && path.equals(Oracle.characteristic(s.operation(), measured))
                        && measurable.apply(s.operation()).contains(measured)).toList();
                if (!earlier.isEmpty()) {
                    WrittenStep there = earlier.get(random.nextInt(earlier.size()));
                    faults.add(new Fault("measured early", "measure " + measured + " of " + name(here) + " at " + name(there),
                            without.with(there.measuring(measured, here.measures().get(measured))),
                            places(in(there.id(), measured), spec(path), step(here.id())), true));
                }
            }
        }
    }
}
