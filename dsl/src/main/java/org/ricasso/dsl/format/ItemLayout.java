package org.ricasso.dsl.format;

import java.util.List;
import org.ricasso.dsl.format.Piece.Comment;
import org.ricasso.dsl.format.Piece.Sign;
import org.ricasso.dsl.syntax.Lexeme.Kind;

/** Writes an item whose blocks stand on one line. A value that goes on over several lines keeps its line ends. */
final class ItemLayout {
    private final Cells cells;
    private final Columns columns;
    private final int row;
    private final int indent;
    private StringBuilder line;
    private String comment;
    /** Where lines begin that go on. */
    private int onward;
    private int depth;

    /**
     * @param cells the item
     * @param columns the columns of it and its neighbours
     * @param row which of the neighbours it is
     * @param indent blanks before it
     */
    ItemLayout(Cells cells, Columns columns, int row, int indent) {
        this.cells = cells;
        this.columns = columns;
        this.row = row;
        this.indent = indent;
        this.line = new StringBuilder(" ".repeat(indent));
        this.onward = indent + BlockLayout.INDENT;
    }

    /** Adds the item's lines, its own comment behind the last. */
    void lay(String lastComment, List<Line> out) {
        for (int cell = 0; cell < cells.cells().size(); cell++) {
            if (cell > 0) {
                line.append(" ".repeat(columns.gap(row, cell - 1)));
            }
            line.append(" ".repeat(columns.lead(row, cell)));
            boolean value = cell == 1 && (cells.shape() == Cells.Shape.ENTRY || cells.shape() == Cells.Shape.LET);
            onward = value ? Line.width(line.toString()) : onward;
            lay(cells.cells().get(cell), out);
        }
        comment = lastComment;
        end(out);
    }

    private void lay(List<Piece> pieces, List<Line> out) {
        boolean follows = false;
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (piece instanceof Comment inner && !inner.newLine()) {
                comment = inner.text();
            } else if (piece instanceof Comment inner) {
                end(out);
                line.append(inner.text());
            } else {
                boolean close = piece instanceof Sign sign && sign.is(Kind.CLOSE_BRACKET);
                depth -= close ? 1 : 0;
                if (piece instanceof Sign sign && sign.newLine()) {
                    end(out);
                    follows = false;
                }
                Spacing.append(pieces, i, follows, line);
                depth += piece instanceof Sign sign && sign.is(Kind.OPEN_BRACKET) ? 1 : 0;
            }
            follows = true;
        }
    }

    /** Ends the line and begins one that goes on. */
    private void end(List<Line> out) {
        out.add(new Line(line.toString(), comment, false));
        comment = null;
        line = new StringBuilder(" ".repeat(onward + BlockLayout.INDENT * depth));
    }
}
