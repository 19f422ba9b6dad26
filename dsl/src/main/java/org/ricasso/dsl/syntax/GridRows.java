package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/** Rows of a grid fit or not each for itself: one that does not leaves the others in place. */
final class GridRows {
    private final SourceFile file;
    private final Mistakes mistakes;
    private final BitSet reported;

    /** @param reported numbers of lines that need no finding */
    GridRows(SourceFile file, Mistakes mistakes, BitSet reported) {
        this.file = file;
        this.mistakes = mistakes;
        this.reported = reported;
    }

    /**
     * Takes rows that do not fit out of a statement with a grid, each with a finding; then says where the rest fails.
     */
    int reduce(Place place, Statement statement, List<Diagnostic> findings, boolean silent) {
        int index = Attempt.failsAt(place, statement.alone());
        int headEnd = gridHeadEnd(statement);
        while (index > headEnd && headEnd > 0) {
            int line = file.line(statement.tokens.get(Math.min(index, statement.tokens.size() - 1)).getStartIndex());
            List<CommonToken> rows = statement.tokens.subList(headEnd, statement.tokens.size());
            List<CommonToken> kept = withoutLine(rows, line);
            if (kept.size() == rows.size()) {
                return index;
            }
            if (!silent && !reported.get(line)) {
                findings.add(mistakes.find(place, statement.alone(), index));
            }
            rows.clear();
            statement.tokens.addAll(kept);
            index = Attempt.failsAt(place, statement.alone());
        }
        return index;
    }

    /** Rows, each led by an end, without those on a line of the file. */
    private List<CommonToken> withoutLine(List<CommonToken> rows, int line) {
        List<CommonToken> result = new ArrayList<>();
        boolean keep = false;
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).getType() == SpecLexer.END && i + 1 < rows.size()) {
                keep = file.line(rows.get(i + 1).getStartIndex()) != line;
            }
            if (keep) {
                result.add(rows.get(i));
            }
        }
        return result;
    }

    /** The index of the end behind a grid's head, or -1 where there is no grid. */
    private static int gridHeadEnd(Statement statement) {
        int ends = 0;
        for (int i = 0; i < statement.tokens.size(); i++) {
            if (statement.tokens.get(i).getType() == SpecLexer.END && ++ends == 2) {
                return i;
            }
        }
        return -1;
    }
}
