package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.ParseCancellationException;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.SourceFile;
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
        int end = file.text().length();
        List<CommonToken> raw = LineFilter.raw(file, 0, end);
        List<CommonToken> tokens = LineFilter.filter(file, raw, end);
        SyntaxTree tree = new SyntaxTree(file, List.of());
        Token tooDeep = Nesting.tooDeep(tokens);
        if (tooDeep != null) {
            findings.add(SyntaxFindings.tooDeep(new Spans(file).of(tooDeep), Nesting.LIMIT));
            return new ParseResult(tree, findings);
        }
        try {
            tree = new TreeBuilder(file, findings).tree(Attempt.parser(tokens).file());
        } catch (ParseCancellationException failure) {
            findings.add(SyntaxFindings.notRead(new Spans(file).of(Attempt.offending(failure))));
        }
        findings.sort(Diagnostic.ORDER);
        return new ParseResult(tree, findings);
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
        return read(file, start, end, parser -> parser.valueAlone().value(), TreeBuilder::value);
    }

    /** Reads a hole of a text, given the offsets of its braces. */
    static ExpressionResult parseHole(SourceFile file, int open, int close) {
        return read(file, open + 1, close, parser -> parser.hole().expr(), TreeBuilder::expression);
    }

    private interface Builds<C> {
        Expression build(TreeBuilder builder, C context);
    }

    private static <C> ExpressionResult read(SourceFile file, int start, int end, Function<SpecParser, C> rule,
            Builds<C> builds) {
        List<Diagnostic> findings = new ArrayList<>();
        List<CommonToken> tokens = LineFilter.filter(file, LineFilter.raw(file, start, end), end);
        Expression expression = null;
        Token tooDeep = Nesting.tooDeep(tokens);
        if (tooDeep != null) {
            findings.add(SyntaxFindings.tooDeep(new Spans(file).of(tooDeep), Nesting.LIMIT));
        } else {
            try {
                C context = rule.apply(Attempt.parser(tokens));
                expression = builds.build(new TreeBuilder(file, findings), context);
            } catch (ParseCancellationException failure) {
                findings.add(SyntaxFindings.notRead(new Spans(file).of(Attempt.offending(failure))));
            }
        }
        findings.sort(Diagnostic.ORDER);
        return new ExpressionResult(expression, findings);
    }
}
