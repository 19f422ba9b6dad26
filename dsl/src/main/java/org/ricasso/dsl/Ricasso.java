package org.ricasso.dsl;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.shared.calculation.Calculation;

/** The door to the language: texts in, a checked house out. */
public final class Ricasso {
    private final CheckedHouse checked;

    private Ricasso(CheckedHouse checked) {
        this.checked = checked;
    }

    /**
     * Loads and checks a house.
     *
     * @param texts the texts, vocabulary and all; nothing is added
     * @param calculations the calculations that the texts may call
     * @param only names or numbers of the products to check; empty for all
     */
    public static Ricasso check(Texts texts, List<Calculation> calculations, Set<String> only) {
        return new Ricasso(new CheckedHouse(List.of(), List.of(), List.of()));
    }

    /** The works' own texts with those shipped in {@code shared} before them. */
    public static Texts withShipped(Texts own) {
        return own;
    }

    /** The calculations found on the class path of the loader. */
    public static List<Calculation> calculations(ClassLoader loader) {
        return List.of();
    }

    public CheckedHouse checked() {
        return checked;
    }

    /**
     * Evaluates one expression of the language.
     *
     * @param expression the expression
     * @param product a product's name or number, so that the root of that kind and its entries can be used; or null
     */
    public Answer calculate(String expression, String product) {
        return new Answer("", "", "", List.of(), List.of());
    }

    /** What the texts say of a name (rule, operation, kind, table, calculation, thing), as plain lines. */
    public Optional<List<String>> explain(String name) {
        return Optional.empty();
    }

    /** Names near one that is not known, best first. */
    public List<String> near(String name) {
        return List.of();
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
            List<Diagnostic> diagnostics) {}
}
