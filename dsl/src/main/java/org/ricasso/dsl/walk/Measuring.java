package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.StepText;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/**
 * Searches for a step that can measure a characteristic after its last change: there goes the measurement that stands too early, or one
 * as the house measures it elsewhere.
 */
final class Measuring {
    private static final int TRIES = 8;
    private final Attempts attempts;
    private final Practice practice;
    private final Walk before;

    Measuring(Attempts attempts, Walk before, Practice practice) {
        this.attempts = attempts;
        this.practice = practice;
        this.before = before;
    }

    /** The first step that does, or null. */
    Attempts.Held of(Finding finding, Finding.Attempt.Measure attempt) {
        Property property = before.vocabulary.properties().get(attempt.slot());
        RouteStep.Measure early = attempt.early() < 0 ? null : measure(before.steps.get(attempt.early()), property);
        if (early != null && !isWhole(early)) {
            return null;
        }
        int tried = 0;
        for (int i = Math.max(0, attempt.last()); i < before.steps.size() && tried < TRIES; i++) {
            RouteStep step = before.steps.get(i);
            if (step.operation() == null || !step.operation().measures().contains(property.slot()) || measure(step, property) != null) {
                continue;
            }
            for (Model model : early != null ? List.of(new Model(early.whole().text(), "")) : models(step, property)) {
                tried++;
                Attempts.Held held = held(finding, attempt.early(), early, i, model);
                if (held != null) {
                    return held;
                }
            }
        }
        return null;
    }

    /** A measuring block, and where it is from. */
    private record Model(String text, String from) {}

    private Attempts.Held held(Finding finding, int at, RouteStep.Measure early, int index, Model model) {
        RouteStep step = before.steps.get(index);
        RouteStep.Measure measure = read(step, model.text());
        if (measure == null) {
            return null;
        }
        Route route = before.route.with(index, with(step, measure));
        if (early != null) {
            route = route.with(at, without(before.steps.get(at), early));
        }
        Walk after = attempts.walked(route);
        if (!attempts.left(finding, after).isEmpty()) {
            return null;
        }
        String text = early != null
                ? "measure " + early.property().name() + " in step " + step.number() + " " + step.operation().name() + ", not in step "
                        + before.steps.get(at).number()
                : "let step " + step.number() + " " + step.operation().name() + " measure " + measure.property().name() + model.from();
        return new Attempts.Held(new Remedy(text, edits(at, early, step, model.text())), null, attempts.cleared(after), "");
    }

    /** How the house measures a property elsewhere: in the same operation before others. */
    private List<Model> models(RouteStep step, Property property) {
        List<Practice.Use> uses = new ArrayList<>();
        before.vocabulary.operations().stream().filter(o -> o.measures().contains(property.slot()))
                .forEach(o -> uses.addAll(practice.uses(o)));
        uses.removeIf(use -> measure(use.step(), property) == null);
        uses.sort(Comparator.comparing((Practice.Use use) -> use.step().operation() != step.operation())
                .thenComparing(use -> use.product() != before.product));
        return uses.stream().map(use -> new Model(StepText.of(measure(use.step(), property)), " as step " + use.step().number()
                + (use.product() == before.product ? "" : " of " + use.product().name()))).limit(2).toList();
    }

    private static RouteStep.Measure measure(RouteStep step, Property property) {
        return step.measures().stream().filter(m -> m.property() == property).findFirst().orElse(null);
    }

    /** Whether all of a measurement stands in its block: what takes it over may write other values elsewhere. */
    private static boolean isWhole(RouteStep.Measure measure) {
        return measure.places().values().stream().allMatch(place -> place.file() == measure.whole().file()
                && place.start() >= measure.whole().start() && place.end() <= measure.whole().end());
    }

