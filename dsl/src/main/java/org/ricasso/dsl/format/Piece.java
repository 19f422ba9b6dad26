package org.ricasso.dsl.format;

import java.util.List;
import org.ricasso.dsl.syntax.Lexeme;

/** What an item is made of, and a block. */
sealed interface Piece {

    /**
     * A sign.
     *
     * @param text in its one spelling
     * @param newLine whether it is the first on its line
     * @param touches whether it follows the sign before it without a blank
     */
    record Sign(Lexeme.Kind kind, String text, boolean newLine, boolean touches) implements Piece {
        boolean is(Lexeme.Kind other) {
            return kind == other;
        }

        boolean is(String word) {
            return kind.isName() && text.equals(word);
        }

        Sign as(Lexeme.Kind other, String spelling) {
            return new Sign(other, spelling, newLine, touches);
        }
    }

    /** What may stand alone on a line of a block. */
    sealed interface Entry extends Piece {
        /** Whether one or more empty lines stand before it. */
        boolean spaced();
    }

    /**
     * {@code // …}
     *
     * @param newLine whether it has a line for itself
     * @param hangs whether it goes on with the comment behind the line before, in the same column
     */
    record Comment(String text, boolean newLine, boolean spaced, boolean hangs) implements Entry {}

    /**
     * An entry, a head with its block, a row of a grid, a text.
     *
     * @param pieces signs, blocks, and comments where it goes on over several lines
     * @param comment the comment behind its last line, or {@code null}
     */
    record Item(List<Piece> pieces, String comment, boolean spaced) implements Entry {
        public Item {
            pieces = List.copyOf(pieces);
        }

        Sign first() {
            return (Sign) pieces.get(0);
        }

        boolean isRow() {
            return first().is(Lexeme.Kind.BAR);
        }
    }

    /**
     * What stands between braces, or a whole text.
     *
     * @param comment the comment behind the opening brace, or {@code null}
     * @param oneLine whether it stands on one line
     */
    record Block(List<Entry> entries, String comment, boolean oneLine) implements Piece {
        public Block {
            entries = List.copyOf(entries);
        }
    }
}
