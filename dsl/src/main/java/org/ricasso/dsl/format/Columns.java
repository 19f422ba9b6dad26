package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.format.Cells.Shape;

/**
 * How many blanks lead each cell of neighbours to its column.
 *
 * <p>A cell that is much longer than the shortest of its column pushes no other: it and what follows it stand with single
 * gaps.
 */
final class Columns {
    /** The most blanks that a cell is moved by for its neighbours' sake. */
    private static final int MOST = 24;
    /** The same for what a field is for: types are long, and there are few other things on their lines. */
    private static final int MOST_BEHIND_TYPE = 40;

    private final List<Cells> rows;
    /** Blanks behind each cell of each row but the last. */
    private final int[][] gaps;
    /** Blanks before the first number of a step. */
    private final int[] leads;

    private Columns(List<Cells> rows) {
        this.rows = rows;
        this.gaps = new int[rows.size()][];
        this.leads = new int[rows.size()];
    }

    /** @param rows neighbours in their order */
    static Columns of(List<Cells> rows) {
        Columns result = new Columns(rows);
        Map<Shape, List<Integer>> groups = new EnumMap<>(Shape.class);
        for (int row = 0; row < rows.size(); row++) {
            groups.computeIfAbsent(rows.get(row).shape(), s -> new ArrayList<>()).add(row);
            result.gaps[row] = new int[rows.get(row).cells().size() - 1];
            Arrays.fill(result.gaps[row], 1);
        }
        groups.forEach((shape, group) -> {
            if (shape == Shape.STEP || shape == Shape.CHANGED_STEP) {
                result.numbers(group, shape == Shape.STEP ? 0 : 1);
            }
            if (shape != Shape.ALONE) {
                result.align(group);
            }
        });
        return result;
    }

    /** Blanks behind a cell. */
    int gap(int row, int cell) {
        return gaps[row][cell];
    }

    /** Blanks before a cell, apart from the gap behind the one before it. */
    int lead(int row, int cell) {
        return cell == number(row) ? leads[row] : 0;
    }

    private int number(int row) {
        return switch (rows.get(row).shape()) {
            case STEP -> 0;
            case CHANGED_STEP -> 1;
            default -> -1;
        };
    }

    private void numbers(List<Integer> group, int cell) {
        int widest = group.stream().mapToInt(row -> width(row, cell)).max().orElse(0);
        group.forEach(row -> leads[row] = widest - width(row, cell));
    }

    private void align(List<Integer> group) {
        List<Integer> in = new ArrayList<>(group);
        for (int cell = 0; ; cell++) {
            int at = cell;
            in.removeIf(row -> rows.get(row).cells().size() <= at + 1);
            int least = in.stream().mapToInt(row -> width(row, at)).min().orElse(0);
            in.removeIf(row -> width(row, at) > least + most(row, at));
            int widest = in.stream().mapToInt(row -> width(row, at)).max().orElse(0);
            if (in.isEmpty()) {
                break;
            }
            for (int row : in) {
                gaps[row][at] = widest - width(row, at) + 1;
            }
        }
        for (int row : group) {
            int last = gaps[row].length - 1;
            if (last >= 0) {
                gaps[row][last] += rows.get(row).gap() - 1;
            }
        }
    }

    private int most(int row, int cell) {
        Cells cells = rows.get(row);
        return cells.gap() > 1 && cell == cells.cells().size() - 2 ? MOST_BEHIND_TYPE : MOST;
    }

    /** The width of a cell, what leads to its number included. */
    private int width(int row, int cell) {
        return lead(row, cell) + Line.width(Spacing.flat(rows.get(row).cells().get(cell)));
    }
}
