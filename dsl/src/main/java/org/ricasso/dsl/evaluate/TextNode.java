package org.ricasso.dsl.evaluate;

import java.util.List;

/** A text whose holes are filled from a frame. Pieces are strings and nodes. */
public record TextNode(List<Object> pieces) {
    public TextNode {
        pieces = List.copyOf(pieces);
    }

    public String fill(Frame frame) {
        StringBuilder result = new StringBuilder();
        for (Object piece : pieces) {
            if (piece instanceof Node node) {
                result.append(Shows.show(node.eval(frame)));
            } else {
                result.append(piece);
            }
        }
        return result.toString();
    }
}
