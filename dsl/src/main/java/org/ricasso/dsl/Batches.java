package org.ricasso.dsl;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
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
        Map<SourceFile, Outline> own = new IdentityHashMap<>();
        inOrder.stream().filter(file -> !file.shipped()).forEach(file -> own.put(file, Outline.of(file, productKind)));
        Set<SourceFile> restedOn = restedOn(inOrder, own);
        for (SourceFile file : inOrder) {
            if (restedOn.contains(file)) {
                common.add(file);
            } else {
                files.add(file);
                outlines.add(own.get(file));
            }
        }
        group = new int[files.size()];
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
        }
        join();
    }

    /** Texts that hold more than products, and those with products that such a text speaks of. */
    private static Set<SourceFile> restedOn(List<SourceFile> inOrder, Map<SourceFile, Outline> own) {
        Set<SourceFile> result = Collections.newSetFromMap(new IdentityHashMap<>());
        Map<String, List<SourceFile>> declared = new TreeMap<>();
        own.forEach((file, outline) -> outline.products()
                .forEach(name -> declared.computeIfAbsent(name, n -> new ArrayList<>()).add(file)));
        Deque<SourceFile> open = new ArrayDeque<>();
        inOrder.stream().filter(file -> file.shipped() || !own.get(file).isPlain()).forEach(open::add);
        while (!open.isEmpty()) {
            SourceFile file = open.remove();
            if (!result.add(file) || file.shipped()) {
                continue;
            }
            Set<String> named = new TreeSet<>(own.get(file).products());
            for (String like : own.get(file).likes()) {
                named.addAll(declared.containsKey(like) ? Set.of(like) : Nearest.to(like, declared.keySet()));
            }
            named.forEach(name -> open.addAll(declared.getOrDefault(name, List.of())));
        }
        return result;
    }

    /** Texts that any other may rest on. */
    List<SourceFile> common() {
        return common;
    }

    /** The names of the products that the other texts declare, with their text. */
    Map<String, SourceFile> products() {
        Map<String, SourceFile> result = new TreeMap<>();
        for (int i = 0; i < group.length; i++) {
            for (String product : outlines.get(i).products()) {
                result.putIfAbsent(product, files.get(i));
            }
        }
        return result;
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
