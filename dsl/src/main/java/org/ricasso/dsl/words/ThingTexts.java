package org.ricasso.dsl.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Field;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.syntax.Head;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.syntax.Path;
import org.ricasso.dsl.syntax.RouteItem;
import org.ricasso.dsl.syntax.Step;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** Finds the texts of one thing or route: {@code blade.tested-on}, {@code route.170.hardness.place}. */
final class ThingTexts {
    private final Vocabulary vocabulary;
    private final List<Printed.Line> lines = new ArrayList<>();
    private final List<Printed.Label> rates = new ArrayList<>();

    ThingTexts(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    List<Printed.Line> lines() {
        return lines;
    }

    List<Printed.Label> rates() {
        return rates;
    }

    void title(Head head) {
        lines.add(Lines.title(head, true));
    }

    /** @param fields what may stand in the block, by name; empty where that is not known */
    void block(String before, Block block, Map<String, Field> fields) {
        for (Block.Item item : block.items()) {
            if (item instanceof Block.Item.Entry entry) {
                Field.TypeName type = type(entry.path(), fields);
                if (entry.value() instanceof Expression value) {
                    lines.addAll(Lines.of(before + entry.path().text(), value, type));
                    rates.addAll(Lines.rates(value));
                } else if (entry.value() instanceof Grid grid) {
                    grid(before + entry.path().text(), grid);
                }
            } else if (item instanceof Block.Item.Nested nested) {
                Field field = fields.get(nested.name().text());
                block(before + nested.name().text() + ".", nested.block(),
                        field == null ? Map.of() : Lines.byName(kindOf(field.type())));
            } else if (item instanceof Block.Item.Route route) {
                route(route.items());
            }
        }
    }

    private void grid(String path, Grid grid) {
        for (Grid.Row row : grid.rows()) {
            for (int i = 0; i < row.cells().size(); i++) {
                if (row.cells().get(i) != null) {
                    lines.addAll(Lines.of(path + "." + grid.head().get(i).text(), row.cells().get(i), null));
                }
            }
        }
    }

    /** The declared type at a path, through the kinds of its blocks; null where that is not known. */
    private Field.TypeName type(Path path, Map<String, Field> fields) {
        Map<String, Field> level = fields;
        Field.TypeName type = null;
        for (Name name : path.names()) {
            Field field = level.get(name.text());
            if (field == null) {
                return null;
            }
            type = field.type();
            level = Lines.byName(kindOf(type));
        }
        return type;
    }

    private Declaration.KindDeclaration kindOf(Field.TypeName type) {
        return type instanceof Field.TypeName.Named named ? vocabulary.kind(named.name().text()) : null;
    }

    void route(List<RouteItem> items) {
        for (RouteItem item : items) {
            if (item instanceof RouteItem.Own own) {
                step(own.step());
            } else if (item instanceof RouteItem.Change change) {
                step(change.step());
            } else if (item instanceof RouteItem.Add add) {
                step(add.step());
            } else if (item instanceof RouteItem.Cell cell && cell.value() instanceof Expression value) {
                lines.addAll(Lines.of("route." + cell.number().text() + "." + cell.setting().text(), value, null));
            }
        }
    }

    private void step(Step step) {
        String before = "route." + step.number().text() + ".";
        Declaration.OperationDeclaration operation = vocabulary.operationText(step.operation().text());
        Map<String, Field> settings = operation == null ? Map.of() : Lines.byName(operation.takes());
        Map<String, Field> measurement = Lines.byName(vocabulary.kind("measurement"));
        for (Block.Item item : step.block().items()) {
            if (item instanceof Block.Item.Nested nested) {
                block(before + nested.name().text() + ".", nested.block(), measurement);
            } else {
                block(before, new Block(List.of(item), step.block().span()), settings);
            }
        }
    }
}
