package org.ricasso.dsl.words;

import java.util.List;

/**
 * What stands for a text in a language.
 *
 * @param pieces its pieces in order
 */
public record Phrase(List<Piece> pieces) {
    public Phrase {
        pieces = List.copyOf(pieces);
    }

    /**
     * A piece of a phrase.
     *
     * @param text what stands there; for a hole its expression as written
     * @param hole for a hole, which hole of the text it is, from 0; else -1
     */
    public record Piece(String text, int hole) {
        public boolean isHole() {
            return hole >= 0;
        }
    }

    /** The phrase with its holes as written. */
    public String written() {
        StringBuilder result = new StringBuilder();
        for (Piece piece : pieces) {
            result.append(piece.isHole() ? "{" + piece.text() + "}" : piece.text());
        }
        return result.toString();
    }
}
