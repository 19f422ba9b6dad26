package org.ricasso.dsl.evaluate;

import java.util.List;

/**
 * A text whose holes are filled from a frame.
 *
 * @param pieces strings and nodes
 * @param written the text with its holes as written
 */
public record TextNode(List<Object> pieces, String written) {
    public TextNode {
        pieces = List.copyOf(pieces);
    }

    /** The text with its values. */
    public Filled filled(Frame frame) {
        return new Filled(written, pieces.stream().map(piece -> {
            if (piece instanceof Node node) {
                Value value = node.eval(frame);
                return new Filled.Piece(Shows.show(value), value);
            }
            return new Filled.Piece((String) piece, null);
        }).toList());
    }

    public String fill(Frame frame) {
        return filled(frame).text();
    }
}
