package org.ricasso.dsl.syntax;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/** Mistakes in how a line is put together. */
final class EntryMistakes {
    private EntryMistakes() {}

    /** A finding, or {@code null}. */
    static Diagnostic find(Spans spans, Place place, List<CommonToken> tokens, int index, Expected expected) {
        CommonToken here = tokens.get(index);
        int type = here.getType();
        if (index == 0) {
            return first(spans, place, tokens);
        }
        CommonToken before = tokens.get(index - 1);
        boolean leadsEntry = tokens.subList(0, index).stream().allMatch(EntryMistakes::isNameOrDot);
        if (type == SpecLexer.EQ && before.getType() == SpecLexer.EQ) {
            return SyntaxFindings.equalsTwice(spans.of(here));
        }
        if (type == SpecLexer.EQ && leadsEntry && expected.has(SpecLexer.COLON)) {
            return SyntaxFindings.equalsForColon(spans.of(here));
        }
        if (type == SpecLexer.LBRACE && before.getType() == SpecLexer.COLON) {
            return SyntaxFindings.colonBeforeBlock(spans.of(before), spans.of(here));
        }
        if (before.getType() == SpecLexer.COLON && endsEntry(type)) {
            return SyntaxFindings.valueMissing(spans.of(before), spans.of(tokens.get(0), before).text());
        }
        if (type == Token.EOF && index > 2 && tokens.get(index - 2).getType() == SpecLexer.COLON) {
            return SyntaxFindings.valueMissing(spans.of(tokens.get(index - 2)),
                    spans.of(tokens.get(0), tokens.get(index - 2)).text());
        }
        Diagnostic goesOn = goesOn(spans, tokens, index);
        if (goesOn != null) {
            return goesOn;
        }
        if (place == Place.ROUTE && index == 1 && isNameOrDot(here) && (before.getType() == SpecLexer.CHANGE
                || before.getType() == SpecLexer.ADD || before.getType() == SpecLexer.OMIT)) {
            return SyntaxFindings.stepNumberMissing(spans.of(here));
        }
        Diagnostic head = head(spans, place, tokens, index, expected);
        if (head != null) {
            return head;
        }
        boolean valueFollows = type == SpecLexer.END ? tokens.get(index + 1).getType() == SpecLexer.BAR
                : beginsValue(type) && before.getType() != SpecLexer.PART;
        if (leadsEntry && expected.has(SpecLexer.COLON) && valueFollows) {
            return SyntaxFindings.colonMissing(spans.behind(before), spans.of(tokens.get(0), before).text());
        }
        Diagnostic beside = beside(spans, tokens, index, expected);
        return beside != null ? beside : brackets(spans, tokens, index, expected);
    }

    /** The line's first token does not fit. */
    private static Diagnostic first(Spans spans, Place place, List<CommonToken> tokens) {
        CommonToken here = tokens.get(0);
        if (place == Place.ROUTE && isNameOrDot(here)) {
            return SyntaxFindings.stepNumberMissing(spans.of(here));
        }
        return section(spans, place, tokens);
    }

    private static Diagnostic section(Spans spans, Place place, List<CommonToken> tokens) {
        String sections = switch (place) {
            case OPERATION -> "`takes`, `needs`, `leaves`, `time` and `instruct`";
            case RULE -> "`remedy`, `example passes` and `example fails`";
            case TABLE -> "`columns`";
            default -> null;
        };
        return sections != null && tokens.size() > 1 && tokens.get(0).getType() == SpecLexer.WORD
                && tokens.get(1).getType() == SpecLexer.LBRACE
                ? SyntaxFindings.sectionUnknown(spans.of(tokens.get(0)), place, sections) : null;
    }

    private static Diagnostic head(Spans spans, Place place, List<CommonToken> tokens, int index, Expected expected) {
        CommonToken before = tokens.get(index - 1);
        int type = tokens.get(index).getType();
        if (index == 1 && type == SpecLexer.LBRACE && section(spans, place, tokens) != null) {
            return section(spans, place, tokens);
        }
        if (place == Place.FILE && type == SpecLexer.LBRACE && before.getType() == SpecLexer.WORKPIECE) {
            return SyntaxFindings.productMissing(spans.of(before));
        }
        if (place == Place.RULE && type == SpecLexer.LBRACE && before.getType() == SpecLexer.EXAMPLE) {
            return SyntaxFindings.outcomeMissing(spans.of(before));
        }
        if (place == Place.FILE && type == SpecLexer.END && expected.has(SpecLexer.LBRACE)) {
            return SyntaxFindings.blockMissing(spans.behind(before));
        }
        if (place == Place.NEEDS && type == SpecLexer.END && expected.has(SpecLexer.ELSE)
                && tokens.stream().noneMatch(t -> t.getType() == SpecLexer.IF)) {
            return SyntaxFindings.otherwiseMissing(spans.behind(before));
        }
        return null;
    }

