package org.ricasso.dsl.house;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Literals;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.EntryValue;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Numbers;
import org.ricasso.shared.quantity.Quantity;

/** Reads {@code solve(property, within: tolerance)}, which stands in place of a step's setting. */
final class SolveReader {
    private static final String WITHIN = "within";
    private final Vocabulary vocabulary;
    private final Findings findings;

    SolveReader(Vocabulary vocabulary, Findings findings) {
        this.vocabulary = vocabulary;
        this.findings = findings;
    }

    static boolean isSolve(EntryValue value) {
        return value instanceof Expression.Call call && call.target() == null && call.name().text().equals(Expression.Call.SOLVE);
    }

    /**
     * Reads a call; nothing after a finding.
     *
     * @param setting the setting's index in the operation
     * @param cells values that stand in a family's row
     */
    Optional<Solve> read(Operation operation, int setting, Expression.Call call, Set<Span> cells) {
        EntryType type = operation.takes().get(setting);
        if (cells.contains(call.span())) {
            findings.add(Diagnostic.error("solve-misplaced", new Mark(call.span(), "a row of sizes says a value, it does not solve"))
                    .because("a setting that is solved in the route has its own solution for every size already")
                    .remedy(new Remedy("leave the cell empty and solve in the route", List.of())));
            return Optional.empty();
        }
        if (!(type.type() instanceof Type.Measured measured) || measured.name().equals("count")) {
            findings.error("solve-kind", call.span(), "only a number with a tolerance can be solved for; " + type.name() + " is "
                    + Type.describe(type.type()));
            return Optional.empty();
        }
        Expression asked = null;
        Expression within = null;
        for (Expression.Argument argument : call.arguments()) {
            if (argument.name() != null && !argument.name().text().equals(WITHIN)) {
                findings.unknownName(argument.name().span(), "argument of " + Expression.Call.SOLVE, argument.name().text(), List.of(WITHIN));
                return Optional.empty();
            }
            if (argument.name() == null ? asked != null : within != null) {
                return wrong(call, "");
            }
            asked = argument.name() == null ? argument.value() : asked;
            within = argument.name() == null ? within : argument.value();
        }
        if (asked == null || within == null) {
            return wrong(call, asked == null ? "; the property is missing" : "; " + WITHIN + " is missing");
        }
        Property property = property(operation, asked);
        Quantity tolerance = tolerance(type, measured.measure().difference(), within);
        return property == null || tolerance == null ? Optional.empty()
                : Optional.of(new Solve(setting, property, tolerance, call.span(), null));
    }

    private Optional<Solve> wrong(Expression.Call call, String missing) {
        findings.error("wrong-arguments", call.span(), Expression.Call.SOLVE + " takes a property and `" + WITHIN
                + ":`, its setting's tolerance either way" + missing);
        return Optional.empty();
    }

    /** The property of a plain name or path, as names in the operation go; null after a finding. */
    private Property property(Operation operation, Expression asked) {
        String path = path(asked);
        if (path == null) {
            findings.error("wrong-type", asked.span(), "the name of a property is asked for");
            return null;
        }
        Property property = vocabulary.propertyFor(operation.works(), path);
        if (property == null) {
            Set<String> known = new TreeSet<>();
            vocabulary.properties().forEach(p -> {
                known.add(p.path());
                known.add(p.name());
            });
            known.remove(path);
            findings.unknownName(asked.span(), "property", path, known);
            return null;
        }
        if (!(property.type() instanceof Type.Measured)) {
            findings.error("solve-kind", asked.span(), "only a single number can be solved for; " + property.name() + " is "
                    + Type.describe(property.type()));
            return null;
        }
        return property;
    }

    private static String path(Expression expression) {
        if (expression instanceof Expression.NameUse use) {
            return use.name().text();
        }
        String target = expression instanceof Expression.Member member ? path(member.target()) : null;
        return target == null ? null : target + "." + ((Expression.Member) expression).name().text();
    }

    /** The tolerance, a literal as behind ±; null after a finding. */
    private Quantity tolerance(EntryType type, Measure difference, Expression within) {
        if (!(within instanceof Expression.Literal literal) || literal.form() != Expression.Form.SINGLE) {
            findings.error("wrong-type", within.span(), "a number with its unit is asked for: the tolerance of " + type.name()
                    + " either way");
            return null;
        }
        Quantity quantity = new Literals(vocabulary.units()).read(literal, null, true, findings);
        if (quantity == null) {
            return null;
        }
        if (!quantity.measure().dimension().equals(difference.dimension())) {
            boolean bare = literal.unit() == null;
            String text = within.span().text().strip() + " " + vocabulary.units().shownFor(difference.dimension()).sign();
            Diagnostic diagnostic = Diagnostic.error(bare ? "unit-missing" : "wrong-dimension", new Mark(within.span(),
                    bare ? "the unit is missing; the tolerance of " + type.name() + " is asked for"
                            : "this is no tolerance of " + type.name() + ", which is " + Type.describe(type.type())));
            findings.add(bare ? diagnostic.remedy(new Remedy("write " + text, List.of(new Edit(within.span(), text))))
                    : diagnostic);
            return null;
        }
        if (Numbers.compare(quantity.nominal(), 0) <= 0) {
            findings.error("wrong-arguments", within.span(), "the tolerance of " + type.name() + " is more than nothing");
            return null;
        }
        return quantity;
    }
}
