package org.ricasso.dsl.syntax;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/**
 * Makes braces match where they do not, guided by indentation: a block ends where a line is indented no deeper than
 * its head. Each damaged place is reported once; lines reported here need no second finding.
 */
final class BraceMender {
    private record Open(int indent, CommonToken brace) {}

    private final Spans spans;
    private final List<Diagnostic> findings;
    private final List<CommonToken> out = new ArrayList<>();
    private final Deque<Open> open = new ArrayDeque<>();
    private final BitSet reported = new BitSet();
    /** Whether a row has been left out: its grid goes with it. */
    private boolean dropping;

    BraceMender(SourceFile file, List<Diagnostic> findings) {
        this.spans = new Spans(file);
        this.findings = findings;
    }

    /** Numbers of the lines that have been reported. */
    BitSet reported() {
        return reported;
    }

    /** The raw tokens with braces that match. */
    List<CommonToken> mend(List<CommonToken> raw) {
        List<Row> rows = Row.rows(spans.file(), raw);
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            dropping &= row.tokens().get(0).getType() == SpecLexer.BAR;
            if (!dropping) {
                mend(row, i + 1 < rows.size() ? rows.get(i + 1) : null);
            }
            out.addAll(row.ends());
        }
        if (!open.isEmpty()) {
            closeAll(-1, null, raw.get(raw.size() - 1));
        }
        return out;
    }

    private void mend(Row row, Row next) {
        List<CommonToken> tokens = row.tokens();
        if (tokens.size() == 2 && tokens.get(0).getType() == SpecLexer.LBRACE) {
            report(row, SyntaxFindings.braceStray(spans.of(tokens.get(0))));
            tokens = tokens.subList(1, 2);
        }
        boolean alone = tokens.stream().allMatch(t -> t.getType() == SpecLexer.RBRACE);
        int lead = 0;
        while (lead < tokens.size() && tokens.get(lead).getType() == SpecLexer.RBRACE) {
            CommonToken brace = tokens.get(lead);
            if (close(row, brace, alone && lead == 0)) {
                out.add(brace);
            } else {
                report(row, SyntaxFindings.braceStray(spans.of(brace)));
            }
            lead++;
        }
        if (lead == tokens.size()) {
            return;
        }
        if (lead == 0 && !open.isEmpty() && row.indent() <= open.peek().indent()) {
            if (tokens.size() == 1 && row.indent() == open.peek().indent()) {
                CommonToken instead = tokens.get(0);
                report(row, SyntaxFindings.braceReplaced(spans.of(instead), "}", spans.of(open.pop().brace())));
                out.add(LineFilter.insert(instead, SpecLexer.RBRACE, instead.getStartIndex()));
                return;
            }
            closeAll(row.indent() - 1, row, tokens.get(0));
        }
        List<CommonToken> rest = new ArrayList<>(tokens.subList(lead, tokens.size()));
        dropStrayOfPair(row, rest);
        CommonToken closing = closeAtRowsEnd(row, rest, next);
        middle(row, rest, closing == null ? next : null);
        if (closing != null) {
            out.add(closing);
            open.pop();
        }
    }

    /** Handles what stands between a row's leading closing braces and its end. */
    private void middle(Row row, List<CommonToken> tokens, Row next) {
        boolean deeper = next != null && next.indent() > row.indent();
        List<Integer> opens = new ArrayList<>();
        List<Integer> closes = new ArrayList<>();
        Row.unmatched(tokens, opens, closes);
        int last = tokens.size() - 1;
        boolean opening = !opens.isEmpty() && opens.get(opens.size() - 1) == last;
        if (closes.size() == 1 && closes.get(0) == last && deeper && opens.isEmpty()) {
            CommonToken brace = tokens.remove(last);
            report(row, SyntaxFindings.braceReplaced(spans.of(brace), "{", null));
            open(row, tokens, LineFilter.insert(brace, SpecLexer.LBRACE, brace.getStartIndex()));
            return;
        }
        if (!closes.isEmpty()) {
            report(row, SyntaxFindings.braceStray(spans.of(tokens.get(closes.get(0)))));
            dropping = true;
            if (opening) {
                tokens.removeIf(t -> t.getType() == SpecLexer.RBRACE || t.getType() == SpecLexer.LBRACE);
                open(row, tokens, row.tokens().get(row.tokens().size() - 1));
            }
            return;
        }
        if (opening && opens.size() == 2 && !deeper) {
            CommonToken brace = tokens.remove(last);
            report(row, SyntaxFindings.braceReplaced(spans.of(brace), "}", spans.of(tokens.get(opens.get(0)))));
            tokens.add(LineFilter.insert(brace, SpecLexer.RBRACE, brace.getStartIndex()));
            out.addAll(tokens);
            return;
        }
        if (opening && !deeper && !Row.canBeHead(tokens)) {
            dropStrayOpens(row, tokens, opens);
            out.addAll(tokens);
        } else if (opening) {
            opens.remove(opens.size() - 1);
            CommonToken brace = tokens.remove(last);
            dropStrayOpens(row, tokens, opens);
            open(row, tokens, brace);
        } else if (!opens.isEmpty() && deeper && opens.get(0) > 0 && Row.canBeHead(tokens.subList(0, opens.get(0)))) {
            CommonToken brace = tokens.get(opens.remove(0));
            dropStrayOpens(row, tokens, opens);
            out.addAll(tokens);
            open.push(new Open(row.indent(), brace));
        } else if (!opens.isEmpty()) {
            closeOnLine(row, tokens, opens);
            out.addAll(tokens);
        } else if (deeper && next.tokens().get(0).getType() != SpecLexer.BAR
                && Row.canBeHead(tokens.subList(0, last))) {
            openAtRowsEnd(row, tokens);
        } else {
            out.addAll(tokens);
        }
    }

    /** Braces with nothing between them in the midst of a line: one of them is astray, the head says which. */
    private void dropStrayOfPair(Row row, List<CommonToken> tokens) {
        for (int i = 0; i + 1 < tokens.size(); i++) {
            if (tokens.get(i).getType() == SpecLexer.LBRACE && tokens.get(i + 1).getType() == SpecLexer.RBRACE) {
                boolean head = i > 0 && Row.canBeHead(tokens.subList(0, i));
                if (!head || i + 2 < tokens.size()) {
                    CommonToken stray = tokens.remove(head ? i + 1 : i);
                    report(row, SyntaxFindings.braceStray(spans.of(stray)));
                }
                return;
            }
        }
    }

    /** Takes the brace off a row that closes the block around it at its end, as the next row's indentation says. */
    private CommonToken closeAtRowsEnd(Row row, List<CommonToken> tokens, Row next) {
        List<Integer> closes = new ArrayList<>();
        Row.unmatched(tokens, new ArrayList<>(), closes);
        int last = tokens.size() - 1;
        if (last <= 0 || closes.isEmpty() || closes.get(closes.size() - 1) != last || open.isEmpty()) {
            return null;
        }
        int indent = open.peek().indent();
        boolean blockEnds = next == null || next.indent() <= indent
                && !(next.indent() == indent && next.tokens().get(0).getType() == SpecLexer.RBRACE);
        return indent < row.indent() && blockEnds ? tokens.remove(last) : null;
    }

    /** A block on one line that lost its closing brace gets it back; another opening brace is taken away. */
    private void closeOnLine(Row row, List<CommonToken> tokens, List<Integer> opens) {
        if (opens.size() == 1 && Row.opensEntries(tokens, opens.get(0))) {
            CommonToken end = tokens.get(tokens.size() - 1);
            report(row, SyntaxFindings.braceNotClosed(spans.of(tokens.get(opens.get(0))), List.of(spans.behind(end))));
            tokens.add(LineFilter.insert(end, SpecLexer.RBRACE, end.getStopIndex() + 1));
        } else {
            dropStrayOpens(row, tokens, opens);
        }
    }

    private void dropStrayOpens(Row row, List<CommonToken> tokens, List<Integer> opens) {
        for (int i = opens.size() - 1; i >= 0; i--) {
            CommonToken brace = tokens.remove((int) opens.get(i));
            report(row, SyntaxFindings.braceStray(spans.of(brace)));
        }
    }

    /** A head that lost its opening brace gets it back, in place of a sign that no head ends with. */
    private void openAtRowsEnd(Row row, List<CommonToken> tokens) {
        CommonToken end = tokens.get(tokens.size() - 1);
        if (tokens.size() > 1 && !Row.canEndHead(end)) {
            report(row, SyntaxFindings.braceReplaced(spans.of(end), "{", null));
            tokens.remove(end);
            open(row, tokens, LineFilter.insert(end, SpecLexer.LBRACE, end.getStartIndex()));
        } else {
            report(row, SyntaxFindings.braceMissingAtLineEnd(spans.behind(end)));
            open(row, tokens, LineFilter.insert(end, SpecLexer.LBRACE, end.getStopIndex() + 1));
        }
    }

    private void open(Row row, List<CommonToken> head, CommonToken brace) {
        out.addAll(head);
        out.add(brace);
        open.push(new Open(row.indent(), brace));
    }

    /** Closes the block that a brace at the row's indentation belongs to; false where it belongs to none. */
    private boolean close(Row row, CommonToken brace, boolean alone) {
        if (open.stream().anyMatch(o -> o.indent() == row.indent())) {
            closeAll(row.indent(), row, brace);
            open.pop();
            return true;
        }
        if (alone && !open.isEmpty()) {
            open.pop();
            return true;
        }
        return false;
    }

    /** Closes blocks whose heads are indented deeper; one finding for all. */
    private void closeAll(int indent, Row row, CommonToken before) {
        List<CommonToken> braces = new ArrayList<>();
        while (!open.isEmpty() && open.peek().indent() > indent) {
            braces.add(open.pop().brace());
            int offset = row == null ? before.getStopIndex() + 1 : before.getStartIndex();
            out.add(LineFilter.insert(before, SpecLexer.RBRACE, offset));
            out.add(LineFilter.insert(before, SpecLexer.NL, offset));
        }
        if (braces.isEmpty()) {
            return;
        }
        List<Span> where = new ArrayList<>();
        if (row != null) {
            where.add(new Span(spans.file(), before.getStartIndex(), before.getStartIndex() + 1));
        }
        braces.stream().skip(1).map(spans::of).forEach(where::add);
        Span brace = spans.of(braces.get(0));
        if (!reported.get(brace.line())) {
            findings.add(SyntaxFindings.blockNotClosed(brace, row != null, where));
            reported.set(brace.line());
        }
    }

    private void report(Row row, Diagnostic finding) {
        int line = spans.of(row.tokens().get(0)).line();
        if (!reported.get(line)) {
            findings.add(finding);
        }
        reported.set(line, spans.of(row.tokens().get(row.tokens().size() - 1)).line() + 1);
    }
}
