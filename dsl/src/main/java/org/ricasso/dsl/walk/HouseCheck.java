package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.Thing;

/** Checks the products of a house, each on its own and in parallel; the order of what is found depends on neither. */
public final class HouseCheck {
    private HouseCheck() {}

    /**
     * @param loading what was found while the house was loaded
     * @param only names or numbers of the products to check; empty for all
     */
    public static CheckedHouse check(House house, Findings loading, Set<String> only) {
        List<CheckedProduct> products = products(house, product -> only.isEmpty() || isMeant(product, only), true);
        Findings all = loading;
        List<Finding> ofThings = new ArrayList<>();
        RuleCheck.things(house.vocabulary(), ofThings);
        ofThings.forEach(f -> all.add(new Diagnostic(f.name(), f.severity(), new Mark(f.primary(), f.text()), f.others(),
                f.because(), List.of(), List.of(), f.sources())));
        products.forEach(p -> all.addAll(p.diagnostics()));
        List<Diagnostic> diagnostics = new ArrayList<>(all.all());
        diagnostics.sort(Diagnostic.ORDER);
        return new CheckedHouse(products, house.vocabulary().things(), diagnostics);
    }

    /**
     * Checks products alone, each on its own and in parallel.
     *
     * @param pages whether they are to have pages; without, they have no steps
     */
    public static List<CheckedProduct> products(House house, Predicate<Thing> chosen, boolean pages) {
        List<Map.Entry<Thing, Route>> meant = house.routes().entrySet().stream().filter(e -> chosen.test(e.getKey())).toList();
        Practice practice = new Practice(house);
        return meant.parallelStream()
                .map(e -> new ProductCheck(house.vocabulary(), e.getKey(), e.getValue(), practice).check(pages)).toList();
    }

    /** By name, or by a text of its own such as a number. */
    static boolean isMeant(Thing product, Set<String> only) {
        return only.contains(product.name()) || product.entries().values().stream()
                .anyMatch(v -> v instanceof Value.Txt text && only.contains(text.text()));
    }
}
