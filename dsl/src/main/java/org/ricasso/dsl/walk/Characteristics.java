package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.Comparisons;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;

/** What became of each characteristic at the end of a route: made, and measured after its last change. */
final class Characteristics {
    /** How what is said of a missed characteristic begins where the spec is marked. */
    static final String ASKED = "asked for here; the route ";
    private final Walk walk;
    private final Vocabulary vocabulary;
    private final List<Outcome> outcomes = new ArrayList<>();

    Characteristics(Walk walk) {
        this.walk = walk;
        this.vocabulary = walk.vocabulary;
    }

    /** The properties that become a characteristic which the product specifies, with the entry's path. */
    static Map<Property, String> specified(Vocabulary vocabulary, Thing product) {
        Map<Property, String> result = new LinkedHashMap<>();
        collect(vocabulary, vocabulary.productKind(), "", product, new HashSet<>(), result);
        return result;
    }

    private static void collect(Vocabulary vocabulary, String kind, String prefix, Thing product,
            Set<String> lost, Map<Property, String> result) {
        for (EntryType entry : vocabulary.entries(kind).values()) {
            String path = prefix + entry.name();
            Value value = product.at(path);
            if (value instanceof Value.Absent) {
                continue;
            }
            if (entry.madeAs() != null) {
                Property property = vocabulary.propertyFor(null, entry.madeAs());
                if (property != null) {
                    result.put(property, path);
                }
            } else if (entry.type() instanceof Type.ThingOf of
                    && (value instanceof Value.Entries || Walk.isReported(value) && lost.add(of.kind()))) {
                // a block that could not be read may have asked for all that its kind can ask for
                collect(vocabulary, of.kind(), path + ".", product, lost, result);
            }
        }
    }

    /** Judges all; findings go to the walk. */
    List<Outcome> judge() {
        specified(vocabulary, walk.product).forEach(this::judge);
        undeclared();
        unbounded();
        walk.markTakenOver();
        return outcomes;
    }

    private void judge(Property property, String path) {
        Value asked = walk.product.at(path);
        Value found = walk.last()[property.slot()];
        int change = walk.lastChange[property.slot()];
        List<Integer> measuredAt = new ArrayList<>();
        RouteStep.Measure early = null;
        int last = Math.max(change, walk.lastDisturbed[property.slot()]);
        for (int i = 0; i < walk.steps.size(); i++) {
            for (RouteStep.Measure measure : walk.steps.get(i).measures()) {
                if (measure.property() == property) {
                    if (i >= last) {
                        measuredAt.add(walk.steps.get(i).number());
                    } else {
                        early = measure;
                    }
                }
            }
        }
        Outcome.Made made = made(asked, found);
        outcomes.add(new Outcome(path, property.path(), asked, found, made,
                change < 0 ? 0 : walk.steps.get(change).number(), measuredAt));
        if (Walk.isReported(asked) || Walk.isReported(found)) {
            return;
        }
        Span place = walk.product.places().containsKey(path) ? walk.product.places().get(path).value() : walk.product.span();
        switch (made) {
            case UNMADE -> add("characteristic-unmade", Severity.ERROR, place, name(path) + " is asked for, but "
                    + ((Value.Unknown) found).reason(), List.of(), List.of(),
                    List.of(new Finding.Attempt.Rearrange(walk.steps.size(), Set.of(property.slot()), asked)));
            case MISSED -> missed(property, path, place, asked, found);
            default -> { }
        }
        if (made == Outcome.Made.PROVED || made == Outcome.Made.AIMED) {
            if (measuredAt.isEmpty()) {
                unmeasured(property, path, place, early, last, found, made);
            } else if (made == Outcome.Made.AIMED && offCentre(asked, found)) {
                List<Mark> others = new ArrayList<>();
                walk.leftBy(property.slot(), place).ifPresent(others::add);
                add("off-centre", Severity.WARNING, place, name(path) + " is aimed at " + aim(found)
                        + ", which is not in the middle half of " + Shows.show(asked), others,
                        List.of("with its scatter it comes out at " + reach(found)
                                + ", so a good part of the pieces is sorted out at one side"));
            }
        }
    }

    private static Outcome.Made made(Value asked, Value found) {
        if (found instanceof Value.Unknown) {
            return Outcome.Made.UNMADE;
        }
        try {
            if (Comparisons.meets(found, asked, true) == Truth.ALL) {
                return Outcome.Made.PROVED;
            }
            return Comparisons.meets(found, asked, false) == Truth.ALL ? Outcome.Made.AIMED : Outcome.Made.MISSED;
        } catch (IllegalArgumentException outsideTheHardnessTable) {
            return Outcome.Made.MISSED;
        }
    }

