package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ricasso.dsl.source.Origin;
import org.ricasso.dsl.source.Span;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Numbers;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;

/**
 * A table of rows with keys. A look-up over bands is evaluated at the corners and at every grid line inside, straight
 * between rows, and refused beyond the last row.
 *
 * @param name its name
 * @param title its title
 * @param columns its columns in order
 * @param rows its rows in order
 * @param source where the whole table comes from, or empty
 * @param span where it is declared
 */
public record Table(String name, String title, List<Column> columns, List<Row> rows, String source, Span span) {

    /** What a column is for. */
    public enum Role { KEY, HOLDS, BETWEEN, FOUND }

    /** A column. */
    public record Column(String name, Type type, Role role) {}

    /** Who put a row where it is asked: rows of a later layer that fit are asked alone. */
    public enum Layer {
        /** The table itself. */
        TABLE,
        /** A library that puts rows before another's. */
        LIBRARY,
        /** The works. */
        WORKS
    }

    /**
     * A row; a cell is {@code null} where nothing is written.
     *
     * @param span where it is written
     * @param source the row's source, or empty
     * @param layer who put it there
     */
    public record Row(Value[] cells, Span span, String source, Layer layer) {
        /** File and line; of a library its name, too. */
        public String place() {
            String file = span.file().name();
            String library = Origin.of(span).library();
            return (library.isEmpty() ? "" : library + "/") + file.substring(file.lastIndexOf('/') + 1) + " line "
                    + span.line();
        }
    }

    /** A look-up's answer: the found entries and the rows used, or a refusal of the key with this index. */
    record Answer(Value.Entries found, Set<Row> used, String refusal, int refusedKey) {
        static Answer refuse(String why, int key) {
            return new Answer(null, Set.of(), why, key);
        }
    }

