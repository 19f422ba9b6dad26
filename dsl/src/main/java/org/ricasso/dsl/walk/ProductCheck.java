package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.Derivation;
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

/** Checks one product: walks its route, tries remedies by walking again, and puts findings on one value together. */
final class ProductCheck {
    private final Vocabulary vocabulary;
    private final Thing product;
    private final Route route;
    private final List<RouteStep> steps;

    ProductCheck(Vocabulary vocabulary, Thing product, Route route) {
        this.vocabulary = vocabulary;
        this.product = product;
        this.route = route;
        this.steps = route.all();
    }

    CheckedProduct check() {
        Walk walk = new Walk(vocabulary, route, Changes.none(product)).run();
        List<Outcome> outcomes = new Characteristics(walk).judge();
        Map<Span, Diagnostic> merged = new LinkedHashMap<>();
        for (Finding finding : walk.findings) {
            Diagnostic diagnostic = diagnostic(walk, finding);
            merged.merge(diagnostic.primary().span(), diagnostic, ProductCheck::together);
        }
        List<Diagnostic> diagnostics = new ArrayList<>(merged.values());
        diagnostics.sort(Diagnostic.ORDER);
        return new CheckedProduct(product, new StepPages(walk).steps(), outcomes, walk.judgements, diagnostics);
    }

    /** Findings that mark the same value are one diagnostic: the graver one leads, the other is said as well. */
    static Diagnostic together(Diagnostic a, Diagnostic b) {
        Diagnostic lead = b.severity().compareTo(a.severity()) < 0 ? b : a;
        Diagnostic other = lead == a ? b : a;
        List<Mark> marks = new ArrayList<>(lead.others());
        for (Mark mark : other.others()) {
            if (marks.size() < 4 && marks.stream().noneMatch(m -> m.span().equals(mark.span()))) {
                marks.add(mark);
            }
        }
        List<String> also = new ArrayList<>(lead.also());
        if (!other.primary().text().equals(lead.primary().text())) {
            also.add(other.primary().text());
        }
        also.addAll(other.also());
        List<Remedy> remedies = new ArrayList<>(lead.remedies());
        for (Remedy remedy : other.remedies()) {
            if (remedies.size() < 2 && remedies.stream().noneMatch(r -> r.edits().equals(remedy.edits()))) {
                remedies.add(remedy);
            }
        }
        return new Diagnostic(lead.name(), lead.severity(), lead.primary(), marks, union(lead.because(), other.because()),
                also, remedies, union(lead.sources(), other.sources()));
    }

    private static List<String> union(List<String> a, List<String> b) {
        List<String> result = new ArrayList<>(a);
        b.stream().filter(s -> !result.contains(s)).forEach(result::add);
        return result;
    }

    private Diagnostic diagnostic(Walk walk, Finding finding) {
        Finding placed = finding;
        List<Remedy> remedies = new ArrayList<>();
        List<String> sources = new ArrayList<>(finding.sources());
        for (Finding.Attempt attempt : finding.attempts()) {
            if (attempt instanceof Finding.Attempt.Search search) {
                sources.addAll(Whys.sources(walk, search.slot()));
                Best best = search(walk, finding, search);
                if (best == null) {
                    continue;
                }
                Span span = steps.get(best.step).places()[best.setting];
                if (finding.name().equals("characteristic-missed")) {
                    placed = finding.at(span, "asked for here");
                    String text = placed.text().replace("asked for here; the route ", "");
                    placed = new Finding(placed.name(), placed.severity(), span, text, placed.others(), placed.because(),
                            placed.sources(), placed.attempts());
                }
                remedies.add(best.remedy);
            } else {
                Remedy remedy = tried(walk, finding, attempt);
                if (remedy != null) {
                    remedies.add(remedy);
                }
            }
        }
        Diagnostic result = new Diagnostic(placed.name(), placed.severity(), new Mark(placed.primary(), placed.text()),
                placed.others(), placed.because(), List.of(), remedies, union(List.of(), sources));
        return result;
    }

    /** A remedy that was walked and holds, or null. */
    private Remedy tried(Walk walk, Finding finding, Finding.Attempt attempt) {
        if (attempt instanceof Finding.Attempt.Setting setting) {
            RouteStep step = steps.get(setting.step());
            EntryType type = step.operation().takes().get(setting.setting());
            Value value = read(setting.value(), type);
            if (value == null || !mends(walk, finding,
                    Changes.setting(product, setting.step(), setting.setting(), value))) {
                return null;
            }
            Span place = step.places()[setting.setting()];
            return new Remedy("set " + type.name() + " of step " + step.number() + " to " + setting.value(),
                    place == null ? List.of() : List.of(new Edit(place, setting.value())));
        }
        Finding.Attempt.Entry entry = (Finding.Attempt.Entry) attempt;
        EntryType type = vocabulary.entryType(product.kind(), entry.path());
        Value value = type == null ? null : read(entry.value(), type);
        if (value == null || !mends(walk, finding, Changes.none(product.with(entry.path(), value)))) {
            return null;
        }
        Thing.Place place = product.places().get(entry.path());
        return new Remedy("set " + entry.path() + " to " + entry.value(),
                place == null || place.inheritedAt() != null ? List.of() : List.of(new Edit(place.value(), entry.value())));
    }

