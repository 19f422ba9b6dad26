package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.EntryValue;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Field;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.syntax.Head;
import org.ricasso.dsl.syntax.Path;
import org.ricasso.dsl.syntax.RouteItem;
import org.ricasso.dsl.syntax.Step;

/** Prints declarations, laid out by chance. */
final class RandomPrint {
    private final Random random;
    private final RandomWriter out;
    private final RandomValuePrint values;

    RandomPrint(Random random) {
        this.random = random;
        this.out = new RandomWriter(random);
        this.values = new RandomValuePrint(out);
    }

    RandomWriter print(List<Declaration> declarations) {
        if (out.chance(50)) {
            out.lineEnd();
        }
        for (Declaration declaration : declarations) {
            print(declaration);
            out.end();
        }
        return out;
    }

    private void print(Declaration declaration) {
        if (declaration instanceof Declaration.KindDeclaration kind) {
            head("kind", kind.head());
            out.block(items(kind.fields(), this::field));
        } else if (declaration instanceof Declaration.WorkpieceDeclaration piece) {
            out.signs("workpiece", "of", piece.product().text());
            List<Runnable> items = items(piece.fields(), this::field);
            items.addAll(items(piece.parts(), this::part));
            out.block(items);
        } else if (declaration instanceof Declaration.OperationDeclaration operation) {
            head("operation", operation.head());
            out.block(operation(operation));
        } else if (declaration instanceof Declaration.TableDeclaration table) {
            head("table", table.head());
            List<Runnable> items = items(table.entries(), this::valueEntry);
            section(items, "columns", items(table.columns(), this::field));
            if (table.rows() != null) {
                items.add(() -> entry("rows", table.rows()));
            }
            out.block(items);
        } else if (declaration instanceof Declaration.RuleDeclaration rule) {
            head("rule", rule.head());
            List<Runnable> items = items(rule.lets(), this::let);
            items.addAll(items(rule.entries(), this::valueEntry));
            section(items, "remedy", items(rule.remedy(), this::valueEntry));
            items.addAll(items(rule.examples(), this::example));
            out.block(items);
        } else if (declaration instanceof Declaration.RouteDeclaration route) {
            head("route", route.head());
            out.block(items(route.items(), this::routeItem));
        } else if (declaration instanceof Declaration.WordsDeclaration words) {
            out.signs("words", words.language().text());
            out.block(items(words.items(), this::wordsItem));
        } else if (declaration instanceof Declaration.ThingDeclaration thing) {
            head(thing.kind().text(), thing.head());
            block(thing.block());
        }
    }

    private static <T> List<Runnable> items(List<T> list, java.util.function.Consumer<T> print) {
        List<Runnable> result = new ArrayList<>();
        list.forEach(element -> result.add(() -> print.accept(element)));
        return result;
    }

    /** Puts a section somewhere among the items, or leaves it out where it is empty. */
    private void section(List<Runnable> items, String word, List<Runnable> inner) {
        if (!inner.isEmpty() || out.chance(20)) {
            items.add(random.nextInt(items.size() + 1), () -> {
                out.signs(word);
                out.block(inner);
            });
        }
    }

    private void head(String what, Head head) {
        out.signs(what, head.name().text());
        if (head.title() != null) {
            values.text(head.title());
        }
        if (head.like() != null) {
            out.signs("like", head.like().text());
        }
        if (head.replaces() != null) {
            out.signs("replaces", head.replaces().text());
        }
    }

    private List<Runnable> operation(Declaration.OperationDeclaration operation) {
        List<Runnable> items = items(operation.entries(), this::valueEntry);
        section(items, "takes", items(operation.takes(), this::field));
        section(items, "needs", items(operation.needs(), need -> {
            values.path(need.path());
            out.signs(":");
            values.value(need.condition());
            out.signs("else");
            values.text(need.complaint());
        }));
        section(items, "leaves", items(operation.leaves(), effect -> {
            if (effect instanceof Declaration.Effect.Let let) {
                let(let);
            } else if (effect instanceof Declaration.Effect.Leave leave) {
                entry(leave.path(), leave.value());
            }
        }));
        section(items, "time", items(operation.time(), this::valueEntry));
        section(items, "instruct", items(operation.instruct(), values::text));
        return items;
    }

    private void let(Declaration.Effect.Let let) {
        out.signs("let", let.name().text(), ":");
        values.value(let.value());
    }

    private void valueEntry(Declaration.ValueEntry entry) {
        entry(entry.name().text(), entry.value());
    }

