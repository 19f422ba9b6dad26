package org.ricasso.dsl.vocabulary;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Findings;
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
 * A family: products from one grid. Each row is a product that takes over another and writes what its columns say.
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
     * @param span the row
     */
    public record Row(ThingDeclaration product, Map<String, Span> written, Span span) {}

    /** Reads {@code family name like product { sizes: … }}; null after a finding. */
    static Family read(ThingDeclaration declaration, String productKind, Findings findings) {
        Grid sizes = null;
        for (Block.Item item : declaration.block().items()) {
            if (item instanceof Block.Item.Entry entry && entry.path().text().equals("sizes")
                    && entry.value() instanceof Grid grid) {
                sizes = grid;
            } else {
                findings.error("family-unclear", item.span(), "a family has sizes: and its rows, nothing else");
            }
        }
        if (sizes == null || declaration.head().like() == null) {
            findings.error("family-unclear", declaration.span(), "a family is like a " + productKind + " and has sizes:");
            return null;
        }
        List<Row> rows = new ArrayList<>();
        for (Grid.Row row : sizes.rows()) {
            Row read = row(declaration, productKind, sizes, row, findings);
            if (read != null) {
                rows.add(read);
            }
        }
        return new Family(declaration.head().like(), rows);
    }

    private static Row row(ThingDeclaration family, String productKind, Grid sizes, Grid.Row row, Findings findings) {
        Name name = null;
        Text title = null;
        List<Block.Item> items = new ArrayList<>();
        List<RouteItem> route = new ArrayList<>();
        Map<String, Span> written = new LinkedHashMap<>();
        for (int i = 0; i < sizes.head().size(); i++) {
            Path column = sizes.head().get(i);
            Expression cell = row.cells().get(i);
            if (cell == null) {
                continue;
            }
            String first = column.names().get(0).text();
            if (column.text().equals(productKind)) {
                name = new Name(cell.span().text().strip(), cell.span());
            } else if (column.text().equals("title")) {
                title = cell instanceof Expression.TextLiteral text ? text.text() : null;
            } else if (first.equals("route") && column.names().size() > 2) {
                route.add(new RouteItem.Cell(column.names().get(1),
                        new Path(column.names().subList(2, column.names().size()), column.span()), cell, cell.span()));
                written.put(column.text(), cell.span());
            } else {
                items.add(new Block.Item.Entry(column, cell, cell.span()));
                written.put(column.text(), cell.span());
            }
        }
        if (name == null || !name.text().matches("[\\p{L}_][\\p{L}_0-9-]*")) {
            findings.error("family-unclear", row.span(), "each row names its " + productKind + " in the column "
                    + productKind);
            return null;
        }
        if (!route.isEmpty()) {
            items.add(new Block.Item.Route(null, route, row.span()));
        }
        ThingDeclaration product = new Declaration.ThingDeclaration(new Name(productKind, name.span()),
                new Head(name, title, new Name(family.head().like().text(), name.span()), null), new Block(items, row.span()), name.span());
        return new Row(product, written, row.span());
    }
}
