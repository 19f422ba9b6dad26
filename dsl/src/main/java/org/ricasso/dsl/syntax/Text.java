package org.ricasso.dsl.syntax;

import java.util.List;
import org.ricasso.dsl.source.Span;

/**
 * A text in quotes: plain stretches and holes in the order in which they stand.
 *
 * @param pieces its pieces; escapes are resolved, {@code {{} is a brace
 * @param span the text with its quotes
 */
public record Text(List<Piece> pieces, Span span) {
    public Text {
        pieces = List.copyOf(pieces);
    }

    /** A stretch of a text. */
    public sealed interface Piece {}

    /** Characters as they are. */
    public record Plain(String text) implements Piece {}

    /** An expression whose value is printed in its place. */
    public record Hole(Expression expression) implements Piece {}

    public boolean hasHoles() {
        return pieces.stream().anyMatch(Hole.class::isInstance);
    }

    /** The text with each hole as it is written, braces and all. */
    public String written() {
        StringBuilder result = new StringBuilder();
        for (Piece piece : pieces) {
            if (piece instanceof Plain plain) {
                result.append(plain.text());
            } else if (piece instanceof Hole hole) {
                result.append('{').append(hole.expression().span().text()).append('}');
            }
        }
        return result.toString();
    }
}
