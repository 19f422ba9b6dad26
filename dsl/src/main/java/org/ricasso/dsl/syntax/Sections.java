package org.ricasso.dsl.syntax;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.diagnostics.Diagnostic;

/** The sections met in one declaration: each may be written once. */
final class Sections {
    private final Spans spans;
    private final List<Diagnostic> findings;
    private final Map<String, Token> met = new HashMap<>();

    Sections(Spans spans, List<Diagnostic> findings) {
        this.spans = spans;
        this.findings = findings;
    }

    void once(Token section) {
        Token first = met.putIfAbsent(section.getText(), section);
        if (first != null) {
            findings.add(SyntaxFindings.sectionTwice(spans.of(section), spans.of(first)));
        }
    }
}
