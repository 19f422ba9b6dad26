package org.ricasso.dsl.house;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.LimitFindings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Declaration.RouteDeclaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.syntax.RouteItem;
import org.ricasso.dsl.syntax.Step;

/** Routes made from routes: takes over, changes, adds and leaves out. */
final class RouteTexts {
    private final Findings findings;
    private final Map<String, RouteDeclaration> declared;
    private final Set<String> measuring;
    private final Map<String, ResolvedRoute> resolved = new HashMap<>();

    /** @param measuring what may stand in a measuring block, which tells it from one that names stations of a grid */
    RouteTexts(Findings findings, Map<String, RouteDeclaration> declared, Set<String> measuring) {
        this.findings = findings;
        this.declared = declared;
        this.measuring = measuring;
        chains();
    }

    /** Reports chains that are too long to be followed; those routes are empty. */
    private void chains() {
        Map<String, String> parents = new TreeMap<>();
        declared.values().stream().filter(route -> route.head().like() != null)
                .forEach(route -> parents.put(route.head().name().text(), route.head().like().text()));
        LikeChains chains = new LikeChains(parents);
        Set<String> tooDeep = chains.tooDeep();
        tooDeep.forEach(name -> resolved.put(name, new ResolvedRoute(List.of(), List.of(), List.of())));
        chains.first(tooDeep).forEach(name -> findings.add(LimitFindings.likeTooDeep(
                declared.get(name).head().like().span(), "route " + name)));
    }

    /** Resolves all declared routes, so that what is found does not depend on who asks first. */
    void resolveAll() {
        declared.values().forEach(route -> named(route.head().name(), findings));
    }

    /** The named route, or an empty one after a finding at {@code like}. */
    ResolvedRoute named(Name like, Findings into) {
        ResolvedRoute known = resolved.get(like.text());
        if (known == null && !declared.containsKey(like.text())) {
            into.unknownName(like.span(), "route", like.text(), declared.keySet());
            return ResolvedRoute.NONE;
        }
        return known != null ? known : named(like, new LinkedHashSet<>());
    }

    private ResolvedRoute named(Name like, LinkedHashSet<String> path) {
        RouteDeclaration route = declared.get(like.text());
        if (route == null) {
            findings.unknownName(like.span(), "route", like.text(), declared.keySet());
            return ResolvedRoute.NONE;
        }
        ResolvedRoute known = resolved.get(like.text());
        if (known != null) {
            return known;
        }
        if (!path.add(like.text())) {
            findings.add(Diagnostic.error("like-ring", new Mark(like.span(),
                    "nothing is taken over from a ring: " + String.join(" like ", path) + " like " + like)));
            return ResolvedRoute.NONE;
        }
        ResolvedRoute base = route.head().like() == null ? null
                : taken(named(route.head().like(), path), route.head().like().span());
        ResolvedRoute result = over(base, route.items());
        resolved.put(like.text(), result);
        return result;
    }

    /**
     * A product's route from its own layer and those of the things it is like, the nearest first; null without any.
     *
     * @param damaged whether the product, or one it is like, could not be read whole: a route may be lost
     */
    ResolvedRoute of(List<WrittenTree.Layer> layers, boolean damaged) {
        if (layers.isEmpty()) {
            return null;
        }
        WrittenTree.Layer own = layers.get(0);
        Block.Item.Route route = own.route();
        ResolvedRoute base = null;
        if (route.like() != null) {
            base = taken(named(route.like(), findings), route.like().span());
        } else if (route.items().stream().noneMatch(RouteItem.Own.class::isInstance)) {
            base = of(layers.subList(1, layers.size()), damaged);
            if (base == null) {
                if (!damaged && !route.items().isEmpty()) {
                    nothing(route.items().get(0).span());
                }
                return null;
            }
            base = taken(base, layers.get(1).takenAt());
        }
        ResolvedRoute result = over(base, route.items());
        return own.takenAt() == null ? result : taken(result, own.takenAt());
    }

    private void nothing(Span change) {
        findings.error("nothing-taken-over", change, "there are no steps to change here: the route is like no other");
    }

    private static ResolvedRoute taken(ResolvedRoute base, Span at) {
        return new ResolvedRoute(takenSteps(base.steps(), at), base.loops(), base.parts().stream()
                .map(p -> new ResolvedRoute.Part(p.item(), takenSteps(p.steps(), at))).toList());
    }

    /** The routes of parts while a route is put together. */
    private static final class Parts {
        private final Map<String, RouteItem.Part> items = new LinkedHashMap<>();
        private final Map<String, List<ResolvedStep>> steps = new LinkedHashMap<>();

        private Parts(List<ResolvedRoute.Part> base) {
            base.forEach(this::put);
        }

        private void put(ResolvedRoute.Part part) {
            items.put(part.item().part().text(), part.item());
            steps.put(part.item().part().text(), new ArrayList<>(part.steps()));
        }

