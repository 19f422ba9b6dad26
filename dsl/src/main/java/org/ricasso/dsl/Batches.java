package org.ricasso.dsl;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Nearest;
import org.ricasso.dsl.source.SourceFile;

/** The texts of a house as groups that know nothing of each other: what all rest on, and products with what they are like. */
final class Batches {
    private final List<SourceFile> common = new ArrayList<>();
    private final List<SourceFile> files = new ArrayList<>();
    private final List<Outline> outlines = new ArrayList<>();
    private final int[] group;

    Batches(List<SourceFile> inOrder, String productKind) {
        for (SourceFile file : inOrder) {
            Outline outline = file.shipped() ? null : Outline.of(file, productKind);
            if (outline != null && outline.isPlain()) {
                files.add(file);
                outlines.add(outline);
            } else {
                common.add(file);
            }
        }
        group = new int[files.size()];
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
        }
        join();
    }

    /** Texts that any other may rest on. */
    List<SourceFile> common() {
        return common;
    }

    private void join() {
        Map<String, Integer> declared = new HashMap<>();
        for (int i = 0; i < group.length; i++) {
            for (String product : outlines.get(i).products()) {
                // a name that stands twice is a finding on both
                Integer other = declared.putIfAbsent(product, i);
                if (other != null) {
                    join(i, other);
                }
            }
        }
        for (int i = 0; i < group.length; i++) {
            for (String like : outlines.get(i).likes()) {
                Integer other = declared.get(like);
                if (other != null) {
                    join(i, other);
                } else {
                    // a finding that offers the names near it
                    for (String near : Nearest.to(like, new TreeSet<>(declared.keySet()))) {
                        join(i, declared.get(near));
                    }
                }
            }
        }
    }

    private void join(int a, int b) {
        int first = Math.min(root(a), root(b));
        group[Math.max(root(a), root(b))] = first;
    }

    private int root(int i) {
        int at = i;
        while (group[at] != at) {
            group[at] = group[group[at]];
            at = group[at];
        }
        return at;
    }

    /** Whole groups in the order of the texts, as many together as hold about this many products. */
    List<List<SourceFile>> of(int products) {
        List<List<SourceFile>> result = new ArrayList<>();
        List<SourceFile> batch = new ArrayList<>();
        int weight = 0;
        Map<Integer, List<Integer>> members = new HashMap<>();
        for (int i = 0; i < group.length; i++) {
            members.computeIfAbsent(root(i), r -> new ArrayList<>()).add(i);
        }
        for (int i = 0; i < group.length; i++) {
            if (root(i) != i) {
                continue;
            }
            for (int member : members.get(i)) {
                batch.add(files.get(member));
                weight += outlines.get(member).weight();
            }
            if (weight >= products) {
                result.add(batch);
                batch = new ArrayList<>();
                weight = 0;
            }
        }
        if (!batch.isEmpty()) {
            result.add(batch);
        }
        return result;
    }

    /** All texts in the groups of these, in the order of the texts; those that all rest on left out. */
    List<SourceFile> groupsOf(Set<SourceFile> some) {
        Map<SourceFile, Integer> places = new IdentityHashMap<>();
        for (int i = 0; i < group.length; i++) {
            places.put(files.get(i), i);
        }
        Set<Integer> roots = new TreeSet<>();
        some.stream().filter(places::containsKey).forEach(file -> roots.add(root(places.get(file))));
        List<SourceFile> result = new ArrayList<>();
        for (int i = 0; i < group.length; i++) {
            if (roots.contains(root(i))) {
                result.add(files.get(i));
            }
        }
        return result;
    }
}
