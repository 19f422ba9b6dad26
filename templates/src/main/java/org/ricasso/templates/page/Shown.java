package org.ricasso.templates.page;

import java.util.List;

/**
 * A value as it stands on a page.
 *
 * @param lines its lines, one for most values
 * @param computed whether it was computed, that is, nobody wrote it and nobody measured it
 * @param byDefault whether the vocabulary's default stands because nothing was written
 */
public record Shown(List<Line> lines, boolean computed, boolean byDefault) {
    public Shown {
        lines = List.copyOf(lines);
    }

    /** A text that somebody wrote. */
    static Shown of(String text) {
        return new Shown(List.of(new Line("", text, "", "")), false, false);
    }

    /** All lines as one text, without marks. */
    String text() {
        StringBuilder result = new StringBuilder();
        for (Line line : lines) {
            result.append(result.isEmpty() ? "" : "; ")
                    .append(line.at().isEmpty() ? "" : line.at() + " ")
                    .append(line.text());
        }
        return result.toString();
    }

    /**
     * A line of a value.
     *
     * @param at the station or the entry that the line belongs to, or empty
     * @param text the value; of a computed one the aim
     * @param title what a thing is called beside its name, or the ends of a number whose deviations differ, or empty
     * @param reach the aim and all scatter, where that is more than the aim, else empty
     */
    public record Line(String at, String text, String title, String reach) {}
}
