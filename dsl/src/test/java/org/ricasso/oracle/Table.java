package org.ricasso.oracle;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A table with a head, as comma separated values; cells in quotes may hold commas. */
final class Table {
    private Table() {}

    static List<Map<String, String>> rows(String name) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(Table.class.getResourceAsStream(name),
                StandardCharsets.UTF_8))) {
            List<String> head = cells(in.readLine());
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                List<String> cells = cells(line);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < head.size(); i++) {
                    row.put(head.get(i), i < cells.size() ? cells.get(i) : "");
                }
                rows.add(row);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
