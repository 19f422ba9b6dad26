package org.ricasso.dsl.format;

import java.util.List;
import java.util.Optional;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/** Says where a text first differs from its layout. Blanks, which nobody sees, are shown. */
public final class LayoutFinding {
    private LayoutFinding() {}

    /**
     * The first difference, or nothing where the text is laid out.
     *
     * @param file the text as it stands
     * @param laid the text laid out
     * @param remedy what to do
     */
    public static Optional<Diagnostic> of(SourceFile file, Formatted laid, String remedy) {
        if (laid.text().equals(file.text())) {
            return Optional.empty();
        }
        SourceFile other = new SourceFile(file.name(), laid.text(), file.shipped());
        int lines = Math.min(file.lineCount(), other.lineCount());
        int line = 1;
        while (line <= lines && file.lineText(line).equals(other.lineText(line))) {
            line++;
        }
        return Optional.of(line <= lines ? otherLine(file, line, other.lineText(line), remedy) : otherEnds(file, other, remedy));
    }

    private static Diagnostic otherLine(SourceFile file, int line, String laid, String remedy) {
        String text = file.lineText(line);
        int same = 0;
        while (same < Math.min(text.length(), laid.length()) && text.charAt(same) == laid.charAt(same)) {
            same++;
        }
        int start = file.lineStart(line);
        return finding(new Span(file, start + same, start + text.length()), "the layout differs from here on", remedy)
                .because("the line stands as   " + visible(text)).because("it is laid out as    " + visible(laid));
    }

    private static Diagnostic otherEnds(SourceFile file, SourceFile other, String remedy) {
        int end = file.text().length();
        if (file.lineCount() < other.lineCount()) {
            return finding(new Span(file, end, end), "the last line has no end", remedy);
        }
        if (file.lineCount() > other.lineCount()) {
            int start = file.lineStart(other.lineCount());
            return finding(new Span(file, start, start), "nothing stands behind the last line", remedy);
        }
        int carriageReturn = file.text().indexOf('\r');
        return finding(new Span(file, carriageReturn, carriageReturn), "a line ends in CR or CR LF here, not in LF", remedy);
    }

    /** A difference that a text does not show: a byte order mark, which is not part of it. */
    public static Diagnostic byteOrderMark(SourceFile file, String remedy) {
        return finding(new Span(file, 0, 0), "a byte order mark stands before the text", remedy);
    }

    private static Diagnostic finding(Span span, String text, String remedy) {
        return Diagnostic.error("layout", new Mark(span, text)).remedy(new Remedy(remedy, List.of()));
    }

    private static String visible(String line) {
        return line.isEmpty() ? "an empty line" : line.replace(' ', '·').replace('\t', '→').replace('\u00A0', '·')
                .replace('\u202F', '·');
    }
}
