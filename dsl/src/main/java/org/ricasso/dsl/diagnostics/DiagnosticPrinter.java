package org.ricasso.dsl.diagnostics;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.source.Span;

/**
 * Prints diagnostics for people: name, place, the lines involved with marks, then reasons and remedies.
 *
 * <pre>
 * error: tempered-too-soft
 *   cooks-200.ricasso:25:43
 *   25 |         170 temper { temperature: 245 ± 5 °C }
 *      |                                   ^^^^^^^^^^ leaves 54.8..55.7 HRC
 *    9 |         hardness:  55..58 HRC
 *      |                    ---------- asked for here
 *   because  …
 *   remedy   …
 * </pre>
 */
public final class DiagnosticPrinter {
    private static final String RESET = "\u001B[0m";
    private static final String BOLD = "\u001B[1m";
    private static final String FAINT = "\u001B[2m";

    private final Signs signs;
    private final boolean colour;

    /**
     * @param charset what the console can show; other signs are written in ASCII ({@code ±} as {@code +/-})
     * @param colour whether ANSI colours are written
     */
    public DiagnosticPrinter(Charset charset, boolean colour) {
        this.signs = new Signs(charset);
        this.colour = colour;
    }

    /** The diagnostic on several lines, each closed by a line feed. */
    public String print(Diagnostic diagnostic) {
        StringBuilder out = new StringBuilder();
        String tint = tint(diagnostic.severity());
        out.append(dress(tint, diagnostic.severity().word() + ": ")).append(dress(BOLD, signs.show(diagnostic.name())))
                .append('\n');
        Span primary = diagnostic.primary().span();
        out.append("  ").append(signs.show(primary.toString())).append('\n');
        excerpts(diagnostic, tint, out);
        lines("because", diagnostic.because(), out);
        lines("also", diagnostic.also(), out);
        lines("remedy", diagnostic.remedies().stream().map(Remedy::text).toList(), out);
        lines("source", diagnostic.sources(), out);
        return out.toString();
    }

    /** The diagnostic on one line without its end, {@code file:[line,column] name text}, as tools match it. */
    public String line(Diagnostic diagnostic) {
        Span span = diagnostic.primary().span();
        return signs.show(span.file().name() + ":[" + span.line() + "," + span.column() + "] " + diagnostic.name() + " "
                + diagnostic.primary().text().replaceAll("\\R", " "));
    }

    /** Any other line for the same console: signs that it lacks are written in ASCII. */
    public String show(String line) {
        return signs.show(line);
    }

    private void excerpts(Diagnostic diagnostic, String tint, StringBuilder out) {
        Mark primary = diagnostic.primary();
        List<Mark> marks = new ArrayList<>();
        marks.add(primary);
        // Others on the primary's line follow it at once, so that the line is shown once.
        diagnostic.others().stream().filter(m -> sameLine(m, primary)).forEach(marks::add);
        diagnostic.others().stream().filter(m -> !sameLine(m, primary)).forEach(marks::add);
        int digits = marks.stream().mapToInt(m -> Integer.toString(m.span().line()).length()).max().orElse(1);
        String gutter = dress(FAINT, " ".repeat(digits + 2) + " |");
        Mark last = null;
        for (Mark mark : marks) {
            Excerpt excerpt = Excerpt.of(mark.span(), signs);
            if (last != null && !last.span().file().name().equals(mark.span().file().name())) {
                out.append("  ").append(signs.show(mark.span().toString())).append('\n');
            }
            if (last == null || !sameLine(last, mark)) {
                String number = Integer.toString(mark.span().line());
                out.append(dress(FAINT, "  " + " ".repeat(digits - number.length()) + number + " |"));
                out.append(excerpt.line().isEmpty() ? "" : " " + excerpt.line()).append('\n');
            }
            boolean first = mark == primary && last == null;
            out.append(gutter).append(' ').append(excerpt.padding());
            String underline = (first ? "^" : "-").repeat(excerpt.width());
            String text = signs.show(mark.text().replaceAll("\\R", " "));
            out.append(first ? dress(tint, (underline + " " + text).stripTrailing())
                    : (underline + " " + text).stripTrailing()).append('\n');
            last = mark;
        }
    }

    private static boolean sameLine(Mark a, Mark b) {
        return a.span().file().name().equals(b.span().file().name()) && a.span().line() == b.span().line();
    }

    private void lines(String label, List<String> texts, StringBuilder out) {
        for (String text : texts) {
            String head = dress(BOLD, label) + " ".repeat(9 - label.length());
            for (String line : text.split("\\R")) {
                out.append("  ").append(head).append(signs.show(line)).append('\n');
                head = " ".repeat(9);
            }
        }
    }

    private String dress(String code, String text) {
        return colour ? code + text + RESET : text;
    }

    private static String tint(Severity severity) {
        return switch (severity) {
            case ERROR -> "\u001B[1;31m";
            case WARNING -> "\u001B[1;33m";
            case NOTE -> "\u001B[1;36m";
        };
    }
}
