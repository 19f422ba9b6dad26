package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.format.Formatted;
import org.ricasso.dsl.format.Formatter;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/** Edits after which a text is laid out, where it was before. */
final class LaidOut {
    private static final int MOST_LINES = 4000;

    private LaidOut() {}

    /** Edits that say the same, laid out in each text that is laid out as it stands. */
    static List<Edit> edits(List<Edit> edits) {
        Map<SourceFile, List<Edit>> byFile = new LinkedHashMap<>();
        edits.forEach(edit -> byFile.computeIfAbsent(edit.span().file(), f -> new ArrayList<>()).add(edit));
        List<Edit> result = new ArrayList<>();
        byFile.forEach((file, own) -> result.addAll(of(file, own)));
        return result;
    }

    private static List<Edit> of(SourceFile file, List<Edit> edits) {
        if (!Formatter.format(file).text().equals(file.text())) {
            return edits;
        }
        StringBuilder applied = new StringBuilder(file.text());
        edits.stream().sorted(Comparator.comparing(Edit::span).reversed())
                .forEach(e -> applied.replace(e.span().start(), e.span().end(), e.replacement()));
        Formatted after = Formatter.format(new SourceFile(file.name(), applied.toString(), file.shipped()));
        return after.diagnostics().isEmpty() ? between(file, after.text()) : edits;
    }

    /** What makes one text of the other, whole lines at a time. */
    private static List<Edit> between(SourceFile file, String other) {
        List<String> before = lines(file.text());
        List<String> after = lines(other);
        int same = 0;
        while (same < before.size() && same < after.size() && before.get(same).equals(after.get(same))) {
            same++;
        }
        int end = 0;
        while (end < before.size() - same && end < after.size() - same
                && before.get(before.size() - 1 - end).equals(after.get(after.size() - 1 - end))) {
            end++;
        }
        List<String> was = before.subList(same, before.size() - end);
        List<String> is = after.subList(same, after.size() - end);
        int start = length(before.subList(0, same));
        if (was.size() + is.size() > MOST_LINES) {
            return List.of(new Edit(new Span(file, start, start + length(was)), String.join("", is)));
        }
        return hunks(file, start, was, is);
    }

    private static List<Edit> hunks(SourceFile file, int start, List<String> was, List<String> is) {
        int[][] common = new int[was.size() + 1][is.size() + 1];
        for (int i = was.size() - 1; i >= 0; i--) {
            for (int j = is.size() - 1; j >= 0; j--) {
                common[i][j] = was.get(i).equals(is.get(j)) ? common[i + 1][j + 1] + 1 : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        List<Edit> edits = new ArrayList<>();
        int i = 0;
        int j = 0;
        int offset = start;
        while (i < was.size() || j < is.size()) {
            int from = offset;
            StringBuilder text = new StringBuilder();
            while (i < was.size() || j < is.size()) {
                if (i < was.size() && j < is.size() && was.get(i).equals(is.get(j))) {
                    break;
                }
                if (i < was.size() && (j == is.size() || common[i + 1][j] >= common[i][j + 1])) {
                    offset += was.get(i++).length();
                } else {
                    text.append(is.get(j++));
                }
            }
            if (offset > from || !text.isEmpty()) {
                edits.add(new Edit(new Span(file, from, offset), text.toString()));
            }
            while (i < was.size() && j < is.size() && was.get(i).equals(is.get(j))) {
                offset += was.get(i++).length();
                j++;
            }
        }
        return edits;
    }

    private static int length(List<String> lines) {
        return lines.stream().mapToInt(String::length).sum();
    }

    /** Lines with their ends. */
    private static List<String> lines(String text) {
        List<String> result = new ArrayList<>();
        int from = 0;
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
            result.add(text.substring(from, end + 1));
            from = end + 1;
        }
        if (from < text.length()) {
            result.add(text.substring(from));
        }
        return result;
    }
}