    /** The value that a text writes, read as the house reads it; null where it would be a finding. */
    private Value read(String text, EntryType type) {
        ExpressionResult parsed = Parser.parseExpression(new SourceFile("remedy", text, false));
        if (parsed.expression() == null || !parsed.diagnostics().isEmpty()) {
            return null;
        }
        Findings own = new Findings();
        Value value = new EntryReader(vocabulary, own, product).read(parsed.expression(), type);
        return own.isEmpty() ? value : null;
    }

    /** Whether the finding is gone after a change and no new error has come. */
    private boolean mends(Walk before, Finding finding, Changes changes) {
        return mends(before, finding, walked(changes));
    }

    private Walk walked(Changes changes) {
        Walk walk = new Walk(vocabulary, route, changes).run();
        new Characteristics(walk).judge();
        return walk;
    }

    private static boolean mends(Walk before, Finding finding, Walk after) {
        for (Finding one : after.findings) {
            if (one.sameAs(finding)) {
                return false;
            }
            if (one.severity() == Severity.ERROR && before.findings.stream().noneMatch(one::sameAs)) {
                return false;
            }
        }
        return true;
    }

    private record Best(int step, int setting, Remedy remedy, double distance) {}

    /** The best value of the first setting that can put the finding right. */
    private Best search(Walk walk, Finding finding, Finding.Attempt.Search search) {
        Property property = vocabulary.properties().get(search.slot());
        String path = Characteristics.specified(vocabulary, product).get(property);
        Value asked = path == null ? null : product.at(path);
        for (int[] place : search.settings()) {
            RouteStep step = steps.get(place[0]);
            EntryType type = step.operation().takes().get(place[1]);
            if (!(step.settings()[place[1]] instanceof Value.Num current)) {
                continue;
            }
            Best best = null;
            for (double middle : Grid.values(current.quantity(), type.within())) {
                String text = Amendments.moved(current.quantity(), middle);
                Value value = text == null ? null : read(text, type);
                if (value == null) {
                    continue;
                }
                Walk tried = walked(Changes.setting(product, place[0], place[1], value));
                if (!mends(walk, finding, tried)) {
                    continue;
                }
                Value found = tried.last()[search.slot()];
                double distance = distance(found, asked, current.quantity(), middle);
                if (best == null || distance < best.distance) {
                    String leaves = found instanceof Value.Num num && !(found instanceof Value.Unknown)
                            ? " (leaves " + property.name() + " " + Characteristics.aim(num) + ")" : "";
                    best = new Best(place[0], place[1], new Remedy("set " + type.name() + " of step " + step.number()
                            + " to " + text + leaves, List.of(new Edit(step.places()[place[1]], text))), distance);
                }
            }
            if (best != null) {
                return best;
            }
        }
        return null;
    }

    /** How far the aim's middle is from the limit's middle; how far the setting moves where there is no such limit. */
    private static double distance(Value found, Value asked, Quantity current, double middle) {
        if (found instanceof Value.Num value && asked instanceof Value.Num limit) {
            Interval band = limit.quantity().aim();
            if (band.isBounded()) {
                return Math.abs(value.quantity().aim().middle() - band.middle());
            }
        }
        return Math.abs(middle - current.aim().middle());
    }

    /** Values worth trying for a setting: round ones, over its sensible range. */
    private static final class Grid {
        private static final int TRIES = 48;

        static List<Double> values(Quantity current, Quantity within) {
            boolean point = current.measure().point();
            org.ricasso.shared.quantity.Unit unit = current.shown().unit();
            Interval range = within != null && within.aim().isBounded() ? within.aim()
                    : around(current);
            double least = unit.fromCoherent(range.least(), point);
            double most = unit.fromCoherent(range.most(), point);
            double step = roundStep((most - least) / TRIES, current.shown().decimals());
            List<Double> result = new ArrayList<>();
            for (double value = StrictMath.ceil(least / step - 1e-9) * step; value <= most + step * 1e-9; value += step) {
                result.add(unit.toCoherent(value, point));
            }
            return result;
        }

        private static Interval around(Quantity current) {
            double middle = current.aim().middle();
            double half = Math.abs(current.measure().point() ? middle - current.shown().unit().offset() : middle) / 2;
            return Interval.of(middle).widened(half);
        }

        /** 1, 2 or 5 times a power of ten, at least what the written decimals show. */
        private static double roundStep(double about, int decimals) {
            double least = StrictMath.pow(10, -decimals);
            double power = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(Math.max(about, least))));
            for (double factor : new double[] {1, 2, 5, 10}) {
                if (factor * power >= about - 1e-12 && factor * power >= least - 1e-12) {
                    return factor * power;
                }
            }
            return 10 * power;
        }
    }

    /** Where values came from, for sources of a finding. */
    private static final class Whys {
        static List<String> sources(Walk walk, int slot) {
            Derivation derivation = new Why(walk).property(slot);
            return derivation == null ? List.of() : derivation.sources().stream().limit(4).toList();
        }
    }
}
