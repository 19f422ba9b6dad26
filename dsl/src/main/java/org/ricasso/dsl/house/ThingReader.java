package org.ricasso.dsl.house;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.LimitFindings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Damage;
import org.ricasso.dsl.syntax.Declaration.ThingDeclaration;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** Gives things their entries: inherits, reads and types them. */
final class ThingReader {
    private static final Value FAULT = new Value.Unknown("a fault reported elsewhere", true);
    private final Vocabulary vocabulary;
    private final Findings findings;
    private final Damage damage;
    private final Map<String, ThingDeclaration> declarations = new HashMap<>();
    private final Map<String, WrittenTree> trees = new HashMap<>();
    private final Map<String, List<WrittenTree.Layer>> routes = new ConcurrentHashMap<>();
    /** Where things begin, by file. */
    private final Map<SourceFile, TreeSet<Integer>> starts = new HashMap<>();
    private final Set<String> faulty = new TreeSet<>();

    ThingReader(Vocabulary vocabulary, Findings findings, List<ThingDeclaration> things, Damage damage) {
        this.vocabulary = vocabulary;
        this.findings = findings;
        this.damage = damage;
        things.forEach(t -> declarations.put(key(t.kind().text(), t.head().name().text()), t));
        declarations.values().forEach(t -> starts.computeIfAbsent(t.span().file(), f -> new TreeSet<>())
                .add(t.span().start()));
        chains();
        for (ThingDeclaration thing : things) {
            tree(thing, new LinkedHashSet<>());
        }
        fill(things);
    }

    /** Reports chains that are too long to be followed; of those things nothing can be said. */
    private void chains() {
        Map<String, String> parents = new TreeMap<>();
        declarations.forEach((key, thing) -> {
            if (thing.head().like() != null) {
                parents.put(key, key(thing.kind().text(), thing.head().like().text()));
            }
        });
        LikeChains chains = new LikeChains(parents);
        Set<String> tooDeep = chains.tooDeep();
        faulty.addAll(tooDeep);
        chains.first(tooDeep).forEach(key -> findings.add(LimitFindings.likeTooDeep(
                declarations.get(key).head().like().span(), key)));
    }

    /** Products read each other not at all and other things as they are, so they come last and beside each other. */
    private void fill(List<ThingDeclaration> things) {
        Map<ThingDeclaration, Findings> found = new IdentityHashMap<>();
        things.forEach(t -> found.put(t, findings.journal()));
        things.stream().filter(t -> !isProduct(t)).forEach(t -> fill(t, found.get(t)));
        things.parallelStream().filter(this::isProduct).forEach(t -> fill(t, found.get(t)));
        things.forEach(t -> findings.addAll(found.get(t).all()));
    }

    private boolean isProduct(ThingDeclaration thing) {
        return thing.kind().text().equals(vocabulary.productKind());
    }

    private static String key(String kind, String name) {
        return kind + " " + name;
    }

    /** What is written of a product's route, its own first; empty where nothing is. */
    List<WrittenTree.Layer> route(Thing thing) {
        return routes.getOrDefault(thing.name(), List.of());
    }

    /** Where a product's route is written, to where the next thing begins; null where it comes from several. */
    Span routeText(Thing thing) {
        List<WrittenTree.Layer> layers = route(thing);
        ThingDeclaration declaration = declarations.get(key(thing.kind(), thing.name()));
        if (declaration == null || layers.size() != 1 || layers.get(0).takenAt() != null) {
            return null;
        }
        Span block = declaration.block().span();
        // to the next thing: a brace that is lost or stray may have closed the product too early
        Integer next = starts.get(block.file()).ceiling(block.end());
        return new Span(block.file(), layers.get(0).route().span().start(),
                next != null ? next : block.file().text().length());
    }

    /** Whether a thing takes part in a ring, so that nothing can be said of it. */
    boolean isFaulty(Thing thing) {
        return faulty.contains(key(thing.kind(), thing.name()));
    }

    /** Whether a thing, or one it takes over from, could not be read whole. */
    boolean isDamaged(Thing thing) {
        ThingDeclaration declaration = declarations.get(key(thing.kind(), thing.name()));
        return declaration != null && isDamaged(declaration, Collections.newSetFromMap(new IdentityHashMap<>()));
    }

