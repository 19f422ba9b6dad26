package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/**
 * Reads a text that cannot be read whole, line by line: mends its braces, then tries each logical line alone where it
 * stands. A line that does not fit is reported once and left out; the others make the tree.
 */
final class LineByLine {
    private final SourceFile file;
    private final Mistakes mistakes;
    private final Spans spans;
    private final BitSet reported;
    private final GridRows rows;

    private LineByLine(SourceFile file, BitSet reported) {
        this.file = file;
        this.spans = new Spans(file);
        this.mistakes = new Mistakes(spans);
        this.reported = reported;
        this.rows = new GridRows(file, mistakes, reported);
    }

    /** The tokens of all lines that fit, closed by the end of the file; the others are reported. */
    static List<CommonToken> read(SourceFile file, List<CommonToken> raw, List<Diagnostic> findings) {
        List<CommonToken> tokens = OpenTexts.split(raw);
        boolean match = Braces.match(tokens);
        List<Diagnostic> found = new ArrayList<>();
        List<CommonToken> good = match ? reading(file, tokens, new BitSet(), found) : null;
        if (!match || !Braces.matchIndentation(file, tokens)) {
            // Braces may match by chance, one missing here and another there: then the simpler story is told.
            List<Diagnostic> mended = new ArrayList<>();
            BraceMender mender = new BraceMender(file, mended);
            List<CommonToken> rest = reading(file, mender.mend(tokens), mender.reported(), mended);
            if (!match || mended.size() < found.size()) {
                good = rest;
                found = mended;
            }
        }
        findings.addAll(found);
        return good;
    }

    private static List<CommonToken> reading(SourceFile file, List<CommonToken> tokens, BitSet reported,
            List<Diagnostic> findings) {
        int end = file.text().length();
        List<CommonToken> filtered = LineFilter.filter(tokens, end);
        List<CommonToken> good = new ArrayList<>();
        for (Statement statement : new LineByLine(file, reported)
                .fitting(Place.FILE, Statement.of(filtered), findings)) {
            statement.write(good);
        }
        good.add(LineFilter.insert(filtered.get(filtered.size() - 1), Token.EOF, end));
        return good;
    }

    /** The statements that fit, those inside them reduced in the same way. */
    private List<Statement> fitting(Place place, List<Statement> statements, List<Diagnostic> findings) {
        List<Statement> result = new ArrayList<>();
        Statement before = null;
        boolean failed = false;
        boolean inOpenText = false;
        List<Diagnostic> own = new ArrayList<>();
        List<Diagnostic> heads = new ArrayList<>();
        for (Statement statement : statements) {
            boolean silent = isReported(statement);
            if (before != null && !before.isEnded() && !silent) {
                findings.add(mistakes.sideBySide(before, statement));
                silent = true;
            }
            if (!silent && statement.inner != null && Attempt.failsAt(place, statement.whole()) == Attempt.FITS) {
                result.add(statement);
                failed = false;
                inOpenText = false;
                before = statement;
                continue;
            }
            int index = rows.reduce(place, statement, findings, silent);
            boolean fits = index == Attempt.FITS;
            if (!fits && !silent) {
                boolean rest = failed && isRestOf(before, statement, index);
                List<CommonToken> alone = statement.alone();
                // A text that runs over several lines is one mistake: what stands before its end is no line.
                boolean ofText = inOpenText && !opensText(place, alone, index);
                if (!rest && !ofText) {
                    own.add(mistakes.find(place, alone, index));
                }
            }
            inOpenText = !fits && statement.holds(SpecLexer.BAD_STRING) != inOpenText;
            if (statement.inner != null) {
                Place inside = place.inside(statement.first().getType());
                fits &= inside != null && reduceInner(inside, statement, fits, findings, heads);
            }
            if (fits) {
                result.add(statement);
            }
            failed = !fits;
            before = statement;
        }
        findings.addAll(own.size() > result.size() ? collapsed(own) : own);
        if (!heads.isEmpty()) {
            findings.add(SyntaxFindings.alsoHeads(heads.get(0), heads.size() - 1));
        }
        return result;
    }

    /** Where most lines fail in the same way, they have one cause: one finding that says how many there are. */
    private static List<Diagnostic> collapsed(List<Diagnostic> findings) {
        Diagnostic first = findings.get(0);
        List<Diagnostic> others = findings.stream().filter(d -> !SyntaxFindings.sameFault(d, first)).toList();
        int more = findings.size() - others.size() - 1;
        if (more < 3 || !SyntaxFindings.OF_ONE_CAUSE.contains(first.name())) {
            return findings;
        }
        List<Diagnostic> result = new ArrayList<>(others);
        result.add(SyntaxFindings.alsoOthers(first, more));
        return result;
    }

    private boolean isReported(Statement statement) {
        return reported.get(file.line(statement.first().getStartIndex()));
    }

    /** Whether the text that stops the reading of a line begins there, rather than ends one from a line before. */
    private static boolean opensText(Place place, List<CommonToken> tokens, int index) {
        if (tokens.get(index).getType() != SpecLexer.BAD_STRING) {
            return false;
        }
        int before = index == 0 ? SpecLexer.COLON : tokens.get(index - 1).getType();
        return before == SpecLexer.COLON || before == SpecLexer.ELSE || place == Place.FILE;
    }

    /** Whether a line that does not fit is but the rest of the one before, which does not fit either. */
    private boolean isRestOf(Statement before, Statement statement, int index) {
        int line = file.line(before.first().getStartIndex());
        int nextLine = file.line(statement.first().getStartIndex());
        boolean noEntry = !statement.holds(SpecLexer.COLON);
        return nextLine == line ? index == 0 || noEntry
                : noEntry && statement.inner == null && indent(statement) > indent(before);
    }

    private int indent(Statement statement) {
        int start = statement.first().getStartIndex();
        return start - file.lineStart(file.line(start));
    }

    /**
     * Reduces what stands in a statement's braces; false where its head seems to be another one than was meant. Where
     * the head does not fit, what it opens is a guess: then lines are reported only if they fit nothing else better.
     *
     * @param heads where such heads are reported; beside one another they have one cause
     */
    private boolean reduceInner(Place inside, Statement statement, boolean headFits, List<Diagnostic> findings,
            List<Diagnostic> heads) {
        List<Statement> all = statement.inner;
        List<Diagnostic> found = new ArrayList<>();
        List<Statement> fitting = fitting(inside, all, found);
        boolean headSure = headFits && !isReported(statement);
        if (all.size() - fitting.size() >= (headSure ? 2 : 1)) {
            Place other = betterPlace(inside, all);
            if (other != null) {
                if (headSure) {
                    heads.add(SyntaxFindings.headOfAnother(spans.of(statement.first()), inside, other));
                }
                return false;
            }
        }
        statement.inner = fitting;
        findings.addAll(found);
        return true;
    }

    /** A place that all lines fit, if it is not only that anything fits there; else {@code null}. */
    private static Place betterPlace(Place inside, List<Statement> lines) {
        boolean special = lines.stream().anyMatch(s -> !fits(inside, s) && !fits(Place.VALUES, s)
                && !fits(Place.BLOCK, s));
        for (Place other : Place.values()) {
            if (special && other != inside && lines.stream().allMatch(s -> fits(other, s))) {
                return other;
            }
        }
        return null;
    }

    private static boolean fits(Place place, Statement statement) {
        return Attempt.failsAt(place, statement.alone()) == Attempt.FITS;
    }
}
