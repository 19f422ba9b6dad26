package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.List;

/**
 * A line with the comment behind it.
 *
 * @param text the line without its comment
 * @param comment the comment, or {@code null}
 * @param hangs whether the comment goes on with that of the line before
 */
record Line(String text, String comment, boolean hangs) {
    private static final int GAP = 4;
    /** The most blanks, apart from the gap, that a comment is moved by for its neighbours' sake. */
    private static final int MOST = 40;

    static Line of(String text) {
        return new Line(text, null, false);
    }

    /** Columns that a text takes: code points. */
    static int width(String text) {
        return text.codePointCount(0, text.length());
    }

    /** The lines written out, their comments in one column as far as that moves none of them far. */
    static List<String> written(List<Line> lines) {
        int least = lines.stream().filter(Line::leads).mapToInt(l -> width(l.text)).min().orElse(0);
        int widest = lines.stream().filter(Line::leads).mapToInt(l -> width(l.text)).filter(w -> w <= least + MOST)
                .max().orElse(0);
        List<String> result = new ArrayList<>(lines.size());
        int column = 0;
        for (Line line : lines) {
            if (line.comment == null) {
                result.add(line.text);
            } else {
                column = line.hangs ? column : Math.max(width(line.text), widest) + GAP;
                result.add(line.text + " ".repeat(column - width(line.text)) + line.comment);
            }
        }
        return result;
    }

    private boolean leads() {
        return comment != null && !hangs;
    }
}
