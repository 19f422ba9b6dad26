package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.solve.LockEntry;
import org.ricasso.dsl.source.SourceFile;

/**
 * What solving makes of the lock. An entry that cannot be solved now stays as it was.
 *
 * @param text the lock's whole text as it is to be; empty where it holds nothing
 * @param changes entries that are new, different or no longer asked for, in the lock's order
 * @param same how many were solved and are as they were
 * @param open settings that could not be solved now
 * @param lost lines that could not be read and are left out
 * @param findings errors of the texts, and why what could not be solved could not, in {@link Diagnostic#ORDER}
 * @param unknown names or numbers of products that were asked for and are none of the house
 */
public record Solved(String text, List<Change> changes, int same, List<LockEntry.Key> open, List<Diagnostic> lost,
        List<Diagnostic> findings, List<String> unknown) {
    public Solved {
        changes = List.copyOf(changes);
        open = List.copyOf(open);
        lost = List.copyOf(lost);
        findings = List.copyOf(findings);
        unknown = List.copyOf(unknown);
    }

    /** Whether the lock can be written: a line that cannot be read is left out only if all is solved anew. */
    public boolean isWritable() {
        return unknown.isEmpty() && (lost.isEmpty() || open.isEmpty() && findings.isEmpty());
    }

    /** An entry as it was and as it is to be; {@code was} is null for a new one, {@code is} for one that is left out. */
    public record Change(LockEntry was, LockEntry is) {}

    /**
     * Solves a house.
     *
     * @param file the lock as it is, or null
     * @param only names or numbers of the products to solve for; empty for all
     * @param loading what was found while the house was loaded
     */
    public static Solved of(House house, SourceFile file, Set<String> only, List<Diagnostic> loading) {
        List<Diagnostic> errors = loading.stream().filter(d -> d.severity() == Severity.ERROR).toList();
        Findings lost = new Findings();
        Lock lock = Lock.read(file, lost);
        Map<LockEntry.Key, LockEntry> entries = new TreeMap<>();
        lock.lines().forEach((key, line) -> entries.put(key, line.entry()));
        if (errors.isEmpty()) {
            // only of a house that was read whole is it known that nothing asks for an entry any more
            entries.keySet().retainAll(LockedHouse.keys(house));
        }
        Findings findings = new Findings();
        findings.addAll(errors);
        List<LockEntry.Key> open = new ArrayList<>();
        int same = 0;
        for (Solution solution : LockedHouse.solutions(house, only)) {
            if (solution.entry() == null) {
                open.add(solution.key());
                if (solution.failure() != null) {
                    findings.add(solution.failure());
                }
            } else if (solution.entry().equals(entries.put(solution.key(), solution.entry()))) {
                same++;
            }
        }
        List<Diagnostic> found = new ArrayList<>(findings.all());
        found.sort(Diagnostic.ORDER);
        return new Solved(Lock.text(entries.values()), changes(lock, entries), same, open, lost.all(), found,
                only.stream().sorted().filter(one -> Walked.product(house, one) == null).toList());
    }

    private static List<Change> changes(Lock lock, Map<LockEntry.Key, LockEntry> entries) {
        Map<LockEntry.Key, Change> changes = new TreeMap<>();
        lock.lines().forEach((key, line) -> changes.put(key, new Change(line.entry(), entries.get(key))));
        entries.forEach((key, entry) -> changes.put(key, new Change(lock.entry(key), entry)));
        return changes.values().stream().filter(c -> c.was() == null || !c.was().equals(c.is())).toList();
    }
}
