package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ricasso.dsl.source.Limits;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Numbers;
import org.ricasso.shared.quantity.Quantity;

/** Straight interpolation between rows over a box of bands. */
final class Interpolation {
    private final Table table;
    private final List<Integer> columns;
    private final Arithmetic arithmetic;
    private final Set<Table.Row> used = new LinkedHashSet<>();
    private Table.Answer refusal;

    /** @param columns the columns between whose rows is interpolated */
    Interpolation(Table table, List<Integer> columns, Arithmetic arithmetic) {
        this.table = table;
        this.columns = columns;
        this.arithmetic = arithmetic;
    }

    Table.Answer over(List<Table.Row> rows, List<Interval> bands, List<Integer> keys) {
        List<List<Double>> points = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            TreeSet<Double> at = new TreeSet<>();
            for (Table.Row row : rows) {
                double line = position(row, i);
                if (line > bands.get(i).least() && line < bands.get(i).most()) {
                    at.add(line);
                }
            }
            at.add(bands.get(i).least());
            at.add(bands.get(i).most());
            points.add(List.copyOf(at));
        }
        long count = 1;
        for (List<Double> at : points) {
            count = Math.min(count, Limits.LOOK_UP_POINTS) * at.size();
        }
        if (count > Limits.LOOK_UP_POINTS) {
            return Table.Answer.refuse(table.name() + " has too many rows inside what is asked for: more than "
                    + Limits.LOOK_UP_POINTS + " points between them", keys.indexOf(columns.get(0)));
        }
        Map<String, Value> result = null;
        int[] index = new int[columns.size()];
        do {
            double[] point = new double[index.length];
            for (int i = 0; i < index.length; i++) {
                point[i] = points.get(i).get(index[i]);
            }
            Map<String, Value> here = at(rows, point, 0, bands, keys);
            if (here == null) {
                return refusal;
            }
            result = result == null ? here : join(result, here);
        } while (next(index, points));
        return new Table.Answer(new Value.Entries(result), used, "", -1);
    }

    private static boolean next(int[] index, List<List<Double>> points) {
        for (int i = 0; i < index.length; i++) {
            if (++index[i] < points.get(i).size()) {
                return true;
            }
            index[i] = 0;
        }
        return false;
    }

    private Map<String, Value> join(Map<String, Value> a, Map<String, Value> b) {
        Map<String, Value> result = new LinkedHashMap<>();
        a.forEach((name, value) -> result.put(name,
                value instanceof Value.Txt ? value : Joins.join(value, b.get(name), arithmetic)));
        return result;
    }

    private double position(Table.Row row, int i) {
        return ((Value.Num) row.cells()[columns.get(i)]).quantity().aim().least();
    }

    private Map<String, Value> at(List<Table.Row> rows, double[] point, int level, List<Interval> bands,
            List<Integer> keys) {
        if (level == columns.size()) {
            used.add(rows.get(0));
            return table.found(rows.get(0));
        }
        NavigableMap<Double, List<Table.Row>> lines = new TreeMap<>();
        for (Table.Row row : rows) {
            lines.computeIfAbsent(position(row, level), p -> new ArrayList<>()).add(row);
        }
        double asked = point[level];
        Map.Entry<Double, List<Table.Row>> below = lines.floorEntry(asked);
        Map.Entry<Double, List<Table.Row>> above = lines.ceilingEntry(asked);
        // nine digits: 1050 °C in kelvins is the row of 1050 °C
        if (below == null && above != null && Numbers.compare(above.getKey(), asked) == 0) {
            below = above;
        }
        if (above == null && below != null && Numbers.compare(below.getKey(), asked) == 0) {
            above = below;
        }
        if (below == null || above == null) {
            int column = columns.get(level);
            refusal = Table.Answer.refuse(table.beyond(column, bands.get(level), lines.firstKey(), lines.lastKey(),
                    ((Value.Num) rows.get(0).cells()[column]).quantity()), keys.indexOf(column));
            return null;
        }
        Map<String, Value> low = at(below.getValue(), point, level + 1, bands, keys);
        if (low == null || below.getKey().equals(above.getKey())) {
            return low;
        }
        Map<String, Value> high = at(above.getValue(), point, level + 1, bands, keys);
        if (high == null) {
            return null;
        }
        double share = (asked - below.getKey()) / (above.getKey() - below.getKey());
        Map<String, Value> result = new LinkedHashMap<>();
        low.forEach((name, value) -> result.put(name, mix(value, high.get(name), share)));
        return result;
    }

    private Value mix(Value a, Value b, double share) {
        if (a instanceof Value.Num x && b instanceof Value.Num y) {
            Quantity mixed = Arithmetic.between(x.quantity(), y.quantity(), share);
            return new Value.Num(mixed);
        }
        return a instanceof Value.Txt ? a : Joins.join(a, b, arithmetic);
    }
}
