package org.ricasso.dsl.syntax;

import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.source.Span;

final class SyntaxFindings {
    private SyntaxFindings() {}

    static Diagnostic holeNotClosed(Span span) {
        return Diagnostic.error("hole-not-closed", new Mark(span, "this `{` has no `}` in its text"))
                .remedy(new Remedy("close it with `}`, or write `{{` for a brace", List.of()));
    }

    static Diagnostic unknownEscape(Span span) {
        return Diagnostic.error("unknown-escape", new Mark(span, "`\\` stands before `\"` or `\\` only"));
    }

    static Diagnostic stepNumberNotWhole(Name number) {
        return Diagnostic.error("step-number", new Mark(number.span(), "a step's number is a whole number without a sign"));
    }

    static Diagnostic rowOfOtherLength(Span row, int cells, Span head, int columns) {
        return Diagnostic.error("row-length", new Mark(row, "this row has " + cells + " cells"))
                .and(new Mark(head, "the head has " + columns));
    }

    static Diagnostic sectionTwice(Span second, Span first) {
        return Diagnostic.error("section-twice", new Mark(second, "this section is written twice"))
                .and(new Mark(first, "first here"));
    }

    static Diagnostic gridNotHere(Name name) {
        return Diagnostic.error("grid-not-here", new Mark(name.span(), "a table has rows in `rows` alone"));
    }

    static Diagnostic notRead(Span span) {
        return Diagnostic.error("not-expected", new Mark(span, "this is not expected here"));
    }

    static Diagnostic tooDeep(Span span, int limit) {
        return Diagnostic.error("nested-too-deep", new Mark(span, "brackets and operators hang deeper than " + limit
                + " into each other here"));
    }
}
