package org.ricasso.dsl.house;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Damage;
import org.ricasso.dsl.syntax.RouteItem;
import org.ricasso.dsl.vocabulary.Family;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.dsl.vocabulary.VocabularyLoader;

/**
 * A house: its vocabulary and things, names resolved and typed, and its products with their routes. A thing of the
 * product's kind without a route is no product but something to take over from.
 *
 * @param vocabulary the vocabulary
 * @param routes the route of each product, by product in the order of their names
 * @param written what a product writes of its route itself, by product; nothing where it takes over all of it
 */
public record House(Vocabulary vocabulary, Map<Thing, Route> routes, Map<Thing, Block.Item.Route> written) {

    private record Read(Thing product, Route route, Findings found) {}

    /** Reads things and routes. */
    public static House load(VocabularyLoader.Loaded loaded, Damage damage, Findings findings) {
        Vocabulary vocabulary = loaded.vocabulary();
        ThingReader things = new ThingReader(vocabulary, findings, loaded.things(), damage);
        RouteTexts texts = new RouteTexts(findings, loaded.routes(), MeasureReader.entries(vocabulary));
        texts.resolveAll();
        Map<Thing, ResolvedRoute> resolved = new LinkedHashMap<>();
        if (vocabulary.productKind() != null && !damage.ofVocabulary()) {
            for (Thing product : vocabulary.things(vocabulary.productKind())) {
                List<WrittenTree.Layer> layers = things.route(product);
                boolean unknown = things.isFaulty(product) || layers.stream().anyMatch(l -> likeLost(l.route(), damage));
                ResolvedRoute route = unknown ? null : texts.of(layers, things.isDamaged(product));
                if (route != null) {
                    resolved.put(product, route);
                }
            }
        }
        Sizes sizes = new Sizes(vocabulary, findings);
        for (Family family : loaded.families()) {
            Thing base = vocabulary.thing(vocabulary.productKind(), family.like().text());
            if (isHurt(family.like().span(), damage)) {
                // a column or a row may be what could not be read
                continue;
            }
            sizes.check(family, base, resolved.get(base));
        }
        // each route by itself and in parallel; what is found is put together in the order of the products
        List<Read> read = resolved.entrySet().parallelStream().map(entry -> {
            Findings own = findings.journal();
            boolean changesLost = things.route(entry.getKey()).stream().map(WrittenTree.Layer::route)
                    .anyMatch(r -> isHurt(r.span(), damage));
            Route route = new Loops(vocabulary, own, entry.getKey(), damage, changesLost)
                    .read(entry.getValue(), things.routeText(entry.getKey()));
            sizes.leaveOpen(entry.getKey(), route);
            return new Read(entry.getKey(), route, own);
        }).toList();
        Map<Thing, Route> routes = new LinkedHashMap<>();
        Map<Thing, Block.Item.Route> written = new LinkedHashMap<>();
        for (Read one : read) {
            if (one.route() != null) {
                routes.put(one.product(), one.route());
                // a family's row has no room for a step
                things.route(one.product()).stream().limit(1).filter(layer -> layer.takenAt() == null
                        && layer.route().items().stream().noneMatch(RouteItem.Cell.class::isInstance))
                        .forEach(layer -> written.put(one.product(), layer.route()));
            }
            findings.addAll(one.found().all());
        }
        return new House(vocabulary, Collections.unmodifiableMap(routes), Collections.unmodifiableMap(written));
    }

    /** Whether a route has no steps of its own, and what it takes over could not be read. */
    private static boolean likeLost(Block.Item.Route route, Damage damage) {
        return route.like() == null && route.items().stream().noneMatch(RouteItem.Own.class::isInstance)
                && damage.marks(route.span());
    }

    /** Whether something behind a place, to the end of its text, could not be read. */
    private static boolean isHurt(Span place, Damage damage) {
        return damage.in(place.file(), place.start(), place.file().text().length());
    }
}
