package org.ricasso.dsl.syntax;

import java.util.List;
import org.ricasso.dsl.source.Span;

/**
 * Rows between bars; the first is the head.
 *
 * @param head the columns
 * @param rows the rows, each with as many cells as the head has columns
 */
public record Grid(List<Path> head, List<Row> rows, Span span) implements EntryValue {
    public Grid {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
    }

    /** A row; an empty cell is {@code null}. */
    public record Row(List<Expression> cells, Span span) {
        public Row {
            cells = java.util.Collections.unmodifiableList(new java.util.ArrayList<>(cells));
        }
    }
}
