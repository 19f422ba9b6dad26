package org.ricasso.dsl.syntax;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/** The blocks that are open where {@link BraceMender} has come to, and the tokens that it has written. */
final class OpenBlocks {
    private record Open(int indent, CommonToken brace) {}

    private final Spans spans;
    private final List<Diagnostic> findings;
    private final List<CommonToken> out = new ArrayList<>();
    private final Deque<Open> open = new ArrayDeque<>();
    private final BitSet reported = new BitSet();

    OpenBlocks(Spans spans, List<Diagnostic> findings) {
        this.spans = spans;
        this.findings = findings;
    }

    BitSet reported() {
        return reported;
    }

    /** The indentation of the innermost block's head, or -1 where none is open. */
    int indent() {
        return open.isEmpty() ? -1 : open.peek().indent();
    }

    /** The brace that opened the innermost block. */
    CommonToken innermost() {
        return open.peek().brace();
    }

    void write(List<CommonToken> tokens) {
        out.addAll(tokens);
    }

    /** Writes a head and its brace. */
    void open(Row row, List<CommonToken> head, CommonToken brace) {
        out.addAll(head);
        out.add(brace);
        opened(row, brace);
    }

    /** Notes a brace that has been written. */
    void opened(Row row, CommonToken brace) {
        open.push(new Open(row.indent(), brace));
    }

    /** Closes what is open at the end of the text; all that has been written. */
    List<CommonToken> end(CommonToken last) {
        closeDeeperThan(-1, last, true);
        return out;
    }

    /** Closes the block that a brace at the row's indentation belongs to; false where it belongs to none. */
    boolean close(Row row, CommonToken brace, boolean alone) {
        if (open.stream().anyMatch(o -> o.indent() == row.indent())) {
            closeDeeperThan(row.indent(), brace);
            closeInnermost(brace);
            return true;
        }
        if (alone && !open.isEmpty()) {
            closeInnermost(brace);
            return true;
        }
        return false;
    }

    /** Closes the innermost block with a brace. */
    void closeInnermost(CommonToken brace) {
        open.pop();
        out.add(brace);
    }

    /** Closes blocks whose heads are indented deeper, before a token; one finding for all. */
    void closeDeeperThan(int indent, CommonToken before) {
        closeDeeperThan(indent, before, false);
    }

    private void closeDeeperThan(int indent, CommonToken before, boolean atEnd) {
        List<CommonToken> braces = new ArrayList<>();
        while (!open.isEmpty() && open.peek().indent() > indent) {
            braces.add(open.pop().brace());
            int offset = atEnd ? before.getStopIndex() + 1 : before.getStartIndex();
            out.add(LineFilter.insert(before, SpecLexer.RBRACE, offset));
            out.add(LineFilter.insert(before, SpecLexer.NL, offset));
        }
        if (braces.isEmpty()) {
            return;
        }
        List<Span> where = new ArrayList<>();
        if (!atEnd) {
            where.add(new Span(spans.file(), before.getStartIndex(), before.getStartIndex() + 1));
        }
        braces.stream().skip(1).map(spans::of).forEach(where::add);
        Span brace = spans.of(braces.get(0));
        if (!reported.get(brace.line())) {
            findings.add(SyntaxFindings.blockNotClosed(brace, !atEnd, where));
            reported.set(brace.line());
        }
    }

    /** Adds a finding on a row, the first on its lines. */
    void report(Row row, Diagnostic finding) {
        int line = spans.of(row.tokens().get(0)).line();
        if (!reported.get(line)) {
            findings.add(finding);
        }
        reported.set(line, spans.of(row.tokens().get(row.tokens().size() - 1)).line() + 1);
    }
}
