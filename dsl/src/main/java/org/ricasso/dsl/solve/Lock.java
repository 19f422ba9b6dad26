package org.ricasso.dsl.solve;

import java.util.Collection;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/**
 * What was solved, kept in a file beside the texts and in version control: one entry a line, sorted, so that two branches
 * that solve different products merge. A check only reads it.
 *
 * @param lines the entries with their places, in their order
 * @param file the file, or null where there is none
 */
public record Lock(SortedMap<LockEntry.Key, Line> lines, SourceFile file) {
    /** The file's name, in the folder of the texts. */
    public static final String NAME = "solved.lock";
    /** What to do about whatever stands against the lock. */
    public static final Remedy REMEDY = new Remedy("write the lock anew: mvn ricasso:solve", java.util.List.of());
    private static final String COMMENT = "//";
    private static final String HEAD = COMMENT + " Settings that ricasso:solve found and ricasso:check reads. Not to be"
            + " written by hand: change the texts and solve again.\n";

    public Lock {
        lines = Collections.unmodifiableSortedMap(new TreeMap<>(lines));
    }

    /** An entry and the line that holds it. */
    public record Line(LockEntry entry, Span span) {
        /** Where the line writes the value. */
        public Span value() {
            int start = span.start() + span.text().indexOf(" = ") + 3;
            return new Span(span.file(), start, start + entry.value().length());
        }
    }

    /** Reads a lock; what cannot be read is a finding, and the rest counts. {@code null} is an empty one. */
    public static Lock read(SourceFile file, Findings findings) {
        SortedMap<LockEntry.Key, Line> lines = new TreeMap<>();
        for (int number = 1; file != null && number <= file.lineCount(); number++) {
            String text = file.lineText(number);
            if (text.isBlank() || text.startsWith(COMMENT)) {
                continue;
            }
            Span span = new Span(file, file.lineStart(number), file.lineStart(number) + text.length());
            LockEntry entry = LockEntry.read(text);
            if (entry == null) {
                findings.add(Diagnostic.error("lock-line", new Mark(span, "this line of the lock cannot be read"))
                        .because("a line reads `product / step operation / setting = value for property limit, leaves aim  #fingerprint`")
                        .remedy(REMEDY));
                continue;
            }
            Line first = lines.putIfAbsent(entry.key(), new Line(entry, span));
            if (first != null) {
                findings.add(Diagnostic.error("lock-twice", new Mark(span, "the lock holds " + entry.key() + " twice"))
                        .and(new Mark(first.span(), "first here")).remedy(REMEDY));
            }
        }
        return new Lock(lines, file);
    }

    /** The entry of a key, or null. */
    public LockEntry entry(LockEntry.Key key) {
        Line line = lines.get(key);
        return line == null ? null : line.entry();
    }

    /** A lock's whole text with these entries, LF at each line's end; empty without any. */
    public static String text(Collection<LockEntry> entries) {
        if (entries.isEmpty()) {
            return "";
        }
        StringBuilder text = new StringBuilder(HEAD);
        entries.stream().sorted(java.util.Comparator.comparing(LockEntry::key)).forEach(e -> text.append(e.line()).append('\n'));
        return text.toString();
    }
}
