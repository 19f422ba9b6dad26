package org.ricasso.dsl.vocabulary;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Declaration.ThingDeclaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.syntax.Head;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.syntax.Path;
import org.ricasso.dsl.syntax.RouteItem;
import org.ricasso.dsl.syntax.Text;

/**
 * A family: products from one table. Each row is a product that takes over another and writes what its columns say. A wide
 * table may be written as several grids; rows of the same name belong together.
 *
 * @param like the product it takes over
 * @param rows its rows
 */
public record Family(Name like, List<Row> rows) {
    public Family {
        rows = List.copyOf(rows);
    }

    /**
     * A row.
     *
     * @param product the product as if it were written in full; it takes the other one over where it has its name
     * @param written the paths of columns in which the row has a value, with the value's place
     * @param empty the paths of columns in which the row has none, with the row's name in that grid
     * @param span the row
     */
    public record Row(ThingDeclaration product, Map<String, Span> written, Map<String, Span> empty, Span span) {}

    /** Reads {@code family name like product { sizes: … }}; null after a finding. */
    static Family read(ThingDeclaration declaration, String productKind, Findings findings) {
        List<Grid> grids = new ArrayList<>();
        for (Block.Item item : declaration.block().items()) {
            if (item instanceof Block.Item.Entry entry && entry.path().text().equals("sizes")
                    && entry.value() instanceof Grid grid) {
                grids.add(grid);
            } else {
                findings.error("family-unclear", item.span(), "a family has sizes: and its rows, nothing else");
            }
        }
        if (grids.isEmpty() || declaration.head().like() == null) {
            findings.error("family-unclear", declaration.span(), "a family is like a " + productKind + " and has sizes:");
            return null;
        }
        Map<String, Size> sizes = new LinkedHashMap<>();
        Map<String, Span> columns = new LinkedHashMap<>();
        for (Grid grid : grids) {
            for (Path column : grid.head()) {
                Span earlier = column.text().equals(productKind) ? null
                        : columns.putIfAbsent(column.text(), column.span());
                if (earlier != null) {
                    findings.add(Diagnostic.error("declared-twice", new Mark(column.span(), "the column " + column.text()
                            + " stands twice")).and(new Mark(earlier, "first here")));
                }
            }
            for (Grid.Row row : grid.rows()) {
                row(productKind, grid, row, sizes, findings);
            }
        }
        return new Family(declaration.head().like(), sizes.values().stream()
                .map(size -> size.row(productKind, declaration.head().like().text())).toList());
    }

    /** A size while its rows, one of each grid, are put together. */
    private static final class Size {
        private final Name name;
        private Grid grid;
        private final Span span;
        private Text title;
        private final List<Block.Item> items = new ArrayList<>();
        private final List<RouteItem> route = new ArrayList<>();
        private final Map<String, Span> written = new LinkedHashMap<>();
        private final Map<String, Span> empty = new LinkedHashMap<>();

        private Size(Name name, Grid grid, Span span) {
            this.name = name;
            this.grid = grid;
            this.span = span;
        }

        private void cell(Path column, Expression cell) {
            if (column.text().equals("title")) {
                title = cell instanceof Expression.TextLiteral text ? text.text() : null;
            } else if (column.names().get(0).text().equals("route") && column.names().size() > 2) {
                route.add(new RouteItem.Cell(column.names().get(1),
                        new Path(column.names().subList(2, column.names().size()), column.span()), cell, cell.span()));
                written.put(column.text(), cell.span());
            } else {
                items.add(new Block.Item.Entry(column, cell, cell.span()));
                written.put(column.text(), cell.span());
            }
        }

        private Row row(String productKind, String like) {
            List<Block.Item> all = new ArrayList<>(items);
            if (!route.isEmpty()) {
                all.add(new Block.Item.Route(null, route, span));
            }
            return new Row(new Declaration.ThingDeclaration(new Name(productKind, name.span()),
                    new Head(name, title, new Name(like, name.span()), null), new Block(all, span), name.span()), written, empty, span);
        }
    }

    private static void row(String productKind, Grid grid, Grid.Row row, Map<String, Size> sizes,
            Findings findings) {
        Name name = null;
        for (int i = 0; i < grid.head().size(); i++) {
            if (grid.head().get(i).text().equals(productKind) && row.cells().get(i) != null) {
                Span span = row.cells().get(i).span();
                name = new Name(span.text().strip(), span);
            }
        }
        if (name == null || !name.text().matches("[\\p{L}_][\\p{L}_0-9-]*")) {
            findings.error("family-unclear", row.span(), "each row names its " + productKind + " in the column "
                    + productKind);
            return;
        }
        Size known = sizes.get(name.text());
        if (known != null && known.grid == grid) {
            findings.add(Diagnostic.error("declared-twice", new Mark(name.span(), "a row for " + name + " stands already"))
                    .and(new Mark(known.name.span(), "first here")));
            return;
        }
        Size size = known == null ? new Size(name, grid, row.span()) : known;
        size.grid = grid;
        sizes.put(name.text(), size);
        for (int i = 0; i < grid.head().size(); i++) {
            if (row.cells().get(i) == null) {
                size.empty.put(grid.head().get(i).text(), name.span());
            } else if (!grid.head().get(i).text().equals(productKind)) {
                size.cell(grid.head().get(i), row.cells().get(i));
            }
        }
    }
}
