package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.Lexeme;
import org.ricasso.dsl.syntax.Lexeme.Kind;
import org.ricasso.dsl.syntax.Lexemes;

/** Makes blocks and their items of a text's pieces, and finds where each comment belongs. */
final class BlockReader {
    private final SourceFile file;
    private final List<Lexeme> lexemes;
    private int at;
    /** The last piece that can be seen. */
    private Lexeme last;
    /** The comment behind the last item or one that hangs below it, if it is the last of what was read. */
    private Lexeme lastComment;

    private BlockReader(SourceFile file) {
        this.file = file;
        this.lexemes = Lexemes.of(file);
    }

    /** The whole text as a block. */
    static Piece.Block read(SourceFile file) {
        return new BlockReader(file).block();
    }

    private boolean atEnd() {
        return at >= lexemes.size();
    }

    private Lexeme next() {
        return lexemes.get(at);
    }

    /** Goes on to the next piece; ends cannot be seen. */
    private Lexeme take() {
        Lexeme taken = lexemes.get(at++);
        if (taken.kind() != Kind.END) {
            last = taken;
        }
        return taken;
    }

    /** Lines from the last piece to the next one. */
    private int linesToNext() {
        return last == null ? 1 : line(next()) - line(last);
    }

    private int line(Lexeme lexeme) {
        return file.line(lexeme.span().start());
    }

    private Piece.Block block() {
        Lexeme open = last;
        List<Piece.Entry> entries = new ArrayList<>();
        String behindBrace = null;
        lastComment = null;
        while (!atEnd() && next().kind() != Kind.CLOSE_BRACE) {
            if (next().kind() == Kind.END) {
                take();
            } else if (next().kind() != Kind.COMMENT) {
                entries.add(item());
            } else if (linesToNext() > 0) {
                entries.add(comment());
            } else {
                lastComment = entries.isEmpty() ? null : next();
                String text = take().text();
                if (entries.isEmpty()) {
                    behindBrace = text;
                } else {
                    Piece.Item item = (Piece.Item) entries.remove(entries.size() - 1);
                    entries.add(new Piece.Item(item.pieces(), text, item.spaced()));
                }
            }
        }
        boolean empty = entries.isEmpty() && behindBrace == null;
        boolean oneLine = !atEnd() && (empty || line(next()) == line(open));
        return new Piece.Block(entries, behindBrace, oneLine);
    }

    /** A comment with a line for itself. */
    private Piece.Comment comment() {
        boolean spaced = linesToNext() > 1;
        boolean hangs = lastComment != null && line(next()) == line(lastComment) + 1
                && column(next()) == column(lastComment);
        lastComment = hangs ? next() : null;
        return new Piece.Comment(take().text(), true, spaced, hangs);
    }

    private int column(Lexeme lexeme) {
        return file.column(lexeme.span().start());
    }

    private Piece.Item item() {
        boolean spaced = linesToNext() > 1;
        List<Piece> pieces = new ArrayList<>();
        Lexeme behind = null;
        while (!atEnd() && next().kind() != Kind.END && next().kind() != Kind.CLOSE_BRACE) {
            boolean newLine = linesToNext() > 0;
            if (next().kind() == Kind.OPEN_BRACE) {
                take();
                pieces.add(block());
                take();
                behind = null;
            } else if (next().kind() == Kind.COMMENT) {
                behind = newLine ? null : next();
                pieces.add(new Piece.Comment(take().text(), newLine, false, false));
            } else {
                boolean touches = last != null && last.span().end() == next().span().start();
                Lexeme taken = take();
                pieces.add(new Piece.Sign(taken.kind(), taken.text(), newLine && !pieces.isEmpty(), touches));
                behind = null;
            }
        }
        lastComment = behind;
        String comment = behind == null ? null : ((Piece.Comment) pieces.remove(pieces.size() - 1)).text();
        return new Piece.Item(CanonicalSigns.of(pieces), comment, spaced);
    }
}