    private void example(Declaration.Example example) {
        out.signs("example", example.outcome().text());
        out.block(items(example.bindings(), binding -> entry(binding.path(), binding.value())));
    }

    private void part(Declaration.Part part) {
        out.signs("part", part.name().text());
        if (part.title() != null) {
            values.text(part.title());
        }
        out.block(items(part.fields(), this::field));
    }

    private void wordsItem(Declaration.WordsItem item) {
        if (item instanceof Declaration.Translation translation) {
            translation(translation);
        } else if (item instanceof Declaration.WordsOf of) {
            out.signs(of.what().text(), of.name().text());
            if (of.title() != null) {
                values.text(of.title());
            }
            List<Runnable> items = items(of.entries(), this::translation);
            section(items, "instruct", items(of.instruct(), values::text));
            out.block(items);
        }
    }

    private void translation(Declaration.Translation translation) {
        values.path(translation.path());
        out.signs(":");
        values.text(translation.text());
    }

    private void field(Field field) {
        out.signs(field.name().text(), ":");
        type(field.type());
        field.marks().forEach(this::mark);
    }

    private void type(Field.TypeName type) {
        if (type instanceof Field.TypeName.OneOf oneOf) {
            out.signs("one", "of", "(");
            values.separated(oneOf.words(), word -> out.signs(word.text()));
            out.signs(")");
        } else if (type instanceof Field.TypeName.ListOf list) {
            out.signs("list", "of");
            type(list.element());
        } else if (type instanceof Field.TypeName.Named named) {
            out.signs(named.name().text());
            if (named.along() != null) {
                out.signs("along", named.along().text());
            }
        }
    }

    private void mark(Field.Mark mark) {
        if (mark instanceof Field.Mark.Plain plain) {
            out.signs(plain.word().name().toLowerCase(java.util.Locale.ROOT));
        } else if (mark instanceof Field.Mark.MadeAs made) {
            out.signs("made", "as");
            values.path(made.path());
        } else if (mark instanceof Field.Mark.Default value) {
            out.signs("default");
            values.expression(value.value());
        } else if (mark instanceof Field.Mark.Starts value) {
            out.signs("starts");
            values.expression(value.value());
        } else if (mark instanceof Field.Mark.Within value) {
            out.signs("within");
            values.expression(value.value());
        } else if (mark instanceof Field.Mark.Usual value) {
            out.signs("usual");
            values.expression(value.value());
        }
    }

    private void block(Block block) {
        out.block(items(block.items(), item -> {
            if (item instanceof Block.Item.Entry entry) {
                entry(entry.path(), entry.value());
            } else if (item instanceof Block.Item.Nested nested) {
                out.signs(nested.name().text());
                block(nested.block());
            } else if (item instanceof Block.Item.Route route) {
                out.signs("route");
                if (route.like() != null) {
                    out.signs("like", route.like().text());
                }
                out.block(items(route.items(), this::routeItem));
            }
        }));
    }

    private void routeItem(RouteItem item) {
        if (item instanceof RouteItem.Own own) {
            step(own.step());
        } else if (item instanceof RouteItem.Change change) {
            out.signs("change");
            step(change.step());
        } else if (item instanceof RouteItem.Add add) {
            out.signs("add");
            step(add.step());
        } else if (item instanceof RouteItem.Omit omit) {
            out.signs("omit");
            step(omit.step());
        } else if (item instanceof RouteItem.Rework rework) {
            out.signs("rework", rework.from().text(), "to", rework.to().text());
            block(rework.block());
        } else if (item instanceof RouteItem.Part part) {
            out.signs("part", part.part().text(), "like", part.like().text());
        }
    }

    private void step(Step step) {
        out.signs(step.number().text(), step.operation().text());
        if (step.centre() != null) {
            out.signs("at", step.centre().text());
        }
        if (!step.block().items().isEmpty()) {
            block(step.block());
        }
    }

    private void entry(Path path, EntryValue value) {
        values.path(path);
        colonAnd(value);
    }

    private void entry(String name, EntryValue value) {
        out.signs(name);
        colonAnd(value);
    }

    private void colonAnd(EntryValue value) {
        out.signs(":");
        if (value instanceof Expression expression) {
            values.value(expression);
        } else if (value instanceof Grid grid) {
            out.newRow();
            out.signs("|");
            grid.head().forEach(column -> {
                values.path(column);
                out.signs("|");
            });
            grid.rows().forEach(row -> {
                out.newRow();
                out.signs("|");
                row.cells().forEach(cell -> {
                    if (cell != null) {
                        values.value(cell);
                    }
                    out.signs("|");
                });
            });
        }
    }
}
