package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.ParseCancellationException;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.LimitFindings;
import org.ricasso.dsl.source.Limits;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.grammar.SpecParser;

/**
 * Reads texts of the language. Total: whatever the text holds, the answer is a tree and findings.
 *
 * <p>A good text is read once, with the fast prediction and no recovery. Only when that fails it is read again line by
 * line, so that each line that cannot be read is reported once and the others still make the tree.
 */
public final class Parser {
    private Parser() {}

    /** Reads a whole file. */
    public static ParseResult parse(SourceFile file) {
        List<Diagnostic> findings = new ArrayList<>();
        SyntaxTree tree = new SyntaxTree(file, List.of());
        try {
            tree = tree(file, findings);
        } catch (StackOverflowError e) {
            // Nesting is limited, but how large the stack is, is not ours to say.
            findings.add(SyntaxFindings.tooDeep(new Span(file, 0, 0), Nesting.LIMIT));
        }
        findings.sort(Diagnostic.ORDER);
        return new ParseResult(tree, SyntaxFindings.first(findings));
    }

    private static SyntaxTree tree(SourceFile file, List<Diagnostic> findings) {
        int end = file.text().length();
        if (end > Limits.FILE_CHARACTERS) {
            findings.add(LimitFindings.fileTooLarge(new Span(file, 0, 0), end, "characters", Limits.FILE_CHARACTERS));
            return new SyntaxTree(file, List.of());
        }
        List<CommonToken> raw = LineFilter.raw(file, 0, end);
        if (raw.size() > Limits.FILE_WORDS) {
            findings.add(LimitFindings.fileTooLarge(new Span(file, 0, 0), raw.size(), "words, numbers and signs",
                    Limits.FILE_WORDS));
            return new SyntaxTree(file, List.of());
        }
        List<CommonToken> tokens = LineFilter.filter(raw, end);
        if (beyond(new Spans(file), tokens, findings)) {
            return new SyntaxTree(file, List.of());
        }
        TreeBuilder builder = new TreeBuilder(file, findings);
        try {
            return builder.tree(Attempt.parser(tokens).file());
        } catch (ParseCancellationException failure) {
            SyntaxTree rest = rest(file, raw, findings, builder);
            if (findings.isEmpty()) {
                findings.add(SyntaxFindings.notExpected(new Spans(file).of(Attempt.offending(failure)), List.of(),
                        "this"));
            }
            return rest;
        }
    }

    /** Whether something is nested too deep, or goes on for too long, to be read; it is reported. */
    private static boolean beyond(Spans spans, List<CommonToken> tokens, List<Diagnostic> findings) {
        Token tooDeep = Nesting.tooDeep(tokens);
        Token tooLong = tooDeep == null ? Nesting.tooLong(tokens) : null;
        if (tooDeep != null) {
            findings.add(SyntaxFindings.tooDeep(spans.of(tooDeep), Nesting.LIMIT));
        } else if (tooLong != null) {
            findings.add(LimitFindings.lineTooLong(spans.of(tooLong)));
        }
        return tooDeep != null || tooLong != null;
    }

    /** What can be read of a file that cannot be read whole. */
    private static SyntaxTree rest(SourceFile file, List<CommonToken> raw, List<Diagnostic> findings,
            TreeBuilder builder) {
        List<CommonToken> rest = LineByLine.read(file, raw, findings);
        try {
            return builder.tree(Attempt.parser(rest).file());
        } catch (ParseCancellationException failure) {
            return new SyntaxTree(file, List.of());
        }
    }

    /** Reads a text that is one expression or value, as {@code calculate} takes it. */
    public static ExpressionResult parseExpression(SourceFile file) {
        return parseValue(file, 0, file.text().length());
    }

    /** Reads the text of a table's cell: a value. A cell of blanks has no expression and no finding. */
    public static ExpressionResult parseCell(SourceFile file, int start, int end) {
        if (file.text().substring(start, end).isBlank()) {
            return new ExpressionResult(null, List.of());
        }
        return parseValue(file, start, end);
    }

    private static ExpressionResult parseValue(SourceFile file, int start, int end) {
        return read(file, start, end, Place.VALUE, (builder, parser) -> builder.value(parser.valueAlone().value()));
    }

    /** Reads a hole of a text, given the offsets of its braces. */
    static ExpressionResult parseHole(SourceFile file, int open, int close) {
        return read(file, open + 1, close, Place.HOLE, (builder, parser) -> builder.expression(parser.hole().expr()));
    }

    private static ExpressionResult read(SourceFile file, int start, int end, Place place,
            BiFunction<TreeBuilder, SpecParser, Expression> reading) {
        List<Diagnostic> findings = new ArrayList<>();
        List<CommonToken> tokens = LineFilter.filter(LineFilter.raw(file, start, end), end);
        Spans spans = new Spans(file);
        if (tokens.size() == 1) {
            findings.add(place == Place.HOLE ? SyntaxFindings.holeEmpty(new Span(file, start - 1, end + 1))
                    : SyntaxFindings.notExpected(new Span(file, start, end), List.of("a value"), "nothing"));
        } else if (!beyond(spans, tokens, findings)) {
            try {
                Expression expression = reading.apply(new TreeBuilder(file, findings), Attempt.parser(tokens));
                findings.sort(Diagnostic.ORDER);
                return new ExpressionResult(expression, findings);
            } catch (ParseCancellationException failure) {
                int index = Attempt.offending(failure).getTokenIndex();
                findings.add(new Mistakes(spans).find(place, tokens, index));
            }
        }
        return new ExpressionResult(null, findings);
    }
}
