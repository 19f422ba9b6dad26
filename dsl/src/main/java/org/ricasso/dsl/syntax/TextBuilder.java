package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/** Takes a text in quotes apart: escapes, doubled braces, holes. */
final class TextBuilder {
    private final SourceFile file;
    private final List<Diagnostic> findings;

    TextBuilder(SourceFile file, List<Diagnostic> findings) {
        this.file = file;
        this.findings = findings;
    }

    /** The text, or {@code null} where none is written. */
    Text optional(TerminalNode node) {
        return node == null ? null : text(node.getSymbol());
    }

    Text text(Token token) {
        Span span = new Span(file, token.getStartIndex(), token.getStopIndex() + 1);
        String all = file.text();
        int end = span.end() - 1;
        List<Text.Piece> pieces = new ArrayList<>();
        StringBuilder plain = new StringBuilder();
        int at = span.start() + 1;
        while (at < end) {
            char c = all.charAt(at);
            if (c == '\\') {
                plain.append(escaped(at));
                at += 1 + Character.charCount(all.codePointAt(at + 1));
            } else if (c != '{') {
                plain.append(c);
                at++;
            } else if (at + 1 < end && all.charAt(at + 1) == '{') {
                plain.append('{');
                at += 2;
            } else {
                int close = all.indexOf('}', at);
                if (close < 0 || close >= end) {
                    findings.add(SyntaxFindings.holeNotClosed(new Span(file, at, end)));
                    break;
                }
                addHole(at, close, plain, pieces);
                at = close + 1;
            }
        }
        if (plain.length() > 0) {
            pieces.add(new Text.Plain(plain.toString()));
        }
        return new Text(pieces, span);
    }

    private void addHole(int open, int close, StringBuilder plain, List<Text.Piece> pieces) {
        if (plain.length() > 0) {
            pieces.add(new Text.Plain(plain.toString()));
            plain.setLength(0);
        }
        ExpressionResult hole = Parser.parseHole(file, open, close);
        findings.addAll(hole.diagnostics());
        if (hole.expression() != null) {
            pieces.add(new Text.Hole(hole.expression()));
        }
    }

    private String escaped(int backslash) {
        int codePoint = file.text().codePointAt(backslash + 1);
        if (codePoint != '"' && codePoint != '\\') {
            findings.add(SyntaxFindings.unknownEscape(
                    new Span(file, backslash, backslash + 1 + Character.charCount(codePoint))));
        }
        return Character.toString(codePoint);
    }
}
