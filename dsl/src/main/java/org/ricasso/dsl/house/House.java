package org.ricasso.dsl.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Damage;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.dsl.vocabulary.VocabularyLoader;

/**
 * A house: its vocabulary and things, names resolved and typed, and its products with their routes. A thing of the
 * product's kind without a route is no product but something to take over from.
 *
 * @param vocabulary the vocabulary
 * @param routes the steps of each product, by product in the order of their names
 */
public record House(Vocabulary vocabulary, Map<Thing, List<RouteStep>> routes) {

    /** Reads things and routes. */
    public static House load(VocabularyLoader.Loaded loaded, Damage damage, Findings findings) {
        Vocabulary vocabulary = loaded.vocabulary();
        ThingReader things = new ThingReader(vocabulary, findings, loaded.things(), damage);
        Map<Thing, List<RouteStep>> routes = new LinkedHashMap<>();
        if (vocabulary.productKind() != null && !damage.ofVocabulary()) {
            for (Thing product : new ArrayList<>(vocabulary.things(vocabulary.productKind()))) {
                Block.Item.Route route = things.route(product);
                if (route != null && !things.isFaulty(product)) {
                    routes.put(product, new RouteReader(vocabulary, findings, product, damage).read(route.steps()));
                }
            }
        }
        return new House(vocabulary, java.util.Collections.unmodifiableMap(routes));
    }
}
