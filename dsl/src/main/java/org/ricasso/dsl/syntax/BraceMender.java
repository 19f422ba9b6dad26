package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/**
 * Makes braces match where they do not, guided by indentation: a block ends where a line is indented no deeper than
 * its head. Each damaged place is reported once; lines reported here need no second finding.
 */
final class BraceMender {
    private final Spans spans;
    private final OpenBlocks blocks;
    /** Whether a row has been left out: its grid goes with it. */
    private boolean dropping;

    BraceMender(SourceFile file, List<Diagnostic> findings) {
        this.spans = new Spans(file);
        this.blocks = new OpenBlocks(spans, findings);
    }

    /** Numbers of the lines that have been reported. */
    BitSet reported() {
        return blocks.reported();
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
            blocks.write(row.ends());
        }
        return blocks.end(raw.get(raw.size() - 1));
    }

    private void mend(Row row, Row next) {
        List<CommonToken> tokens = row.tokens();
        if (tokens.size() == 2 && tokens.get(0).getType() == SpecLexer.LBRACE) {
            blocks.report(row, SyntaxFindings.braceStray(spans.of(tokens.get(0))));
            tokens = tokens.subList(1, 2);
        }
        boolean alone = tokens.stream().allMatch(t -> t.getType() == SpecLexer.RBRACE);
        int lead = 0;
        while (lead < tokens.size() && tokens.get(lead).getType() == SpecLexer.RBRACE) {
            CommonToken brace = tokens.get(lead);
            if (!blocks.close(row, brace, alone && lead == 0)) {
                blocks.report(row, SyntaxFindings.braceStray(spans.of(brace)));
            }
            lead++;
        }
        if (lead == tokens.size()) {
            return;
        }
        if (lead == 0 && row.indent() <= blocks.indent()) {
            if (tokens.size() == 1 && row.indent() == blocks.indent()) {
                CommonToken instead = tokens.get(0);
                blocks.report(row, SyntaxFindings.braceReplaced(spans.of(instead), "}", spans.of(blocks.innermost())));
                blocks.closeInnermost(LineFilter.insert(instead, SpecLexer.RBRACE, instead.getStartIndex()));
                return;
            }
            blocks.closeDeeperThan(row.indent() - 1, tokens.get(0));
        }
        List<CommonToken> rest = new ArrayList<>(tokens.subList(lead, tokens.size()));
        dropStrayOfPair(row, rest, next != null && next.indent() > row.indent());
        CommonToken closing = closeAtRowsEnd(row, rest, next);
        middle(row, rest, closing == null ? next : null);
        if (closing != null) {
            blocks.closeInnermost(closing);
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
            blocks.report(row, SyntaxFindings.braceReplaced(spans.of(brace), "{", null));
            blocks.open(row, tokens, LineFilter.insert(brace, SpecLexer.LBRACE, brace.getStartIndex()));
            return;
        }
        if (!closes.isEmpty()) {
            blocks.report(row, SyntaxFindings.braceStray(spans.of(tokens.get(closes.get(0)))));
            dropping = true;
            if (opening) {
                tokens.removeIf(t -> t.getType() == SpecLexer.RBRACE || t.getType() == SpecLexer.LBRACE);
                blocks.open(row, tokens, row.tokens().get(row.tokens().size() - 1));
            }
            return;
        }
        if (opening && opens.size() == 2 && !deeper) {
            CommonToken brace = tokens.remove(last);
            blocks.report(row, SyntaxFindings.braceReplaced(spans.of(brace), "}", spans.of(tokens.get(opens.get(0)))));
            tokens.add(LineFilter.insert(brace, SpecLexer.RBRACE, brace.getStartIndex()));
            blocks.write(tokens);
            return;
        }
        if (opening && opens.size() == 3 && opens.get(0) > 0 && opens.get(1) == opens.get(0) + 1 && last > opens.get(1) + 1) {
            // a block that begins behind another's head stands there by right, the brace between the two does not
            CommonToken stray = tokens.remove((int) opens.get(1));
            blocks.report(row, SyntaxFindings.braceStray(spans.of(stray)));
            blocks.write(tokens);
            blocks.opened(row, tokens.get(opens.get(0)));
            blocks.opened(row, tokens.get(last - 1));
            return;
        }
        if (opening && !deeper && !Row.canBeHead(tokens)) {
            dropStrayOpens(row, tokens, opens);
            blocks.write(tokens);
        } else if (opening) {
            opens.remove(opens.size() - 1);
            CommonToken brace = tokens.remove(last);
            dropStrayOpens(row, tokens, opens);
            blocks.open(row, tokens, brace);
        } else if (!opens.isEmpty() && deeper && opens.get(0) > 0 && Row.canBeHead(tokens.subList(0, opens.get(0)))) {
            CommonToken brace = tokens.get(opens.remove(0));
            dropStrayOpens(row, tokens, opens);
            blocks.write(tokens);
            blocks.opened(row, brace);
        } else if (!opens.isEmpty()) {
            closeOnLine(row, tokens, opens);
            blocks.write(tokens);
        } else if (deeper && next.tokens().get(0).getType() != SpecLexer.BAR
                && Row.canBeHead(tokens.subList(0, last))) {
            openAtRowsEnd(row, tokens);
        } else {
            blocks.write(tokens);
        }
    }

    /** Braces with nothing between them in the midst of a line: one of them is astray, the head says which. */
    private void dropStrayOfPair(Row row, List<CommonToken> tokens, boolean deeper) {
        for (int i = 0; i + 1 < tokens.size(); i++) {
            if (tokens.get(i).getType() == SpecLexer.LBRACE && tokens.get(i + 1).getType() == SpecLexer.RBRACE) {
                boolean head = i > 0 && Row.canBeHead(tokens.subList(0, i));
                if (!head || deeper || i + 2 < tokens.size()) {
                    CommonToken stray = tokens.remove(head ? i + 1 : i);
                    blocks.report(row, SyntaxFindings.braceStray(spans.of(stray)));
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
        if (last <= 0 || closes.isEmpty() || closes.get(closes.size() - 1) != last) {
            return null;
        }
        int indent = blocks.indent();
        boolean blockEnds = next == null || next.indent() <= indent
                && !(next.indent() == indent && next.tokens().get(0).getType() == SpecLexer.RBRACE);
        return indent >= 0 && indent < row.indent() && blockEnds ? tokens.remove(last) : null;
    }

    /** A block on one line that lost its closing brace gets it back; another opening brace is taken away. */
    private void closeOnLine(Row row, List<CommonToken> tokens, List<Integer> opens) {
        if (opens.size() == 1 && Row.opensEntries(tokens, opens.get(0))) {
            CommonToken end = tokens.get(tokens.size() - 1);
            blocks.report(row, SyntaxFindings.braceNotClosed(spans.of(tokens.get(opens.get(0))), List.of(spans.behind(end))));
            tokens.add(LineFilter.insert(end, SpecLexer.RBRACE, end.getStopIndex() + 1));
        } else {
            dropStrayOpens(row, tokens, opens);
        }
    }

    private void dropStrayOpens(Row row, List<CommonToken> tokens, List<Integer> opens) {
        for (int i = opens.size() - 1; i >= 0; i--) {
            CommonToken brace = tokens.remove((int) opens.get(i));
            blocks.report(row, SyntaxFindings.braceStray(spans.of(brace)));
        }
    }

    /** A head that lost its opening brace gets it back, in place of a sign that no head ends with. */
    private void openAtRowsEnd(Row row, List<CommonToken> tokens) {
        CommonToken end = tokens.get(tokens.size() - 1);
        if (tokens.size() > 1 && !Row.canEndHead(end)) {
            blocks.report(row, SyntaxFindings.braceReplaced(spans.of(end), "{", null));
            tokens.remove(end);
            blocks.open(row, tokens, LineFilter.insert(end, SpecLexer.LBRACE, end.getStartIndex()));
        } else {
            blocks.report(row, SyntaxFindings.braceMissingAtLineEnd(spans.behind(end)));
            blocks.open(row, tokens, LineFilter.insert(end, SpecLexer.LBRACE, end.getStopIndex() + 1));
        }
    }
}
