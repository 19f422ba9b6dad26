package org.ricasso.dsl.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.EntryValue;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.syntax.Name;

/** The entries of a thing or block by name, before they have types; inherited ones merged in by path. */
final class WrittenTree {
    private final Map<String, Leaf> leaves = new LinkedHashMap<>();
    private final Map<String, WrittenTree> blocks = new LinkedHashMap<>();
    private final Span span;
    private final List<Layer> routes = new ArrayList<>();

    private WrittenTree(Span span) {
        this.span = span;
    }

    /** A written entry: its value, the span of its name, and the {@code like} that takes it over, or null. */
    record Leaf(EntryValue value, Span name, Span inheritedAt) {

        /** The last name of its path. */
        private Name last() {
            String text = name.text();
            int start = name.start() + text.lastIndexOf('.') + 1;
            return new Name(text.substring(text.lastIndexOf('.') + 1).strip(), new Span(name.file(), start, name.end()));
        }
    }

    /** A route, or what a thing changes of one it takes over; {@code takenAt} is the {@code like} of a taker, or null. */
    record Layer(Block.Item.Route route, Span takenAt) {}

    static WrittenTree of(Block block, Span span, Findings findings) {
        WrittenTree tree = new WrittenTree(span);
        for (Block.Item item : block.items()) {
            if (item instanceof Block.Item.Entry entry) {
                WrittenTree at = tree;
                for (Name name : entry.path().names().subList(0, entry.path().names().size() - 1)) {
                    at = at.blocks.computeIfAbsent(name.text(), n -> new WrittenTree(name.span()));
                }
                Name last = entry.path().names().get(entry.path().names().size() - 1);
                Leaf leaf = new Leaf(entry.value(), entry.path().span(), null);
                Leaf earlier = at.leaves.putIfAbsent(last.text(), leaf);
                if (earlier != null) {
                    twice(findings, last, earlier.name());
                }
            } else if (item instanceof Block.Item.Nested nested) {
                WrittenTree inner = of(nested.block(), nested.name().span(), findings);
                WrittenTree earlier = tree.blocks.get(nested.name().text());
                if (earlier != null && !earlier.leaves.isEmpty()) {
                    twice(findings, nested.name(), earlier.span);
                }
                tree.blocks.put(nested.name().text(), earlier == null ? inner : inner.over(earlier, null, findings));
            } else if (item instanceof Block.Item.Route route) {
                if (!tree.routes.isEmpty()) {
                    findings.error("declared-twice", route.span(), "the route stands twice");
                }
                tree.routes.add(new Layer(route, null));
            }
        }
        return tree;
    }

    private static void twice(Findings findings, Name name, Span earlier) {
        findings.add(Diagnostic.error("declared-twice", new Mark(name.span(), name + " stands twice"))
                .and(new Mark(earlier, "first here")));
    }

    /** This tree with what it does not write taken from the parent. */
    WrittenTree over(WrittenTree parent, Span like, Findings findings) {
        WrittenTree result = new WrittenTree(span);
        parent.leaves.forEach((name, leaf) -> {
            WrittenTree stations = blocks.get(name);
            if (stations != null && leaf.value() instanceof Grid grid && stations.isExpressions()) {
                Stations other = new Stations();
                stations.leaves.values().forEach(l -> other.put(l.last(), (Expression) l.value()));
                Grid whole = other.over(grid, name, findings);
                result.leaves.put(name, new Leaf(whole, leaf.name(), whole.span().equals(grid.span()) ? like : null));
            } else if (!blocks.containsKey(name)) {
                result.leaves.put(name, like == null ? leaf : new Leaf(leaf.value(), leaf.name(), like));
            }
        });
        result.leaves.putAll(leaves);
        parent.blocks.forEach((name, block) -> {
            if (!leaves.containsKey(name)) {
                WrittenTree own = blocks.get(name);
                result.blocks.put(name, (own == null ? new WrittenTree(block.span) : own).over(block, like, findings));
            }
        });
        blocks.forEach((name, block) -> {
            if (!result.leaves.containsKey(name)) {
                result.blocks.putIfAbsent(name, block);
            }
        });
        result.routes.addAll(routes);
        parent.routes.forEach(layer -> result.routes.add(new Layer(layer.route(), like)));
        return result;
    }

    private boolean isExpressions() {
        return blocks.isEmpty() && leaves.values().stream().allMatch(l -> l.value() instanceof Expression);
    }

    Map<String, Leaf> leaves() {
        return leaves;
    }

    Map<String, WrittenTree> blocks() {
        return blocks;
    }

    Span span() {
        return span;
    }

    /** The own route, then those of the things it is like, the nearest first. */
    List<Layer> routes() {
        return routes;
    }
}
