package org.ricasso.dsl.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ricasso.dsl.diagnostics.Nearest;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Table;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Origin;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;

/** Says what the texts say of a name: rule, operation, kind, property, table, calculation or thing. */
public final class Explainer {
    static final String FROM = "from";
    private final Vocabulary vocabulary;

    public Explainer(House house) {
        this.vocabulary = house.vocabulary();
    }

    /** Plain lines; empty for a name that nothing has. */
    public List<String> explain(String name) {
        List<String> lines = new ArrayList<>();
        Rule rule = vocabulary.rule(name);
        if (rule != null) {
            rule(rule, lines);
        }
        Operation operation = vocabulary.operation(name);
        if (operation != null) {
            operation(operation, lines);
        }
        if (vocabulary.kind(name) != null) {
            kind(name, lines);
        }
        if (vocabulary.table(name) != null) {
            table(vocabulary.table(name), lines);
        } else if (vocabulary.tableText(name) != null) {
            rowsBefore(vocabulary.tableText(name), lines);
        }
        if (vocabulary.calculation(name) != null) {
            calculation(vocabulary.calculation(name), lines);
        }
        for (Property property : vocabulary.properties()) {
            if (property.path().equals(name) || property.name().equals(name)) {
                property(property, lines);
            }
        }
        for (Thing thing : vocabulary.things()) {
            if (thing.name().equals(name)) {
                thing(thing, lines);
            }
        }
        return lines;
    }

    /** Names near one that nothing has, best first. */
    public List<String> near(String name) {
        Set<String> all = new TreeSet<>(vocabulary.kindNames());
        vocabulary.rules().forEach(r -> all.add(r.name()));
        vocabulary.operations().forEach(o -> all.add(o.name()));
        all.addAll(vocabulary.tableNames());
        all.addAll(vocabulary.calculationNames());
        vocabulary.properties().forEach(p -> all.add(p.path()));
        vocabulary.things().forEach(t -> all.add(t.name()));
        return Nearest.to(name, all);
    }

    private static void head(List<String> lines, String what, String name, String title) {
        if (!lines.isEmpty()) {
            lines.add("");
        }
        lines.add(what + " " + name + (title == null || title.equals(name) ? "" : " \"" + title + "\""));
    }

    private void head(List<String> lines, String what, String name, String title, Span span) {
        head(lines, what, name, title);
        Span replaced = vocabulary.replaced(what, name);
        entry(lines, FROM, at(span) + " (" + Origin.of(span) + (replaced == null ? "" : ", replaces " + at(replaced)
                + ", " + Origin.of(replaced)) + ")");
    }

    private static String at(Span span) {
        return span.file().name() + ":" + span.line();
    }

