package org.ricasso.dsl.walk;

import java.util.Set;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.evaluate.Checker;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.ExpressionResult;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.quantity.Quantity;

/** Values of a house that stand in its text as expressions: evaluated again, with a record of how. */
public final class Written {
    private Written() {}

    /**
     * How a value that is written as an expression came about; null where the text says the value itself.
     *
     * @param value the value
     * @param place where it is written
     * @param type the type of the entry or setting
     * @param product the product that the text may read, or null
     */
    public static Computed of(Vocabulary vocabulary, Value value, Span place, Type type, Thing product) {
        if (!isComputed(value) && !isRead(value, place, product)) {
            return null;
        }
        ExpressionResult parsed = Parser.parseCell(place.file(), place.start(), place.end());
        if (parsed.expression() == null || !parsed.diagnostics().isEmpty()) {
            return null;
        }
        Frame frame = new Frame();
        frame.product = product;
        Scope scope = Scope.roots(product == null ? Set.of() : Set.of(product.kind()));
        return Computed.of("", new Checker(vocabulary, scope, new Findings()).check(parsed.expression(), type).node(), frame);
    }

    /** Whether the text names an entry of the product whose number is as written there. */
    private static boolean isRead(Value value, Span place, Thing product) {
        return product != null && (value instanceof Value.Num || value instanceof Value.Several || value instanceof Value.Along)
                && place.text().contains(product.kind() + ".");
    }

    private static boolean isComputed(Value value) {
        if (value instanceof Value.Num num) {
            return isComputed(num.quantity());
        }
        if (value instanceof Value.Rate rate) {
            return rate.amount() != null && isComputed(rate.amount());
        }
        return value instanceof Value.Several several && several.values().stream().anyMatch(Written::isComputed);
    }

    private static boolean isComputed(Quantity quantity) {
        return quantity.shown().written() == null;
    }
}