        /** The steps among which a number stands: those of a part's route, or else the route's own. */
        private List<ResolvedStep> home(List<ResolvedStep> own, Name number) {
            for (List<ResolvedStep> part : steps.values()) {
                if (own.stream().noneMatch(s -> is(s, number)) && part.stream().anyMatch(s -> is(s, number))) {
                    return part;
                }
            }
            return own;
        }

        private static boolean is(ResolvedStep step, Name number) {
            return step.step().number().text().equals(number.text());
        }

        private List<ResolvedRoute.Part> all() {
            return items.keySet().stream().map(p -> new ResolvedRoute.Part(items.get(p), steps.get(p))).toList();
        }
    }

    private static List<ResolvedStep> takenSteps(List<ResolvedStep> steps, Span at) {
        return steps.stream().map(s -> new ResolvedStep(s.step(), at, Set.of(), s.cells(), s.named())).toList();
    }

    private ResolvedRoute over(ResolvedRoute base, List<RouteItem> items) {
        List<ResolvedStep> steps = new ArrayList<>(base == null ? List.of() : base.steps());
        List<RouteItem.Rework> loops = new ArrayList<>(base == null ? List.of() : base.loops());
        Parts parts = new Parts(base == null ? List.of() : base.parts());
        for (RouteItem item : items) {
            if (item instanceof RouteItem.Own own) {
                if (base != null) {
                    findings.error("step-not-placed", own.step().number().span(),
                            "this route takes over another's steps: write add, change or omit before the step");
                }
                steps.add(new ResolvedStep(own.step(), null));
            } else if (item instanceof RouteItem.Rework rework) {
                loops.add(rework);
            } else if (item instanceof RouteItem.Part part) {
                parts.put(new ResolvedRoute.Part(part, takenSteps(named(part.like(), findings).steps(), part.like().span())));
            } else if (base == null) {
                nothing(item.span());
            } else if (item instanceof RouteItem.Add add) {
                insert(steps, add);
            } else if (item instanceof RouteItem.Omit omit) {
                List<ResolvedStep> home = parts.home(steps, omit.step().number());
                int index = find(home, omit.step().number(), omit.step().operation());
                if (index >= 0) {
                    home.remove(index);
                }
            } else if (item instanceof RouteItem.Change change) {
                List<ResolvedStep> home = parts.home(steps, change.step().number());
                int index = find(home, change.step().number(), change.step().operation());
                if (index >= 0) {
                    twice(change.step().block());
                    home.set(index, changed(home.get(index), change.step().number(), change.step().centre(), change.step().block(),
                            Set.of()));
                }
            } else if (item instanceof RouteItem.Cell cell) {
                List<ResolvedStep> home = parts.home(steps, cell.number());
                int index = find(home, cell.number(), null);
                if (index >= 0) {
                    Block block = new Block(List.of(entry(cell)), cell.span());
                    home.set(index, changed(home.get(index), cell.number(), null, block, Set.of(cell.value().span())));
                }
            }
        }
        return new ResolvedRoute(steps, loops, parts.all());
    }

    /** The cell's setting as an entry; where its path has two names as a measurement's, or as a station's. */
    private static Block.Item entry(RouteItem.Cell cell) {
        List<Name> names = cell.setting().names();
        Block.Item entry = new Block.Item.Entry(new org.ricasso.dsl.syntax.Path(List.of(names.get(names.size() - 1)),
                cell.setting().span()), cell.value(), cell.span());
        return names.size() == 1 ? entry
                : new Block.Item.Nested(names.get(0), new Block(List.of(entry), cell.span()), cell.span());
    }

