package org.ricasso.dsl.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Checker;
import org.ricasso.dsl.evaluate.Derivation;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Trace;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.ExpressionResult;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.walk.Walked;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;

/** Evaluates one expression against a house and says how its value came about. */
public final class Calculator {
    private final House house;

    public Calculator(House house) {
        this.house = house;
    }

    /**
     * An evaluated expression.
     *
     * @param value the value as shown
     * @param aim the aim, where it differs from the reach; else empty
     * @param reach the reach, where it differs from the aim; else empty
     * @param derivation how it came about, indented lines
     * @param diagnostics what stood in the way; then the rest is empty
     */
    public record Answer(String value, String aim, String reach, List<String> derivation,
            List<Diagnostic> diagnostics) {
        public Answer {
            derivation = List.copyOf(derivation);
            diagnostics = List.copyOf(diagnostics);
        }

        static Answer none(List<Diagnostic> diagnostics) {
            return new Answer("", "", "", List.of(), diagnostics);
        }
    }

    /** @param productName a product's name or number, or null: without one, nothing of a product can be read */
    public Answer calculate(String expression, String productName) {
        SourceFile file = new SourceFile("expression", expression, false);
        Span whole = new Span(file, 0, expression.length());
        Findings findings = new Findings();
        Thing product = productName == null ? null : Walked.product(house, productName);
        if (productName != null && product == null) {
            findings.unknownName(whole, house.vocabulary().productKind(), productName,
                    house.routes().keySet().stream().map(Thing::name).toList());
            return Answer.none(findings.all());
        }
        ExpressionResult parsed = Parser.parseExpression(file);
        if (parsed.expression() == null || !parsed.diagnostics().isEmpty()) {
            return Answer.none(parsed.diagnostics());
        }
        Set<String> roots = product == null ? Set.of() : new TreeSet<>(Set.of(product.kind(), "before", "after"));
        Scope scope = new Scope(List.of(), new ArrayList<>(), null, false, product == null ? null : product.kind(), roots,
                Map.of(), true, false);
        Checker.Checked checked = new Checker(house.vocabulary(), scope, findings).check(parsed.expression(), null);
        if (!findings.isEmpty()) {
            return Answer.none(findings.all());
        }
        Frame frame = new Frame();
        frame.trace = new Trace();
        Walked walked = product == null ? null : Walked.of(house, product);
        if (product != null) {
            frame.product = product;
            frame.self = product;
            frame.before = walked.first();
            frame.after = walked.last();
        }
        Value value = checked.node().eval(frame);
        if (value instanceof Value.Logic logic && logic.truth() == Truth.UNKNOWN) {
            value = frame.absent != null ? new Value.Absent(frame.absent) : new Value.Unknown(frame.refusals.isEmpty()
                    ? "nothing says" : frame.refusals.get(0).reason(), false);
        }
        if (value instanceof Value.Unknown || value instanceof Value.Absent) {
            return Answer.none(List.of(refused(whole, value, frame)));
        }
        List<String> derivation = new ArrayList<>();
        frame.trace.finished().forEach(d -> derivation.addAll(d.lines()));
        for (int slot : checked.reads().properties) {
            Derivation why = walked == null ? null : walked.why(slot);
            if (why != null) {
                derivation.addAll(why.lines());
            }
        }
        if (value instanceof Value.Num num && num.quantity().hasScatter()) {
            Quantity quantity = num.quantity();
            return new Answer(QuantityFormat.aim(quantity), QuantityFormat.aim(quantity), QuantityFormat.reach(quantity),
                    derivation, List.of());
        }
        return new Answer(Shows.show(value), "", "", derivation, List.of());
    }

    private static Diagnostic refused(Span whole, Value value, Frame frame) {
        String reason = value instanceof Value.Unknown unknown ? unknown.reason()
                : ((Value.Absent) value).path() + " is not stated";
        Diagnostic diagnostic = Diagnostic.error("cannot-be-told", new Mark(whole, reason));
        for (Frame.Refusal refusal : frame.refusals) {
            if (refusal.reason().equals(reason) && !refusal.source().isEmpty()) {
                return diagnostic.source(refusal.source());
            }
        }
        return diagnostic;
    }
}
