package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/**
 * A diagnostic, whole.
 *
 * @param severity {@code error}, {@code warning} or {@code note}
 * @param name its stable name
 * @param primary the place to look at first
 * @param others the other places
 * @param because the reasons
 * @param also further findings on the same value
 * @param remedies what to do
 * @param sources where the knowledge comes from
 */
public record Finding(String severity, String name, Place primary, List<Place> others, List<String> because,
        List<String> also, List<Cure> remedies, List<String> sources) {

    /**
     * A marked place with its line.
     *
     * @param at file, line and column
     * @param text what is said of it
     * @param line the line's number
     * @param before the line before the mark
     * @param marked what is marked
     * @param after the line behind the mark
     */
    public record Place(String at, String text, String line, String before, String marked, String after) {}

    /** A remedy and the changes that it makes, in words. */
    public record Cure(String text, List<String> changes) {}

    static Finding of(Diagnostic diagnostic) {
        List<Cure> cures = new ArrayList<>();
        for (Remedy remedy : diagnostic.remedies()) {
            cures.add(new Cure(Marks.clean(remedy.text()), remedy.edits().stream().map(Finding::change).toList()));
        }
        return new Finding(diagnostic.severity().word(), diagnostic.name(), place(diagnostic.primary()),
                diagnostic.others().stream().map(Finding::place).toList(), clean(diagnostic.because()),
                clean(diagnostic.also()), cures, clean(diagnostic.sources()));
    }

    private static List<String> clean(List<String> texts) {
        return texts.stream().map(Marks::clean).toList();
    }

    private static String change(Edit edit) {
        String at = "line " + edit.span().line() + ": ";
        String old = Marks.clean(edit.span().text().strip());
        String now = Marks.clean(edit.replacement().strip());
        if (old.isEmpty()) {
            return at + "write " + now;
        }
        return now.isEmpty() ? at + "leave out " + old : at + "write " + now + " for " + old;
    }

    private static Place place(Mark mark) {
        Span span = mark.span();
        SourceFile file = span.file();
        int line = span.line();
        String text = Marks.clean(file.lineText(line));
        int from = Math.min(span.start() - file.lineStart(line), text.length());
        int to = Math.max(from, Math.min(span.end() - file.lineStart(line), text.length()));
        return new Place(Marks.clean(span.toString()), Marks.clean(mark.text()), String.valueOf(line), text.substring(0, from).stripLeading(),
                text.substring(from, to), text.substring(to));
    }
}