    /** The measurement that a text writes in a step, or null where it would be a finding. */
    private RouteStep.Measure read(RouteStep step, String text) {
        String own = StepText.of(step, step.number(), true, false);
        int brace = own.indexOf('{');
        String written = brace < 0 ? own + " {\n" + text + "\n}" : own.substring(0, brace + 1) + "\n" + text + "\n"
                + own.substring(brace + 1);
        RouteStep read = StepText.read(before.vocabulary, before.product, written);
        return read == null || read.measures().size() != 1 ? null : read.measures().get(0);
    }

    private static RouteStep with(RouteStep step, RouteStep.Measure measure) {
        List<RouteStep.Measure> measures = new ArrayList<>(step.measures());
        measures.add(measure);
        return step.with(step.number(), measures);
    }

    private static RouteStep without(RouteStep step, RouteStep.Measure measure) {
        return step.with(step.number(), step.measures().stream().filter(m -> m != measure).toList());
    }

    /** Nothing where other products take the steps over and it would not do for them. */
    private List<Edit> edits(int at, RouteStep.Measure early, RouteStep step, String text) {
        List<RouteStep> changed = new ArrayList<>(List.of(step));
        List<Object> key = new ArrayList<>(List.of(step.head(), text));
        if (early != null) {
            changed.add(before.steps.get(at));
            key.add(early.whole());
        }
        boolean all = practice.shared().mayMeasure(before.product, changed, key, (taker, route) -> {
            int index = Takers.indexOf(route, step.head());
            RouteStep.Measure measure = index < 0 ? null : new Measuring(attempts, before, practice).read(step, text);
            if (measure == null || measure(route.all().get(index), measure.property()) != null) {
                return null;
            }
            Route result = route.with(index, with(route.all().get(index), measure));
            if (early == null) {
                return result;
            }
            int from = Takers.indexOf(route, before.steps.get(at).head());
            RouteStep.Measure own = from < 0 ? null : measure(route.all().get(from), early.property());
            return own == null || !isWhole(own) ? null : result.with(from, without(route.all().get(from), own));
        });
        if (!all || early != null && lines(early.whole()) == null) {
            return List.of();
        }
        List<Edit> edits = new ArrayList<>();
        edits.add(into(step.whole(), text));
        if (early != null) {
            edits.add(new Edit(lines(early.whole()), ""));
        }
        return LaidOut.edits(edits);
    }

    /** Behind all else in the step's block, which there may not be. */
    private static Edit into(Span step, String text) {
        SourceFile file = step.file();
        if (file.text().charAt(step.end() - 1) != '}') {
            return new Edit(new Span(file, step.end(), step.end()), " { " + text + " }");
        }
        int end = step.end() - 1;
        while (end > step.start() && Character.isWhitespace(file.text().charAt(end - 1))) {
            end--;
        }
        boolean first = file.text().charAt(end - 1) == '{';
        return new Edit(new Span(file, end, end), (first ? " " : file.text().substring(end, step.end() - 1).contains("\n") ? "\n" : "; ")
                + text + (first ? " " : ""));
    }

    /** The lines of a block, or the block and the sign behind it where others stand on its line. */
    private static Span lines(Span block) {
        SourceFile file = block.file();
        int first = block.line();
        int last = file.line(block.end() - 1);
        String ahead = file.text().substring(file.lineStart(first), block.start());
        String behind = file.text().substring(block.end(), file.lineStart(last) + file.lineText(last).length());
        if (ahead.isBlank() && (behind.isBlank() || behind.strip().startsWith("//"))) {
            return new Span(file, file.lineStart(first), last < file.lineCount() ? file.lineStart(last + 1) : file.text().length());
        }
        String rest = behind.strip();
        if (rest.startsWith(";")) {
            return new Span(file, block.start(), block.end() + behind.indexOf(';') + 1);
        }
        String lead = ahead.stripTrailing();
        return lead.endsWith(";") ? new Span(file, file.lineStart(first) + lead.length() - 1, block.end())
                : lead.endsWith("{") && rest.startsWith("}") ? block : null;
    }
}
