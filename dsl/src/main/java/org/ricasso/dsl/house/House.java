package org.ricasso.dsl.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.syntax.Damage;
import org.ricasso.dsl.vocabulary.Family;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.dsl.vocabulary.VocabularyLoader;

/**
 * A house: its vocabulary and things, names resolved and typed, and its products with their routes. A thing of the
 * product's kind without a route is no product but something to take over from.
 *
 * @param vocabulary the vocabulary
 * @param routes the route of each product, by product in the order of their names
 */
public record House(Vocabulary vocabulary, Map<Thing, Route> routes) {

    /** Reads things and routes. */
    public static House load(VocabularyLoader.Loaded loaded, Damage damage, Findings findings) {
        Vocabulary vocabulary = loaded.vocabulary();
        ThingReader things = new ThingReader(vocabulary, findings, loaded.things(), damage);
        RouteTexts texts = new RouteTexts(findings, loaded.routes());
        Map<Thing, Route> routes = new LinkedHashMap<>();
        if (vocabulary.productKind() != null && !damage.ofVocabulary()) {
            for (Thing product : new ArrayList<>(vocabulary.things(vocabulary.productKind()))) {
                ResolvedRoute route = things.isFaulty(product) ? null : texts.of(things.route(product));
                if (route != null) {
                    routes.put(product, new Loops(vocabulary, findings, product, damage, texts)
                            .read(route, things.routeText(product)));
                }
            }
        }
        Sizes sizes = new Sizes(vocabulary, findings);
        for (Family family : loaded.families()) {
            Thing base = vocabulary.thing(vocabulary.productKind(), family.like().text());
            sizes.check(family, base, routes.get(base));
        }
        return new House(vocabulary, java.util.Collections.unmodifiableMap(routes));
    }
}
