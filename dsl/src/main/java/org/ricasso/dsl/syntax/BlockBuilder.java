package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.grammar.SpecParser;

/** Makes blocks, grids, steps and fields of what ANTLR read. */
final class BlockBuilder {
    private final Spans spans;
    private final ExpressionBuilder expressions;
    private final List<Diagnostic> findings;

    BlockBuilder(Spans spans, ExpressionBuilder expressions, List<Diagnostic> findings) {
        this.spans = spans;
        this.expressions = expressions;
        this.findings = findings;
    }

    Block block(SpecParser.BlockContext context) {
        List<Block.Item> items = new ArrayList<>();
        for (SpecParser.ItemContext item : context.item()) {
            if (item instanceof SpecParser.EntryContext entry) {
                items.add(new Block.Item.Entry(path(entry.path()), entryValue(entry.entryValue()), spans.of(entry)));
            } else if (item instanceof SpecParser.NestedContext nested) {
                items.add(new Block.Item.Nested(spans.name(nested.WORD()), block(nested.block()), spans.of(nested)));
            } else {
                SpecParser.RouteContext route = (SpecParser.RouteContext) item;
                items.add(new Block.Item.Route(spans.optionalName(route.name()), routeItems(route.routeBlock()),
                        spans.of(route.start)));
            }
        }
        return new Block(items, spans.of(context));
    }

    List<RouteItem> routeItems(SpecParser.RouteBlockContext context) {
        return context.routeItem().stream().map(this::routeItem).toList();
    }

    private RouteItem routeItem(SpecParser.RouteItemContext context) {
        Span span = spans.of(context);
        if (context instanceof SpecParser.ReworkContext rework) {
            return new RouteItem.Rework(spans.name(rework.NUMBER(0)), spans.name(rework.NUMBER(1)), block(rework.block()),
                    spans.of(rework.start, rework.NUMBER(1).getSymbol()));
        }
        if (context instanceof SpecParser.PartRouteContext part) {
            return new RouteItem.Part(spans.name(part.word()), spans.name(part.name()), span);
        }
        Step step = step(((SpecParser.RouteStepContext) context).step());
        return switch (context.start.getType()) {
            case SpecParser.CHANGE -> new RouteItem.Change(step, step.span());
            case SpecParser.ADD -> new RouteItem.Add(step, step.span());
            case SpecParser.OMIT -> new RouteItem.Omit(step, step.span());
            default -> new RouteItem.Own(step, step.span());
        };
    }

    private Step step(SpecParser.StepContext context) {
        Name number = spans.name(context.NUMBER());
        if (!number.text().chars().allMatch(c -> c >= '0' && c <= '9')) {
            findings.add(SyntaxFindings.stepNumberNotWhole(number));
        }
        Name centre = spans.optionalName(context.name());
        Name operation = spans.name(context.word());
        Span head = number.span().to(centre != null ? centre.span() : operation.span());
        Block block = context.block() != null ? block(context.block())
                : new Block(List.of(), new Span(head.file(), head.end(), head.end()));
        return new Step(number, operation, centre, block, head);
    }

    Path path(SpecParser.PathContext context) {
        return new Path(context.word().stream().map(spans::name).toList(), spans.of(context));
    }

    Path column(SpecParser.ColumnContext context) {
        List<Name> names = new ArrayList<>();
        names.add(spans.name(context.word()));
        context.name().forEach(n -> names.add(spans.name(n)));
        return new Path(names, spans.of(context));
    }

    EntryValue entryValue(SpecParser.EntryValueContext context) {
        return context.grid() != null ? grid(context.grid()) : expressions.value(context.value());
    }

    Grid grid(SpecParser.GridContext context) {
        List<Path> head = context.gridHead().column().stream().map(this::column).toList();
        List<SpecParser.GridRowContext> read = context.gridRow();
        Span headSpan = spans.of(context.gridHead());
        int cells = read.isEmpty() ? head.size() : read.get(0).cell().size();
        if (read.size() > 1 && cells != head.size() && read.stream().allMatch(r -> r.cell().size() == cells)) {
            findings.add(SyntaxFindings.headOfOtherLength(headSpan, head.size(), spans.of(read.get(0)), cells));
            return new Grid(head, List.of(), spans.of(context));
        }
        List<Grid.Row> rows = new ArrayList<>();
        int before = head.size();
        for (SpecParser.GridRowContext row : read) {
            int own = row.cell().size();
            if (own == head.size()) {
                rows.add(row(row));
            } else if (own == before) {
                // rows below each other that are wrong alike are one mistake: they belong to another head
                findings.set(findings.size() - 1, findings.get(findings.size() - 1).and(new Mark(spans.of(row), "and this row")));
            } else {
                findings.add(SyntaxFindings.rowOfOtherLength(spans.of(row), own, headSpan, head.size()));
            }
            before = own;
        }
        return new Grid(head, rows, spans.of(context));
    }

    private Grid.Row row(SpecParser.GridRowContext context) {
        List<Expression> cells = new ArrayList<>();
        for (SpecParser.CellContext cell : context.cell()) {
            cells.add(cell.value() == null ? null : expressions.value(cell.value()));
        }
        return new Grid.Row(cells, spans.of(context));
    }

    List<Field> fields(SpecParser.FieldBlockContext context) {
        return context.field().stream().map(this::field).toList();
    }

    Field field(SpecParser.FieldContext context) {
        return new Field(spans.name(context.word()), type(context.type()),
                context.mark().stream().map(this::mark).toList(), spans.of(context));
    }

    private Field.TypeName type(SpecParser.TypeContext context) {
        Span span = spans.of(context);
        if (context instanceof SpecParser.OneOfContext oneOf) {
            return new Field.TypeName.OneOf(oneOf.word().stream().map(spans::name).toList(), span);
        }
        if (context instanceof SpecParser.ListOfContext listOf) {
            return new Field.TypeName.ListOf(type(listOf.type()), span);
        }
        SpecParser.NamedContext named = (SpecParser.NamedContext) context;
        return new Field.TypeName.Named(spans.name(named.word(0)), spans.optionalName(named.word(1)), span);
    }

    private Field.Mark mark(SpecParser.MarkContext context) {
        Span span = spans.of(context);
        if (context instanceof SpecParser.MadeAsContext made) {
            return new Field.Mark.MadeAs(path(made.path()), span);
        }
        if (context instanceof SpecParser.ValueMarkContext valued) {
            Expression value = expressions.expression(valued.expr());
            return switch (valued.start.getType()) {
                case SpecParser.STARTS -> new Field.Mark.Starts(value, span);
                case SpecParser.DEFAULT -> new Field.Mark.Default(value, span);
                case SpecParser.USUAL -> new Field.Mark.Usual(value, span);
                default -> new Field.Mark.Within(value, span);
            };
        }
        return new Field.Mark.Plain(switch (context.start.getType()) {
            case SpecParser.OPTIONAL -> Field.Mark.Word.OPTIONAL;
            case SpecParser.SIZED -> Field.Mark.Word.SIZED;
            case SpecParser.KEY -> Field.Mark.Word.KEY;
            case SpecParser.HOLDS -> Field.Mark.Word.HOLDS;
            case SpecParser.BETWEEN -> Field.Mark.Word.BETWEEN;
            default -> Field.Mark.Word.FOUND;
        }, span);
    }
}
