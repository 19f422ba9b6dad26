package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.List;

/**
 * A text with what stands in its holes, so that another language's text can be filled with the same.
 *
 * @param written the text with its holes as written
 * @param pieces its pieces in order
 */
public record Filled(String written, List<Piece> pieces) {
    public Filled {
        pieces = List.copyOf(pieces);
    }

    /**
     * A piece of a text.
     *
     * @param text what stands there; of a hole its value in the text's own language
     * @param value of a hole its value, else null
     */
    public record Piece(String text, Value value) {}

    /** A text without holes. */
    public static Filled plain(String text) {
        return new Filled(text, List.of(new Piece(text, null)));
    }

    /** The values of its holes, in the order of the holes. */
    public List<Value> values() {
        List<Value> result = new ArrayList<>();
        pieces.stream().filter(piece -> piece.value() != null).forEach(piece -> result.add(piece.value()));
        return result;
    }

    /** The text in its own language. */
    public String text() {
        StringBuilder result = new StringBuilder();
        pieces.forEach(piece -> result.append(piece.text()));
        return result.toString();
    }
}
