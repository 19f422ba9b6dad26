package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.format.Cells.Section;
import org.ricasso.dsl.format.Piece.Block;
import org.ricasso.dsl.format.Piece.Comment;
import org.ricasso.dsl.format.Piece.Entry;
import org.ricasso.dsl.format.Piece.Item;

/**
 * Lays out the lines of a block. Items that follow each other without an empty line and without a block of several lines
 * between them are neighbours, whose parts stand below each other.
 */
final class BlockLayout {
    static final int INDENT = 4;
    /** Columns up to which a block may stand on one line. */
    static final int WIDTH = 120;

    private final List<Entry> entries;
    private final int indent;
    private final Section section;
    private final List<String> lines = new ArrayList<>();

    private BlockLayout(Block block, int indent, Section section) {
        this.entries = block.entries();
        this.indent = indent;
        this.section = section;
    }

    /** The lines of a whole text. */
    static List<String> lines(Block text) {
        return new BlockLayout(text, 0, Section.TEXT).lay();
    }

    private List<String> lay() {
        List<Entry> neighbours = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            boolean tall = entry instanceof Item item && isTall(item);
            boolean spaced = i > 0 && entry.spaced() && !inGrid(i);
            if (tall || spaced) {
                layNeighbours(neighbours);
            }
            if (spaced) {
                lines.add("");
            }
            if (tall) {
                layTall((Item) entry);
            } else {
                neighbours.add(entry);
            }
        }
        layNeighbours(neighbours);
        return lines;
    }

    /** Whether it is a row, or a comment before one. */
    private boolean inGrid(int i) {
        int at = i;
        while (at < entries.size() && entries.get(at) instanceof Comment) {
            at++;
        }
        return at < entries.size() && ((Item) entries.get(at)).isRow();
    }

    /** Whether one of its blocks takes several lines. */
    private boolean isTall(Item item) {
        List<Block> blocks = item.pieces().stream().filter(Block.class::isInstance).map(Block.class::cast).toList();
        return blocks.stream().anyMatch(b -> !b.oneLine()) || blocks.stream().anyMatch(b -> !b.entries().isEmpty())
                && indent + Line.width(Spacing.flat(item.pieces())) > WIDTH;
    }

    private void layTall(Item item) {
        List<Piece> pieces = item.pieces();
        StringBuilder line = new StringBuilder(" ".repeat(indent));
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i) instanceof Block block && !(block.entries().isEmpty() && block.comment() == null)) {
                line.append(" {");
                lines.addAll(Line.written(List.of(new Line(line.toString(), block.comment(), false))));
                lines.addAll(new BlockLayout(block, indent + INDENT, Section.inside(item)).lay());
                line = new StringBuilder(" ".repeat(indent)).append('}');
            } else {
                Spacing.append(pieces, i, i > 0, line);
            }
        }
        lines.addAll(Line.written(List.of(new Line(line.toString(), item.comment(), false))));
    }

    /** Lays out neighbours and forgets them. */
    private void layNeighbours(List<Entry> neighbours) {
        List<Item> items = neighbours.stream().filter(Item.class::isInstance).map(Item.class::cast).toList();
        List<Cells> cells = items.stream().map(item -> Cells.of(item, section)).toList();
        Columns columns = Columns.of(cells);
        GridLayout grids = GridLayout.of(neighbours);
        List<Line> laid = new ArrayList<>();
        int row = 0;
        for (int i = 0; i < neighbours.size(); i++) {
            Entry entry = neighbours.get(i);
            String left = " ".repeat(grids.holds(i) ? indent + INDENT : indent);
            if (entry instanceof Comment comment) {
                boolean hangs = comment.hangs() && !laid.isEmpty();
                laid.add(hangs ? new Line("", comment.text(), true) : Line.of(left + comment.text()));
            } else if (grids.row(i) != null) {
                laid.add(new Line(left + grids.row(i), ((Item) entry).comment(), false));
                row++;
            } else {
                new ItemLayout(cells.get(row), columns, row, left.length()).lay(((Item) entry).comment(), laid);
                row++;
            }
        }
        lines.addAll(Line.written(laid));
        neighbours.clear();
    }
}