    private WrittenTree tree(ThingDeclaration thing, LinkedHashSet<String> path) {
        String key = key(thing.kind().text(), thing.head().name().text());
        WrittenTree known = trees.get(key);
        if (known != null) {
            return known;
        }
        WrittenTree own = WrittenTree.of(thing.block(), thing.head().name().span(), findings);
        if (thing.head().like() == null || faulty.contains(key)) {
            trees.put(key, own);
            return own;
        }
        path.add(key);
        String parentKey = key(thing.kind().text(), thing.head().like().text());
        ThingDeclaration parent = declarations.get(parentKey);
        if (parent == null) {
            findings.unknownThing(thing.head().like().span(), thing.kind().text(), thing.head().like().text(),
                    vocabulary.thingNames(thing.kind().text()));
            faulty.add(key);
        } else if (path.contains(parentKey)) {
            ring(path, parentKey);
        } else {
            own = own.over(tree(parent, path), thing.head().like().span(), findings);
            if (faulty.contains(parentKey)) {
                faulty.add(key);
            }
        }
        trees.put(key, own);
        return own;
    }

    private void ring(LinkedHashSet<String> path, String start) {
        List<ThingDeclaration> ring = new ArrayList<>();
        boolean inside = false;
        for (String key : path) {
            inside |= key.equals(start);
            if (inside) {
                ring.add(declarations.get(key));
                faulty.add(key);
            }
        }
        StringBuilder round = new StringBuilder();
        ring.forEach(t -> round.append(t.head().name()).append(" like "));
        Diagnostic diagnostic = Diagnostic.error("like-ring", new Mark(ring.get(0).head().like().span(),
                "nothing is taken over from a ring: " + round + ring.get(0).head().name()));
        for (ThingDeclaration other : ring.subList(1, ring.size())) {
            diagnostic = diagnostic.and(new Mark(other.head().like().span(), "and this"));
        }
        findings.add(diagnostic.because("each takes its entries from the next, so none has any of its own"));
    }

    private void fill(ThingDeclaration declaration, Findings into) {
        String kind = declaration.kind().text();
        Thing thing = vocabulary.thing(kind, declaration.head().name().text());
        WrittenTree tree = trees.get(key(kind, thing.name()));
        if (isFaulty(thing)) {
            Map<String, Value> unknown = new LinkedHashMap<>();
            vocabulary.entries(kind).keySet().forEach(name -> unknown.put(name, FAULT));
            thing.fill(unknown, Map.of());
            return;
        }
        Filling filling = new Filling(into, thing, kind.equals(vocabulary.productKind()) ? thing : null,
                isDamaged(declaration, Collections.newSetFromMap(new IdentityHashMap<>())));
        // first without what stands along an axis, since the axis' length is an entry itself
        thing.fill(filling.entries(tree, kind, "", true), filling.places);
        if (filling.grids) {
            thing.fill(filling.entries(tree, kind, "", false), filling.places);
        }
        if (!tree.routes().isEmpty()) {
            if (kind.equals(vocabulary.productKind())) {
                routes.put(thing.name(), List.copyOf(tree.routes()));
            } else if (vocabulary.productKind() != null || !into.declarationLost()) {
                into.error("route-misplaced", tree.routes().get(0).route().span(), vocabulary.productKind() == null
                        ? "no workpiece is declared, so nothing has a route" : "only a " + vocabulary.productKind() + " has a route");
            }
        }
    }

    private boolean isDamaged(ThingDeclaration thing, Set<ThingDeclaration> seen) {
        if (!seen.add(thing)) {
            return true;
        }
        Span block = thing.block().span();
        int end = block.end();
        for (Block.Item item : thing.block().items()) {
            // a lost step is the route's matter
            if (item instanceof Block.Item.Route route && !route.items().isEmpty()) {
                end = route.items().get(0).span().start();
            }
        }
        if (damage.in(block.file(), thing.span().start(), end)) {
            return true;
        }
        ThingDeclaration parent = thing.head().like() == null ? null
                : declarations.get(key(thing.kind().text(), thing.head().like().text()));
        return parent != null && isDamaged(parent, seen);
    }

