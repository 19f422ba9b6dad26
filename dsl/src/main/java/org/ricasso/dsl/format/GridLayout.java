package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ricasso.dsl.format.Piece.Comment;
import org.ricasso.dsl.format.Piece.Entry;
import org.ricasso.dsl.format.Piece.Item;
import org.ricasso.dsl.format.Piece.Sign;
import org.ricasso.dsl.syntax.Lexeme.Kind;

/** The rows of grids among neighbours, their bars below each other. */
final class GridLayout {
    private final boolean[] inGrid;
    private final String[] rows;

    private GridLayout(int size) {
        this.inGrid = new boolean[size];
        this.rows = new String[size];
    }

    static GridLayout of(List<Entry> neighbours) {
        GridLayout result = new GridLayout(neighbours.size());
        for (int i = 0; i < neighbours.size(); ) {
            List<Integer> grid = new ArrayList<>();
            int at = i;
            while (at < neighbours.size() && mayBelong(neighbours.get(at), grid.isEmpty())) {
                if (isRow(neighbours.get(at))) {
                    grid.add(at);
                }
                at++;
            }
            if (!grid.isEmpty()) {
                Arrays.fill(result.inGrid, i, grid.get(grid.size() - 1) + 1, true);
                result.lay(grid, neighbours);
            }
            i = Math.max(at, i + 1);
        }
        return result;
    }

    /** Whether an entry is a row or may be a comment among rows; one that hangs below another entry leads no grid. */
    private static boolean mayBelong(Entry entry, boolean first) {
        return isRow(entry) || entry instanceof Comment comment && !(first && comment.hangs());
    }

    private static boolean isRow(Entry entry) {
        return entry instanceof Item item && item.isRow();
    }

    /** Whether a neighbour is a row or a comment among rows. */
    boolean holds(int i) {
        return inGrid[i];
    }

    /** A row written out, or {@code null} for what is none, or what goes on over several lines with comments. */
    String row(int i) {
        return rows[i];
    }

    private void lay(List<Integer> grid, List<Entry> neighbours) {
        List<Integer> plain = grid.stream().filter(i -> ((Item) neighbours.get(i)).pieces().stream()
                .allMatch(Sign.class::isInstance)).toList();
        List<List<List<Piece>>> cells = plain.stream().map(i -> cells((Item) neighbours.get(i))).toList();
        int columns = cells.stream().mapToInt(List::size).max().orElse(0);
        StringBuilder[] written = new StringBuilder[plain.size()];
        for (int row = 0; row < written.length; row++) {
            written[row] = new StringBuilder("|");
        }
        for (int column = 0; column < columns; column++) {
            int at = column;
            List<List<Piece>> ofColumn = cells.stream()
                    .map(r -> at < r.size() ? r.get(at) : List.<Piece>of()).toList();
            List<String> texts = GridColumn.texts(ofColumn);
            int width = texts.stream().mapToInt(Line::width).max().orElse(0);
            for (int row = 0; row < written.length; row++) {
                if (column < cells.get(row).size()) {
                    String text = texts.get(row);
                    written[row].append(' ').append(text).append(" ".repeat(width - Line.width(text))).append(" |");
                }
            }
        }
        for (int row = 0; row < written.length; row++) {
            rows[plain.get(row)] = written[row].toString();
        }
    }

    /** What stands between the bars of a row. */
    private static List<List<Piece>> cells(Item row) {
        List<List<Piece>> result = new ArrayList<>();
        List<Piece> cell = new ArrayList<>();
        for (Piece piece : row.pieces().subList(1, row.pieces().size())) {
            if (((Sign) piece).is(Kind.BAR)) {
                result.add(cell);
                cell = new ArrayList<>();
            } else {
                cell.add(piece);
            }
        }
        return result;
    }
}