    /** Indexes of the key columns in order. */
    List<Integer> keys() {
        List<Integer> result = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).role() != Role.FOUND) {
                result.add(i);
            }
        }
        return result;
    }

    /** The type of a row. */
    Type.RowOf rowType() {
        Map<String, Type> types = new LinkedHashMap<>();
        for (Column column : columns) {
            if (column.role() == Role.FOUND) {
                types.put(column.name(), column.type());
            }
        }
        return new Type.RowOf(name, types);
    }

    /** @param asked one value per column of {@link #keys()}, in order */
    Answer lookUp(Value[] asked, Arithmetic arithmetic) {
        Answer aim = lookUp(asked, arithmetic, false);
        if (aim.found() == null) {
            return aim;
        }
        boolean scattered = false;
        for (Value value : asked) {
            scattered |= value instanceof Value.Num num && num.quantity().hasScatter();
        }
        if (!scattered) {
            return aim;
        }
        Answer reach = lookUp(asked, arithmetic, true);
        if (reach.found() == null) {
            return reach;
        }
        Map<String, Value> both = new LinkedHashMap<>();
        aim.found().entries().forEach((name, value) -> {
            Value wide = reach.found().entries().get(name);
            both.put(name, value instanceof Value.Num a && wide instanceof Value.Num b
                    ? new Value.Num(new Quantity(a.quantity().measure(), a.quantity().aim(),
                            a.quantity().reach().hull(b.quantity().reach()), a.quantity().nominal(),
                            a.quantity().shown()))
                    : value);
        });
        return new Answer(new Value.Entries(both), reach.used(), "", -1);
    }

    private Answer lookUp(Value[] asked, Arithmetic arithmetic, boolean reach) {
        List<Row> fitting = rows;
        List<Integer> keys = keys();
        List<Integer> between = new ArrayList<>();
        List<Interval> bands = new ArrayList<>();
        for (int k = 0; k < keys.size(); k++) {
            int column = keys.get(k);
            if (columns.get(column).role() == Role.BETWEEN) {
                between.add(column);
                bands.add(band(asked[k], reach));
                continue;
            }
            List<Row> next = new ArrayList<>();
            for (Row row : fitting) {
                if (fits(row.cells()[column], asked[k], columns.get(column).role(), reach)) {
                    next.add(row);
                }
            }
            if (next.isEmpty()) {
                return Answer.refuse(noRow(column, asked[k], fitting), k);
            }
            fitting = mostSpecific(next, column);
        }
        // rows of the works' own that fit take the place of all others: a curve is measured whole or not at all
        List<Row> asking = fitting;
        Layer last = Layer.TABLE;
        for (Row row : fitting) {
            if (row.layer().compareTo(last) > 0) {
                last = row.layer();
            }
        }
        if (last != Layer.TABLE) {
            Layer layer = last;
            asking = fitting.stream().filter(row -> row.layer() == layer).toList();
        }
        if (between.isEmpty()) {
            return join(asking, arithmetic);
        }
        return new Interpolation(this, between, arithmetic).over(asking, bands, keys);
    }

    private Answer join(List<Row> fitting, Arithmetic arithmetic) {
        Map<String, Value> found = found(fitting.get(0));
        for (Row row : fitting.subList(1, fitting.size())) {
            found(row).forEach((name, value) -> found.merge(name, value, (a, b) -> Joins.join(a, b, arithmetic)));
        }
        return new Answer(new Value.Entries(found), new LinkedHashSet<>(fitting), "", -1);
    }

    /** The found cells of a row; an empty one says nothing. */
    Map<String, Value> found(Row row) {
        Map<String, Value> result = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            if (column.role() == Role.FOUND) {
                result.put(column.name(), row.cells()[i] != null ? row.cells()[i]
                        : new Value.Unknown(row.place() + " says nothing of " + column.name(), false));
            }
        }
        return result;
    }

    private static boolean fits(Value cell, Value asked, Role role, boolean reach) {
        if (cell == null) {
            return true;
        }
        if (role == Role.HOLDS) {
            return cell instanceof Value.Num range && band(asked, reach).isInside(range.quantity().aim());
        }
        if (cell instanceof Value.Num number && asked instanceof Value.Num other) {
            return Numbers.compare(number.quantity().aim().least(), other.quantity().aim().least()) == 0
                    && Numbers.compare(number.quantity().aim().most(), other.quantity().aim().most()) == 0;
        }
        Value plain = Comparisons.plain(asked);
        if (cell instanceof Value.Words a && plain instanceof Value.Words b) {
            return b.words().containsAll(a.words());
        }
        return cell.equals(plain);
    }

    /** Rows that name the value win over rows that leave the cell empty. */
    private static List<Row> mostSpecific(List<Row> rows, int column) {
        boolean some = false;
        boolean all = true;
        for (Row row : rows) {
            some |= row.cells()[column] != null;
            all &= row.cells()[column] != null;
        }
        return all || !some ? rows : rows.stream().filter(r -> r.cells()[column] != null).toList();
    }

    /** Rows as a source: file, lines, and what stands beside them where that is one thing; then the table's own. */
    String cite(Set<Row> used) {
        StringBuilder text = new StringBuilder();
        String file = "";
        for (Row row : used) {
            int line = row.place().lastIndexOf(" line ");
            boolean again = row.place().substring(0, line).equals(file);
            file = row.place().substring(0, line);
            text.append(again ? ", " : (text.isEmpty() ? "" : "; ") + file + (used.size() > 1 ? " lines " : " line "))
                    .append(row.place().substring(line + 6));
        }
        Set<String> sources = new TreeSet<>();
        used.forEach(row -> sources.add(row.source()));
        if (sources.size() == 1 && !sources.contains("")) {
            text.append(" (").append(sources.iterator().next()).append(')');
        }
        // what is said of the table is not said of rows that others put before it
        boolean own = used.stream().allMatch(row -> row.layer() == Layer.TABLE);
        return text + (source.isEmpty() || !own ? "" : "; " + source);
    }

    static Interval band(Value value, boolean reach) {
        Quantity quantity = ((Value.Num) value).quantity();
        return reach ? quantity.reach() : quantity.aim();
    }

    private String noRow(int column, Value asked, List<Row> left) {
        Set<String> known = new TreeSet<>();
        for (Row row : left) {
            if (row.cells()[column] != null) {
                known.add(Shows.show(row.cells()[column]));
            }
        }
        String has = known.size() > 12 ? known.size() + " others"
                : known.stream().collect(Collectors.joining(", "));
        return name + " has no row for " + columns.get(column).name() + " " + Shows.show(asked)
                + (has.isEmpty() ? "" : ", it has " + has);
    }

    String beyond(int column, Interval asked, double least, double most, Quantity like) {
        return name + " has rows from " + QuantityFormat.band(like, new Interval(least, most)) + " for "
                + columns.get(column).name() + ", asked for " + QuantityFormat.band(like, asked);
    }
}