    private int find(List<ResolvedStep> steps, Name number, Name operation) {
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i).step();
            if (!step.number().text().equals(number.text())) {
                continue;
            }
            if (operation == null || step.operation().text().equals(operation.text())) {
                return i;
            }
            String is = step.operation().text();
            findings.add(Diagnostic.error("step-guard", new Mark(operation.span(),
                    "step " + number + " is " + is + " here, not " + operation))
                    .and(new Mark(step.operation().span(), "the step"))
                    .because("the name guards the number: the route it is taken from may have been numbered anew")
                    .remedy(new Remedy("write " + is, List.of(new Edit(operation.span(), is)))));
            return -1;
        }
        List<String> known = steps.stream().map(s -> s.step().number().text()).toList();
        // a number that stands twice is reported, and may be meant for this one
        if (new HashSet<>(known).size() == known.size()) {
            findings.error("unknown-step", number.span(), "there is no step " + number + " to take over; there are "
                    + String.join(", ", known));
        }
        return -1;
    }

    private void insert(List<ResolvedStep> steps, RouteItem.Add add) {
        ResolvedStep step = new ResolvedStep(add.step(), null);
        int index = 0;
        while (index < steps.size() && steps.get(index).number() < step.number()) {
            index++;
        }
        if (index < steps.size() && steps.get(index).number() == step.number()) {
            findings.add(Diagnostic.error("step-number-twice", new Mark(add.step().number().span(),
                    "step " + add.step().number() + " stands already"))
                    .and(new Mark(steps.get(index).step().number().span(), "taken over from here")));
            return;
        }
        steps.add(index, step);
    }

    private ResolvedStep changed(ResolvedStep base, Name number, Name centre, Block with, Set<Span> cells) {
        Set<Span> own = new HashSet<>(base.own());
        Set<Span> all = new HashSet<>(base.cells());
        all.addAll(cells);
        Set<Span> named = new HashSet<>(base.named());
        named.add(number.span());
        Block block = new Block(merged(base.step().block().items(), with.items(), own), base.step().block().span());
        Step step = base.step();
        return new ResolvedStep(new Step(step.number(), step.operation(), centre == null ? step.centre() : centre, block,
                step.span()), base.takenAt(), own, all, named);
    }

    private List<Block.Item> merged(List<Block.Item> base, List<Block.Item> with, Set<Span> own) {
        List<Block.Item> result = new ArrayList<>(base);
        for (Block.Item item : with) {
            int index = indexOf(result, item);
            Block.Item merged = item;
            if (index >= 0 && item instanceof Block.Item.Nested nested) {
                merged = result.get(index) instanceof Block.Item.Nested earlier
                        ? new Block.Item.Nested(earlier.name(), new Block(merged(earlier.block().items(),
                                nested.block().items(), own), earlier.block().span()), earlier.span())
                        : stations(nested.block(), (Block.Item.Entry) result.get(index), own);
            } else {
                values(item, own);
            }
            if (index < 0) {
                result.add(merged);
            } else {
                result.set(index, merged);
            }
        }
        return result;
    }

    /** Reports what stands twice in a block: merged with what is taken over, the last would win silently. */
    private void twice(Block block) {
        List<Block.Item> items = block.items();
        for (int i = 0; i < items.size(); i++) {
            Block.Item item = items.get(i);
            items.subList(0, i).stream().filter(e -> e.getClass() == item.getClass() && name(e).equals(name(item))).findFirst()
                    .ifPresent(earlier -> findings.add(Diagnostic.error("declared-twice",
                            new Mark(named(item), name(item) + " stands twice")).and(new Mark(named(earlier), "first here"))));
            if (item instanceof Block.Item.Nested nested) {
                twice(nested.block());
            }
        }
    }

    private static Span named(Block.Item item) {
        return item instanceof Block.Item.Entry entry ? entry.path().span()
                : item instanceof Block.Item.Nested nested ? nested.name().span() : item.span();
    }

    /** What an item is merged with, or -1: an entry with its entry, a block with its block, or stations with their grid. */
    private int indexOf(List<Block.Item> items, Block.Item wanted) {
        boolean measures = wanted instanceof Block.Item.Nested block && block.block().items().stream()
                .anyMatch(i -> measuring.contains(name(i)));
        int result = -1;
        for (int i = 0; i < items.size(); i++) {
            Block.Item item = items.get(i);
            boolean fits = item.getClass() == wanted.getClass() || wanted instanceof Block.Item.Nested && !measures
                    && item instanceof Block.Item.Entry along && along.value() instanceof Grid;
            if (fits && name(item).equals(name(wanted)) && (result < 0 || item instanceof Block.Item.Entry)) {
                result = i;
            }
        }
        return result;
    }

    private Block.Item stations(Block written, Block.Item.Entry along, Set<Span> own) {
        Grid grid = (Grid) along.value();
        Grid whole = stations(written, grid, along.path().text());
        if (!whole.span().equals(grid.span())) {
            own.add(whole.span());
        }
        return new Block.Item.Entry(along.path(), whole, along.span());
    }

    private Grid stations(Block written, Grid grid, String what) {
        Stations stations = new Stations();
        for (Block.Item item : written.items()) {
            if (item instanceof Block.Item.Entry entry && entry.value() instanceof Expression value) {
                stations.put(entry.path().names().get(entry.path().names().size() - 1), value);
            } else {
                findings.error("wrong-type", item.span(), "a station of " + what + " has one value");
            }
        }
        return stations.over(grid, what, findings);
    }

    private static void values(Block.Item item, Set<Span> own) {
        if (item instanceof Block.Item.Entry entry) {
            own.add(entry.path().span());
            own.add(entry.value().span());
        } else if (item instanceof Block.Item.Nested nested) {
            own.add(nested.name().span());
            nested.block().items().forEach(i -> values(i, own));
        }
    }

    private static String name(Block.Item item) {
        if (item instanceof Block.Item.Entry entry) {
            return entry.path().text();
        }
        return item instanceof Block.Item.Nested nested ? nested.name().text() : "";
    }
}