    /** The line before ends with an operator, but what follows is no value: it is the next entry. */
    private static Diagnostic goesOn(Spans spans, List<CommonToken> tokens, int index) {
        int line = spans.of(tokens.get(index)).line();
        int first = index;
        while (first > 0 && spans.of(tokens.get(first - 1)).line() == line) {
            first--;
        }
        if (first == 0 || index - first > 4 || !LineFilter.goesOnAfter(tokens.get(first - 1).getType())) {
            return null;
        }
        int name = tokens.get(first).getType() == SpecLexer.LET ? first + 1 : first;
        return isNameOrDot(tokens.get(name)) && leadsToColon(tokens, name)
                ? SyntaxFindings.valueMissingAtLineEnd(spans.of(tokens.get(first - 1)), spans.of(tokens.get(first)))
                : null;
    }

    /** Two entries side by side: the second shows by its name and colon. */
    private static Diagnostic beside(Spans spans, List<CommonToken> tokens, int index, Expected expected) {
        int name = tokens.get(index).getType() == SpecLexer.COLON ? index - 1 : index;
        while (name > 1 && tokens.get(name - 1).getType() == SpecLexer.DOT) {
            name -= 2;
        }
        if (name < 2 || !isNameOrDot(tokens.get(name)) || !leadsToColon(tokens, name)
                || name == index && !expected.has(SpecLexer.END)) {
            return null;
        }
        CommonToken before = tokens.get(name - 1);
        Span next = spans.of(tokens.get(name));
        boolean entryBefore = tokens.subList(0, name - 1).stream().anyMatch(t -> t.getType() == SpecLexer.COLON);
        return entryBefore && spans.of(before).line() == next.line() && !LineFilter.goesOnAfter(before.getType())
                ? SyntaxFindings.sideBySide(spans.behind(before), next) : null;
    }

    private static boolean leadsToColon(List<CommonToken> tokens, int name) {
        int at = name + 1;
        while (tokens.get(at).getType() == SpecLexer.DOT && isNameOrDot(tokens.get(at + 1))) {
            at += 2;
        }
        return tokens.get(at).getType() == SpecLexer.COLON;
    }

    private static Diagnostic brackets(Spans spans, List<CommonToken> tokens, int index, Expected expected) {
        int depth = 0;
        CommonToken open = null;
        for (int i = index - 1; i >= 0 && open == null; i--) {
            int type = tokens.get(i).getType();
            depth += type == SpecLexer.RPAREN ? 1 : type == SpecLexer.LPAREN ? -1 : 0;
            if (depth < 0) {
                open = tokens.get(i);
            }
        }
        CommonToken here = tokens.get(index);
        if (here.getType() == SpecLexer.RPAREN && open == null && expected.has(SpecLexer.END)) {
            return SyntaxFindings.bracketStray(spans.of(here));
        }
        boolean end = endsEntry(here.getType());
        return open != null && end && expected.has(SpecLexer.RPAREN)
                ? SyntaxFindings.bracketMissing(spans.of(open), spans.behind(tokens.get(index - 1))) : null;
    }

    private static boolean endsEntry(int type) {
        return switch (type) {
            case SpecLexer.END, SpecLexer.ELSE, SpecLexer.COMMA, SpecLexer.RPAREN, SpecLexer.RBRACE, Token.EOF -> true;
            default -> false;
        };
    }

    private static boolean beginsValue(int type) {
        return switch (type) {
            case SpecLexer.WORD, SpecLexer.NUMBER, SpecLexer.STRING, SpecLexer.DATE, SpecLexer.LPAREN, SpecLexer.GE,
                    SpecLexer.LE, SpecLexer.IF, SpecLexer.NOT, SpecLexer.MAX, SpecLexer.MIN, SpecLexer.ONE,
                    SpecLexer.LIST -> true;
            default -> false;
        };
    }

    /** Whether a token can stand in a path. */
    private static boolean isNameOrDot(CommonToken token) {
        return token.getType() == SpecLexer.DOT || NameWords.has(token.getType());
    }
}
