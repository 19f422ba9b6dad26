package org.ricasso.plugin;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Severity;

/** How many findings there are of each severity. */
record Counts(long errors, long warnings, long notes) {

    static Counts of(List<Diagnostic> findings) {
        return new Counts(count(findings, Severity.ERROR), count(findings, Severity.WARNING),
                count(findings, Severity.NOTE));
    }

    private static long count(List<Diagnostic> findings, Severity severity) {
        return findings.stream().filter(d -> d.severity() == severity).count();
    }

    /** Such as {@code 2 errors and 1 warning}. */
    String words() {
        List<String> parts = new ArrayList<>();
        if (errors > 0) {
            parts.add(number(errors, "error"));
        }
        if (warnings > 0) {
            parts.add(number(warnings, "warning"));
        }
        if (notes > 0) {
            parts.add(number(notes, "note"));
        }
        if (parts.isEmpty()) {
            return "nothing found against them";
        }
        String last = parts.remove(parts.size() - 1);
        return parts.isEmpty() ? last : String.join(", ", parts) + " and " + last;
    }

    /** Such as {@code 1 text} or {@code 3 texts}. */
    static String number(long count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }
}