    private void missed(Property property, String path, Span place, Value asked, Value found) {
        List<Mark> others = new ArrayList<>();
        walk.leftBy(property.slot(), place).ifPresent(others::add);
        String text = "leaves " + name(path) + " " + aim(found) + (hasScatter(found) ? " (aim), " + reach(found)
                + " with scatter" : "") + "; asked for " + Shows.show(asked);
        walk.into(property.slot()).add(new Finding("characteristic-missed", Severity.ERROR, place,
                others.isEmpty() ? text : ASKED + text, others, List.of(), List.of(),
                List.of(new Finding.Attempt.Search(Candidates.settings(walk, property.slot()), property.slot()),
                        new Finding.Attempt.Rearrange(walk.steps.size(), Set.of(property.slot()), asked))));
    }

    private void unmeasured(Property property, String path, Span place, RouteStep.Measure early, int last, Value found, Outcome.Made made) {
        if (early == null) {
            List<String> because = made == Outcome.Made.AIMED
                    ? List.of("with its scatter it comes out at " + reach(found) + ", so it has to be measured")
                    : List.of("a characteristic that nobody measures is known first by the buyer");
            add("unmeasured", Severity.ERROR, place, "no step measures " + name(path), List.of(), because,
                    List.of(new Finding.Attempt.Measure(property.slot(), last, -1)));
            return;
        }
        RouteStep changer = walk.steps.get(last);
        add("measured-too-early", Severity.ERROR, early.span(), name(path) + " is measured here, but step "
                + changer.number() + " " + changer.operation().name() + " can change it after that",
                List.of(new Mark(changer.span(), "changes it"), new Mark(place, "asked for here")),
                List.of("what is measured before the last change says nothing of the piece that is handed on"),
                List.of(new Finding.Attempt.Measure(property.slot(), last, stepOf(early)),
                        new Finding.Attempt.Rearrange(last + 1, Set.of(property.slot()), null)));
    }

    /** What is measured but is neither a characteristic nor declared with its limit and why. */
    private void undeclared() {
        Map<Property, String> specified = specified(vocabulary, walk.product);
        for (RouteStep step : walk.steps) {
            for (RouteStep.Measure measure : step.measures()) {
                if (!specified.containsKey(measure.property()) && measure.limit() == null) {
                    add("measured-undeclared", Severity.ERROR, measure.span(), measure.property().name()
                            + " is measured, but the spec does not ask for it and the step states no limit", List.of(),
                            List.of("without a limit nobody knows what to do with the reading"));
                }
            }
        }
    }

    /** Watched settings that no reading can be held against. */
    private void unbounded() {
        for (int i = 0; i < walk.steps.size(); i++) {
            RouteStep step = walk.steps.get(i);
            for (RouteStep.Watch watch : step.watches()) {
                Value set = walk.settings[i][watch.setting()];
                String name = step.operation().takes().get(watch.setting()).name();
                if (set instanceof Value.Absent) {
                    add("watched-not-set", Severity.ERROR, watch.span(), name + " is watched, but the step does not set it",
                            List.of(new Mark(step.span(), "the step")), List.of("a reading is held against the setting"));
                } else if (set instanceof Value.Num num && num.quantity().aim().width() == 0) {
                    Span place = step.places()[watch.setting()];
                    add("watched-without-tolerance", Severity.ERROR, watch.span(), name + " is watched, but "
                            + Shows.show(set) + " has no tolerance", place == null ? List.of()
                                    : List.of(new Mark(place, "set here")),
                            List.of("no reading is ever exactly that, and nobody knows from where on to react"));
                }
            }
        }
    }

    private int stepOf(RouteStep.Measure measure) {
        for (int i = 0; i < walk.steps.size(); i++) {
            if (walk.steps.get(i).measures().contains(measure)) {
                return i;
            }
        }
        return -1;
    }

    private void add(String name, Severity severity, Span place, String text, List<Mark> others, List<String> because) {
        add(name, severity, place, text, others, because, List.of());
    }

    private void add(String name, Severity severity, Span place, String text, List<Mark> others, List<String> because,
            List<Finding.Attempt> attempts) {
        walk.findings.add(new Finding(name, severity, place, text, others, because, List.of(), attempts));
    }

    private static boolean offCentre(Value asked, Value found) {
        if (!(asked instanceof Value.Num limit) || !(found instanceof Value.Num value)) {
            return false;
        }
        Interval band = limit.quantity().aim();
        double middle = value.quantity().aim().middle();
        return band.isBounded() && (middle < band.least() + band.width() / 4 || middle > band.most() - band.width() / 4);
    }

    static String name(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    static boolean hasScatter(Value value) {
        return value instanceof Value.Num num && num.quantity().hasScatter();
    }

    static String aim(Value value) {
        return value instanceof Value.Num num ? QuantityFormat.aim(num.quantity()) : Shows.show(value);
    }

    static String reach(Value value) {
        if (value instanceof Value.Num num) {
            return QuantityFormat.reach(num.quantity());
        }
        return value instanceof Value.Along along
                ? String.join(", ", along.stations().stream().map(s -> s.label() + " " + reach(s.quantity())).toList())
                : Shows.show(value);
    }

    private static String reach(Quantity quantity) {
        return QuantityFormat.reach(quantity);
    }
}