    private static void entry(List<String> lines, String name, String text) {
        if (!text.isEmpty()) {
            lines.add("  " + pad(name, 9) + " " + text);
        }
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private void rule(Rule rule, List<String> lines) {
        head(lines, "rule", rule.name(), rule.title(), rule.syntax().head().name().span());
        entry(lines, "for", rule.subjectName());
        entry(lines, "level", rule.level().name().toLowerCase(java.util.Locale.ROOT));
        for (Declaration.Effect.Let let : rule.syntax().lets()) {
            entry(lines, "let", let.name() + ": " + oneLine(let.value().span()));
        }
        for (Declaration.ValueEntry entry : rule.syntax().entries()) {
            if (Set.of("when", "require", "say").contains(entry.name().text())) {
                entry(lines, entry.name().text(), oneLine(entry.value().span()));
            }
        }
        if (!rule.syntax().remedy().isEmpty()) {
            entry(lines, "remedy", rule.syntax().remedy().stream().map(e -> e.name() + ": " + oneLine(e.value().span()))
                    .collect(Collectors.joining("; ")));
        }
        entry(lines, "because", rule.because());
        entry(lines, "source", rule.source());
        for (Declaration.Example example : rule.syntax().examples()) {
            entry(lines, example.outcome().text(), example.bindings().stream()
                    .map(b -> b.path().text() + ": " + oneLine(b.value().span())).collect(Collectors.joining("; ")));
        }
    }

    private void operation(Operation operation, List<String> lines) {
        head(lines, "operation", operation.name(), operation.title(), operation.span());
        // one column of names for all of it
        String from = lines.remove(lines.size() - 1);
        lines.addAll(new OperationLines(vocabulary, operation).lines(from.strip().substring(FROM.length()).strip()));
    }

    private void kind(String name, List<String> lines) {
        Declaration.KindDeclaration kind = vocabulary.kind(name);
        head(lines, "kind", name, kind.head().title() == null ? null : kind.head().title().written(),
                kind.head().name().span());
        vocabulary.entries(name).values().forEach(e -> entry(lines, "entry", entryType(e)));
        entry(lines, "things", String.join(", ", vocabulary.thingNames(name)));
    }

    static String entryType(EntryType entry) {
        StringBuilder text = new StringBuilder(entry.name()).append(": ").append(Type.describe(entry.type()));
        if (entry.within() != null) {
            text.append(", within ").append(QuantityFormat.show(entry.within()));
        }
        if (entry.usual() != null) {
            text.append(", usually ").append(QuantityFormat.show(entry.usual()));
        }
        if (entry.byDefault() != null) {
            text.append(", by default ").append(oneLine(entry.byDefault().span()));
        }
        if (entry.optional()) {
            text.append(", may be left out");
        }
        if (entry.madeAs() != null) {
            text.append(", made as ").append(entry.madeAs());
        }
        return text.toString();
    }

    private void property(Property property, List<String> lines) {
        head(lines, "property", property.path(), null, property.span());
        entry(lines, "is", Type.describe(property.type()));
        entry(lines, "starts", property.starts() == null ? "unknown, until a step leaves it"
                : oneLine(property.starts().span()));
        entry(lines, "left by", vocabulary.operations().stream()
                .filter(o -> o.leaves().stream().anyMatch(l -> l.property() == property)).map(Operation::name)
                .collect(Collectors.joining(", ")));
        entry(lines, "needed by", vocabulary.operations().stream()
                .filter(o -> o.needs().stream().anyMatch(n -> n.property() == property)).map(Operation::name)
                .collect(Collectors.joining(", ")));
    }

    private void table(Table table, List<String> lines) {
        head(lines, "table", table.name(), table.title(), table.span());
        for (int i = 0; i < table.columns().size(); i++) {
            Table.Column column = table.columns().get(i);
            String role = switch (column.role()) {
                case KEY -> "key";
                case HOLDS -> "key, the row's range holds it";
                case BETWEEN -> "key, between rows";
                case FOUND -> "found";
            };
            entry(lines, "column", column.name() + ": " + Type.describe(column.type()) + ", " + role + range(table, i));
        }
        entry(lines, "rows", Long.toString(table.rows().stream().filter(r -> r.layer() == Table.Layer.TABLE).count()));
        table.rows().stream().filter(r -> r.layer() != Table.Layer.TABLE).forEach(r -> entry(lines, "before", at(r.span())
                + " (" + Origin.of(r.span()) + "): " + row(table, r) + (r.source().isEmpty() ? "" : "; " + r.source())));
        entry(lines, "source", table.source());
        Set<String> sources = table.rows().stream().map(Table.Row::source).filter(s -> !s.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        sources.stream().limit(12).forEach(s -> entry(lines, "row from", s));
        if (sources.size() > 12) {
            entry(lines, "", "and " + (sources.size() - 12) + " more sources, beside the rows");
        }
    }

    /** A table that only puts its rows before those of another. */
    private void rowsBefore(Declaration.TableDeclaration text, List<String> lines) {
        head(lines, "table", text.head().name().text(), text.head().title() == null ? null : text.head().title().written(),
                text.head().name().span());
        for (Declaration.ValueEntry entry : text.entries()) {
            entry(lines, entry.name().text(), oneLine(entry.value().span()));
        }
    }

    /** A row in words: what it is asked with, then what it gives. */
    private static String row(Table table, Table.Row row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            if (row.cells()[i] != null && !table.columns().get(i).name().equals("source")) {
                cells.add(table.columns().get(i).name() + " " + Shows.show(row.cells()[i]));
            }
        }
        return String.join(", ", cells);
    }

    private static String range(Table table, int column) {
        Interval range = null;
        Quantity like = null;
        for (Table.Row row : table.rows()) {
            if (row.cells()[column] instanceof Value.Num num) {
                like = num.quantity();
                range = range == null ? like.aim() : range.hull(like.aim());
            }
        }
        return range == null ? "" : ", " + QuantityFormat.band(like, range);
    }

    private void calculation(Calculation calculation, List<String> lines) {
        head(lines, "calculation", calculation.name(), calculation.title());
        Calculation.Provider provider = calculation.provider();
        entry(lines, "from", provider.type() + (provider.type().isEmpty() ? "" : " ") + "("
                + Origin.of(provider.library()) + ")");
        for (Calculation.Argument argument : calculation.arguments()) {
            Quantity like = Quantity.of(argument.measure(), 0,
                    vocabulary.units().shownFor(argument.measure().dimension()));
            entry(lines, "takes", argument.name() + ": " + vocabulary.nameOf(argument.measure()) + ", "
                    + QuantityFormat.band(like, new Interval(argument.least(), argument.most())) + switch (argument.sense()) {
                        case RISES -> "; the result rises with it";
                        case FALLS -> "; the result falls with it";
                        case NEITHER -> "";
                    });
        }
        entry(lines, "gives", vocabulary.nameOf(calculation.result()));
        entry(lines, "source", calculation.source());
    }

    private void thing(Thing thing, List<String> lines) {
        head(lines, thing.kind(), thing.name(), thing.title(), thing.span());
        entries(thing.entries(), "", lines);
    }

    private static void entries(Map<String, Value> entries, String prefix, List<String> lines) {
        entries.forEach((name, value) -> {
            if (value instanceof Value.Entries block) {
                entries(block.entries(), prefix + name + ".", lines);
            } else {
                lines.add("  " + pad(prefix + name + ":", 20) + " " + Shows.show(value));
            }
        });
    }

    static String oneLine(Span span) {
        return span.text().strip().replaceAll("\\s*\\R\\s*", " ");
    }
}
