package org.ricasso.dsl.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.syntax.Name;

/** A value along an axis that is taken over, with other values at some of its stations. */
final class Stations {
    private final Map<String, Place> places = new LinkedHashMap<>();

    /** A station's name and the value that is written for it. */
    private record Place(Name name, Expression value) {}

    void put(Name name, Expression value) {
        places.put(name.text(), new Place(name, value));
    }

    /**
     * The rows with other values where they are written. Its place is that of the written values if all are, else that of
     * the rows taken over.
     *
     * @param what the entry or setting, for a finding where the rows have no such station
     */
    Grid over(Grid base, String what, Findings findings) {
        Map<String, Place> left = new LinkedHashMap<>(places);
        List<Grid.Row> rows = new ArrayList<>();
        List<Span> own = new ArrayList<>();
        for (Grid.Row row : base.rows()) {
            Place place = row.cells().get(0) == null ? null : left.remove(row.cells().get(0).span().text().strip());
            if (place == null || row.cells().size() != 2) {
                rows.add(row);
            } else {
                rows.add(new Grid.Row(List.of(row.cells().get(0), place.value()), place.value().span()));
            }
        }
        // one that an earlier cell replaced has no bars about it either
        rows.stream().filter(r -> r.cells().size() == 2 && r.cells().get(1) != null && r.span().equals(r.cells().get(1).span()))
                .forEach(r -> own.add(r.span()));
        List<String> known = base.rows().stream().filter(r -> r.cells().get(0) != null)
                .map(r -> r.cells().get(0).span().text().strip()).toList();
        left.values().forEach(place -> findings.unknownName(place.name().span(), "station of " + what, place.name().text(),
                known));
        return new Grid(base.head(), rows, isWhole(own, rows) ? whole(own) : base.span());
    }

    private static boolean isWhole(List<Span> own, List<Grid.Row> rows) {
        return !own.isEmpty() && own.size() == rows.size() && own.stream().allMatch(span -> span.file() == own.get(0).file());
    }

    private static Span whole(List<Span> spans) {
        int start = spans.stream().mapToInt(Span::start).min().orElseThrow();
        int end = spans.stream().mapToInt(Span::end).max().orElseThrow();
        return new Span(spans.get(0).file(), start, end);
    }
}
