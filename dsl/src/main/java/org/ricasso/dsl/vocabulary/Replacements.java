package org.ricasso.dsl.vocabulary;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.source.Origin;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Head;
import org.ricasso.dsl.syntax.Name;

/**
 * Which declarations of one kind take the place of others: a library's of what is shipped, the works' of either. Libraries
 * stand in no order, so that two of them cannot replace the same.
 */
final class Replacements {
    private final String what;
    private final Findings findings;
    /** Those that the libraries and those that the works replaced, by name. */
    private final Map<String, Span> libraries = new TreeMap<>();
    private final Map<String, Span> works = new TreeMap<>();

    Replacements(String what, Findings findings) {
        this.what = what;
        this.findings = findings;
    }

    /** A whole declaration takes the place of one of the same name that is there. */
    boolean mayReplace(Head head, Set<String> known) {
        String name = head.replaces().text();
        if (!known.contains(name)) {
            findings.unknownName(head.replaces().span(), what, name, known);
            return false;
        }
        if (!head.name().text().equals(name)) {
            findings.add(Diagnostic.error("replaces-other-name", new Mark(head.replaces().span(), what + " " + name
                    + " is replaced under its own name: write " + what + " " + name + " replaces " + name)));
            return false;
        }
        Span span = head.name().span();
        Span earlier = (span.file().shipped() ? libraries : works).putIfAbsent(name, span);
        if (earlier != null) {
            findings.add(Diagnostic.error("declared-twice", new Mark(span, what + " " + name + " is replaced twice"))
                    .and(new Mark(earlier, "first here")));
            return false;
        }
        return true;
    }

    /** A second declaration of a name; the works may put its own in place of what it was given. */
    static void twice(String what, Name name, Name earlier, Findings findings) {
        Diagnostic diagnostic = Diagnostic.error("declared-twice",
                new Mark(name.span(), what + " " + name.text() + " is declared twice")).and(new Mark(earlier.span(), "first here"));
        if (Origin.of(name.span()).equals(Origin.of(earlier.span()))) {
            findings.add(diagnostic);
            return;
        }
        findings.add(diagnostic.because("one is " + Origin.of(name.span()) + ", the other " + Origin.of(earlier.span()))
                .remedy(new Remedy("if this one is to stand in place of the other, write `" + name.text() + " replaces "
                        + name.text() + "`; else give it another name", List.of())));
    }
}
