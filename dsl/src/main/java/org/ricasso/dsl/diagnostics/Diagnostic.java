package org.ricasso.dsl.diagnostics;

import java.util.Comparator;
import java.util.List;

/**
 * A finding, as data: the same one goes whole to the log, the reports and the pages.
 *
 * @param name its stable, readable name, such as {@code unknown-name} or a rule's name; never reused
 * @param severity how grave it is
 * @param primary the place to look at first
 * @param others the other places involved, in the order in which they matter
 * @param because reasons: what it does to the knife, facts behind it
 * @param also further findings on the same value
 * @param remedies what to do; a remedy with edits has been tried
 * @param sources where the knowledge comes from
 */
public record Diagnostic(String name, Severity severity, Mark primary, List<Mark> others, List<String> because,
        List<String> also, List<Remedy> remedies, List<String> sources) {

    /** By place, then by name: the one order in which diagnostics are shown. */
    public static final Comparator<Diagnostic> ORDER = Comparator
            .comparing((Diagnostic d) -> d.primary().span())
            .thenComparing(Diagnostic::name)
            .thenComparing(d -> d.primary().text());

    public Diagnostic {
        others = List.copyOf(others);
        because = List.copyOf(because);
        also = List.copyOf(also);
        remedies = List.copyOf(remedies);
        sources = List.copyOf(sources);
    }

    public static Diagnostic error(String name, Mark primary) {
        return new Diagnostic(name, Severity.ERROR, primary, List.of(), List.of(), List.of(), List.of(), List.of());
    }

    public static Diagnostic warning(String name, Mark primary) {
        return new Diagnostic(name, Severity.WARNING, primary, List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** The same with another severity. */
    public Diagnostic as(Severity other) {
        return new Diagnostic(name, other, primary, others, because, also, remedies, sources);
    }

    public Diagnostic and(Mark other) {
        return new Diagnostic(name, severity, primary, append(others, other), because, also, remedies, sources);
    }

    public Diagnostic because(String reason) {
        return new Diagnostic(name, severity, primary, others, append(because, reason), also, remedies, sources);
    }

    public Diagnostic also(String finding) {
        return new Diagnostic(name, severity, primary, others, because, append(also, finding), remedies, sources);
    }

    public Diagnostic remedy(Remedy remedy) {
        return new Diagnostic(name, severity, primary, others, because, also, append(remedies, remedy), sources);
    }

    public Diagnostic source(String source) {
        return new Diagnostic(name, severity, primary, others, because, also, remedies, append(sources, source));
    }

    private static <T> List<T> append(List<T> list, T element) {
        List<T> result = new java.util.ArrayList<>(list);
        result.add(element);
        return result;
    }
}