    /** One thing's entries on their way from written to typed. */
    private final class Filling {
        private final Findings findings;
        private final Thing thing;
        private final Thing product;
        private final Map<String, Thing.Place> places = new LinkedHashMap<>();
        private final boolean damaged;
        private boolean grids;

        private Filling(Findings findings, Thing thing, Thing product, boolean damaged) {
            this.findings = findings;
            this.thing = thing;
            this.product = product;
            this.damaged = damaged;
        }

        private Map<String, Value> entries(WrittenTree tree, String kind, String prefix, boolean withoutGrids) {
            Map<String, EntryType> known = vocabulary.entries(kind);
            Map<String, Value> result = new LinkedHashMap<>();
            // what is missing may be what was lost, or what was written by a name that nobody knows
            boolean open = damaged | strangers(tree, kind, known);
            for (EntryType entry : known.values()) {
                String path = prefix + entry.name();
                WrittenTree.Leaf leaf = tree.leaves().get(entry.name());
                WrittenTree block = tree.blocks().get(entry.name());
                if (leaf != null && !withoutGrids && !(leaf.value() instanceof Grid)) {
                    result.put(entry.name(), thing.at(path));
                } else if (leaf != null) {
                    places.put(path, new Thing.Place(leaf.value().span(), leaf.inheritedAt()));
                    if (leaf.value() instanceof Grid && withoutGrids) {
                        grids = true;
                        continue;
                    }
                    result.put(entry.name(), read(leaf, entry, findings));
                } else if (block != null && entry.type() instanceof Type.ThingOf of) {
                    places.put(path, new Thing.Place(block.span(), null));
                    result.put(entry.name(), new Value.Entries(entries(block, of.kind(), path + ".", withoutGrids)));
                } else if (block != null) {
                    findings.error("wrong-type", block.span(), "a block stands where " + Type.describe(entry.type())
                            + " is asked for");
                    result.put(entry.name(), FAULT);
                } else if (open) {
                    result.put(entry.name(), FAULT);
                } else if (entry.byDefault() != null) {
                    Frame frame = new Frame();
                    frame.product = product;
                    result.put(entry.name(), entry.byDefault().eval(frame));
                } else if (!entry.optional()) {
                    findings.error("missing-entry", tree.span(), kind + " " + (prefix.isEmpty() ? thing.name() : "of "
                            + thing.name()) + " says nothing of " + entry.name() + ": " + Type.describe(entry.type())
                            + " is asked for");
                    result.put(entry.name(), FAULT);
                }
            }
            return result;
        }

        private Value read(WrittenTree.Leaf leaf, EntryType entry, Findings into) {
            Findings found = findings.apart();
            Value value = new EntryReader(vocabulary, found, product).read(leaf.value(), entry);
            if (damaged && leaf.value() instanceof Grid) {
                // a row may be what could not be read
                value = FAULT;
            }
            for (Diagnostic diagnostic : found.all()) {
                Span at = diagnostic.primary().span();
                // a value at one station may be its own
                boolean own = leaf.inheritedAt() == null || at.file() != leaf.value().span().file()
                        || at.start() < leaf.value().span().start() || at.end() > leaf.value().span().end();
                into.add(own ? diagnostic : diagnostic.and(Mark.taker(leaf.inheritedAt(), thing.name())));
            }
            return value;
        }

        /** Reports entries that the kind does not have; whether there are any. */
        private boolean strangers(WrittenTree tree, String kind, Map<String, EntryType> known) {
            tree.leaves().forEach((name, leaf) -> {
                if (!known.containsKey(name)) {
                    Span span = leaf.name();
                    findings.unknownName(new Span(span.file(), span.end() - name.length(), span.end()),
                            "entry of " + kind, name, known.keySet());
                }
            });
            tree.blocks().forEach((name, block) -> {
                if (!known.containsKey(name)) {
                    findings.unknownName(block.span(), "entry of " + kind, name, known.keySet());
                }
            });
            return !known.keySet().containsAll(tree.leaves().keySet())
                    || !known.keySet().containsAll(tree.blocks().keySet());
        }
    }
}
