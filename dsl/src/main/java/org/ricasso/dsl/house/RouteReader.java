package org.ricasso.dsl.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Damage;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.syntax.Step;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** Reads routes: each step's operation, centre, settings and measurements. */
final class RouteReader {
    private static final Value FAULT = new Value.Unknown("a fault reported elsewhere", true);
    private static final int UNKNOWN = -1;
    private static final int TWICE = -2;
    private final Vocabulary vocabulary;
    private final Findings findings;
    private final Thing product;
    private final Damage damage;
    private final boolean changesLost;

    /** @param changesLost whether what the product changes of the steps it takes over could not be read whole */
    RouteReader(Vocabulary vocabulary, Findings findings, Thing product, Damage damage, boolean changesLost) {
        this.damage = damage;
        this.changesLost = changesLost;
        this.vocabulary = vocabulary;
        this.findings = findings;
        this.product = product;
    }

    /** @param text where the steps are written, or null where they come from several routes */
    List<RouteStep> read(List<ResolvedStep> route, Span text) {
        List<RouteStep> result = new ArrayList<>();
        if (text != null && !route.isEmpty() && route.get(0).step().span().file().equals(text.file())
                && damage.in(text.file(), text.start(), route.get(0).step().span().start())) {
            result.add(unknown(route.get(0)));
        }
        List<Step> steps = route.stream().map(ResolvedStep::step).toList();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            order(steps, i);
            boolean damaged = damage.in(step.span().file(), step.span().start(), end(steps, i, text));
            Findings found = findings.journal();
            result.add(new RouteReader(vocabulary, found, product, damage, changesLost)
                    .read(route.get(i), damaged || changesLost && route.get(i).takenAt() != null));
            add(found, route.get(i));
            if (damaged && mayBeLost(step, end(steps, i, text))) {
                // a step that stood here may be lost, and so is what the piece is like after it
                result.add(unknown(route.get(i)));
            }
        }
        return result;
    }

    /** What was found in a step that is taken over is marked where it is taken over, too. */
    private void add(Findings found, ResolvedStep step) {
        for (Diagnostic diagnostic : found.all()) {
            Span at = diagnostic.primary().span();
            boolean own = step.takenAt() == null || step.own().stream().anyMatch(s -> s.file() == at.file()
                    && s.start() <= at.start() && at.end() <= s.end());
            findings.add(own ? diagnostic : diagnostic.and(Mark.taker(step.takenAt(), product.name())));
        }
    }

    /** Whether a whole step may be what could not be read: not where only lines inside another one could not. */
    private boolean mayBeLost(Step step, int end) {
        Span block = step.block().span();
        return damage.in(block.file(), step.span().start(), block.start() + 1)
                || damage.in(block.file(), Math.max(block.start() + 1, block.end()), end);
    }

    /** Where a step's text ends: at the next step of the same text, or at the end of its block. */
    private static int end(List<Step> steps, int index, Span text) {
        Step step = steps.get(index);
        if (index + 1 < steps.size()) {
            Span next = steps.get(index + 1).number().span();
            if (next.file() == step.span().file() && next.start() > step.span().start()) {
                return next.start();
            }
        }
        int own = Math.max(step.span().end(), step.block().span().end());
        if (index + 1 == steps.size() && text == null) {
            return step.span().file().text().length();
        }
        return index + 1 == steps.size() && text != null && text.file() == step.span().file() ? Math.max(own, text.end()) : own;
    }

    private void order(List<Step> steps, int index) {
        Step step = steps.get(index);
        int number = number(step);
        for (Step earlier : steps.subList(0, index)) {
            if (number(earlier) == number) {
                Diagnostic diagnostic = Diagnostic.error("step-number-twice",
                        new Mark(step.number().span(), "step " + number + " stands already"))
                        .and(new Mark(earlier.number().span(), "first here"));
                int free = free(steps, index);
                findings.add(free < 0 ? diagnostic : diagnostic.remedy(new Remedy("number it " + free,
                        List.of(new Edit(step.number().span(), Integer.toString(free))))));
                return;
            }
        }
        if (index > 0 && number < number(steps.get(index - 1))) {
            findings.add(Diagnostic.error("steps-out-of-order", new Mark(step.number().span(),
                    "step " + number + " stands behind step " + steps.get(index - 1).number()))
                    .because("the route is walked in the order in which it is written, and step numbers rise with it"));
        }
    }

    /** A number between the neighbours that no step has, or -1. */
    private static int free(List<Step> steps, int index) {
        int low = number(steps.get(index - 1));
        int high = index + 1 < steps.size() ? number(steps.get(index + 1)) : low + 20;
        int middle = low + (high - low) / 2;
        return middle > low && middle < high ? middle : -1;
    }

    private static int number(Step step) {
        try {
            return Integer.parseInt(step.number().text());
        } catch (NumberFormatException tooLarge) {
            return -1;
        }
    }

    private static RouteStep unknown(ResolvedStep step) {
        return new RouteStep(step.number(), null, null, new Value[0], new Span[0], List.of(), List.of(),
                step.step().operation().span(), step.step().span(), step.step().number().span(), whole(step.step()), step.takenAt(),
                step.own(), step.named(), List.of());
    }

    private RouteStep read(ResolvedStep resolved, boolean damaged) {
        Step step = resolved.step();
        if (number(step) < 1 || number(step) > 99_999) {
            findings.error("step-number", step.number().span(), "a step has a whole number from 1 to 99999");
        }
        Operation operation = vocabulary.operation(step.operation().text());
        if (operation == null) {
            findings.unknownName(step.operation().span(), "operation", step.operation().text(),
                    vocabulary.operations().stream().map(Operation::name).toList());
            return unknown(resolved);
        }
        Value[] settings = new Value[operation.takes().size()];
        Span[] places = new Span[settings.length];
        MeasureReader measures = new MeasureReader(vocabulary, findings, product, operation, damaged);
        List<Solve> solves = new ArrayList<>();
        boolean strange = false;
        boolean unread = damaged;
        for (Block.Item item : step.block().items()) {
            if (item instanceof Block.Item.Entry entry && SolveReader.isSolve(entry.value())) {
                int index = written(operation, entry, settings, places);
                strange |= index == UNKNOWN;
                if (index >= 0) {
                    settings[index] = FAULT;
                    new SolveReader(vocabulary, findings).read(operation, index, (Expression.Call) entry.value(),
                            resolved.cells()).ifPresent(solves::add);
                }
            } else if (item instanceof Block.Item.Entry entry) {
                strange |= !setting(operation, entry, settings, places, damaged);
            } else if (item instanceof Block.Item.Nested nested) {
                unread |= !measures.read(nested);
            }
        }
        // what is missing may be what was written by a name that nobody knows
        boolean open = damaged || strange;
        if (unread) {
            measures.mayMeasureAll(step.operation().span());
        }
        for (int i = 0; i < settings.length; i++) {
            EntryType setting = operation.takes().get(i);
            if (settings[i] == null && open) {
                settings[i] = FAULT;
            } else if (settings[i] == null && setting.byDefault() == null) {
                if (!setting.optional()) {
                    findings.error("missing-setting", step.operation().span(), operation.name() + " takes "
                            + setting.name() + ": " + Type.describe(setting.type()) + " is asked for");
                }
                settings[i] = setting.optional() ? new Value.Absent(setting.name()) : FAULT;
            }
        }
        return new RouteStep(number(step), operation, centre(step, operation, damaged), settings, places,
                measures.measures(), measures.watches(), step.operation().span(), step.span(), step.number().span(), whole(step),
                resolved.takenAt(), resolved.own(), resolved.named(), solves);
    }

    private static Span whole(Step step) {
        return step.span().to(step.block().span());
    }

    /** @return false if the operation takes no setting of that name */
    private boolean setting(Operation operation, Block.Item.Entry entry, Value[] settings, Span[] places,
            boolean damaged) {
        int index = written(operation, entry, settings, places);
        if (index >= 0) {
            Value value = new EntryReader(vocabulary, findings, product, true).read(entry.value(), operation.takes().get(index));
            // a row may be what could not be read
            settings[index] = damaged && entry.value() instanceof Grid ? FAULT : value;
        }
        return index != UNKNOWN;
    }

    /** The setting that an entry writes, its place noted; below nought after a finding. */
    private int written(Operation operation, Block.Item.Entry entry, Value[] settings, Span[] places) {
        String name = entry.path().text();
        int index = operation.setting(name);
        if (index < 0) {
            findings.unknownName(entry.path().span(), "setting of " + operation.name(), name,
                    operation.takes().stream().map(EntryType::name).toList());
            return UNKNOWN;
        }
        if (settings[index] != null) {
            findings.add(Diagnostic.error("declared-twice", new Mark(entry.path().span(), name + " stands twice"))
                    .and(new Mark(places[index], "first here")));
            return TWICE;
        }
        places[index] = entry.value().span();
        return index;
    }

    private Thing centre(Step step, Operation operation, boolean damaged) {
        if (step.centre() == null) {
            if (!operation.at().isEmpty() && !damaged) {
                findings.error("centre-missing", step.operation().span(), operation.name() + " runs at a "
                        + types(operation) + ": write at and the centre");
            }
            return operation.at().isEmpty() ? null : unknown(step.operation());
        }
        Name name = step.centre();
        Thing centre = vocabulary.thing("centre", name.text());
        if (centre == null) {
            findings.unknownThing(name.span(), "work centre", name.text(), vocabulary.thingNames("centre"));
            return unknown(name);
        }
        boolean fits = operation.at().isEmpty() || !(centre.at("is") instanceof Value.Ref ref)
                || operation.at().contains(ref.thing());
        if (!fits) {
            Diagnostic diagnostic = Diagnostic.error("wrong-centre", new Mark(name.span(), name + " is "
                    + org.ricasso.dsl.evaluate.Shows.show(centre.at("is")) + ", " + operation.name() + " runs at "
                    + types(operation))).and(new Mark(centre.span(), "the centre"));
            List<Thing> others = vocabulary.things("centre").stream().filter(other ->
                    other.at("is") instanceof Value.Ref ref && operation.at().contains(ref.thing())).toList();
            for (Thing other : others) {
                diagnostic = diagnostic.remedy(others.size() == 1
                        ? new Remedy("write " + other.name(), List.of(new Edit(name.span(), other.name())))
                        : new Remedy("or is it " + other.name(), List.of()));
            }
            findings.add(diagnostic);
        }
        return centre;
    }

    private Thing unknown(Name name) {
        Map<String, EntryType> entries = vocabulary.entries("centre");
        return entries == null ? null : Thing.unknown("centre", name.text(), entries.keySet(), name.span());
    }

    private static String types(Operation operation) {
        return String.join(" or ", operation.at().stream().map(Thing::name).toList());
    }
}
