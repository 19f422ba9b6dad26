package org.ricasso.dsl.syntax;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/** Says what is wrong with a line, given where its reading stopped: likely mistakes first, then what was expected. */
final class Mistakes {
    private final Spans spans;

    Mistakes(Spans spans) {
        this.spans = spans;
    }

    /** Two statements with neither a line's end nor {@code ;} between them. */
    Diagnostic sideBySide(Statement before, Statement next) {
        Diagnostic token = TokenMistakes.find(next.first(), spans.of(next.first()));
        List<CommonToken> alone = before.alone();
        return token != null ? token
                : SyntaxFindings.sideBySide(spans.behind(alone.get(alone.size() - 3)), spans.of(next.first()));
    }

    /** @param index the first token that does not fit */
    Diagnostic find(Place place, List<CommonToken> tokens, int index) {
        CommonToken here = tokens.get(index);
        CommonToken before = index == 0 ? null : tokens.get(index - 1);
        Diagnostic result = TokenMistakes.find(here, spans.of(here));
        if (result == null && before != null) {
            result = SignMistakes.find(spans, tokens, index);
        }
        Expected expected = result == null ? new Expected(place, tokens, index) : null;
        if (result == null) {
            result = EntryMistakes.find(spans, place, tokens, index, expected);
        }
        return result != null ? result : goesOn(general(tokens, index, expected), tokens, index);
    }

    private Diagnostic general(List<CommonToken> tokens, int index, Expected expected) {
        CommonToken here = tokens.get(index);
        int type = here.getType();
        if (type == SpecLexer.END || type == Token.EOF) {
            Span end = index == 0 ? spans.of(here) : spans.behind(tokens.get(index - 1));
            boolean semicolon = type == SpecLexer.END && here.getStopIndex() >= here.getStartIndex()
                    && here.getText().equals(";");
            return SyntaxFindings.notExpected(end, expected.things(), semicolon ? "`;`" : "the end");
        }
        List<String> things = expected.things();
        return switch (type) {
            case SpecLexer.AND, SpecLexer.ELSE, SpecLexer.IF, SpecLexer.IN, SpecLexer.NOT, SpecLexer.OR, SpecLexer.PER,
                    SpecLexer.THEN -> expected.aName() && !expected.aValue()
                            ? SyntaxFindings.reservedWord(spans.of(here), things)
                            : SyntaxFindings.notExpected(spans.of(here), things, "`" + here.getText() + "`");
            default -> SyntaxFindings.notExpected(spans.of(here), things, "`" + shortened(here.getText()) + "`");
        };
    }

    private static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= 30 ? text
                : text.substring(0, text.offsetByCodePoints(0, 29)) + "…";
    }

    /** Where reading stopped on a later line than the one before, that line's last sign made it go on. */
    private Diagnostic goesOn(Diagnostic finding, List<CommonToken> tokens, int index) {
        if (tokens.get(index).getType() == SpecLexer.END) {
            return finding;
        }
        int line = finding.primary().span().line();
        for (int i = index; i > 0; i--) {
            Token before = tokens.get(i - 1);
            if (spans.of(before).line() < line) {
                return LineFilter.goesOnAfter(before.getType()) && before.getType() != SpecLexer.LBRACE
                        ? SyntaxFindings.lineGoesOn(finding, spans.of(before)) : finding;
            }
        }
        return finding;
    }
}
