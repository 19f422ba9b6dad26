package org.ricasso.dsl.vocabulary;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.LimitFindings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Checker;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.Table;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.source.Limits;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.ExpressionResult;
import org.ricasso.dsl.syntax.Field;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.syntax.Parser;

/** Reads tables: their columns, and rows from a grid or from a CSV file beside the text. */
final class TableReader {
    private final Vocabulary vocabulary;
    private final Findings findings;
    private final Map<String, SourceFile> data;

    TableReader(Vocabulary vocabulary, Findings findings, Map<String, SourceFile> data) {
        this.vocabulary = vocabulary;
        this.findings = findings;
        this.data = data;
    }

    void read(Declaration.TableDeclaration declaration) {
        String name = declaration.head().name().text();
        List<Table.Column> columns = columns(declaration);
        List<Table.Row> rows = new ArrayList<>();
        int known = findings.count();
        String source = "";
        for (Declaration.ValueEntry entry : declaration.entries()) {
            switch (entry.name().text()) {
                case "from" -> csv(entry, name, columns, rows);
                case "source" -> source = UnitReader.text(entry.value());
                case "expect" -> { }
                default -> findings.unknownName(entry.name().span(), "entry of a table", entry.name().text(),
                        List.of("before", "from", "source", "expect"));
            }
        }
        if (declaration.rows() != null) {
            grid(declaration.rows(), name, columns, rows);
        }
        if (rows.isEmpty()) {
            if (findings.count() == known) {
                findings.missing("table-empty", declaration.span(), "the table has no rows");
            }
            findings.drop(name);
            return;
        }
        twins(declaration, columns, rows);
        String title = declaration.head().title() == null ? name : declaration.head().title().written();
        vocabulary.tables.put(name, new Table(name, title, columns, rows, source, declaration.head().name().span()));
        vocabulary.tableTexts.put(name, declaration);
    }

    /** Whether a table only adds rows before those of another. */
    static boolean isBefore(Declaration.TableDeclaration declaration) {
        return declaration.entries().stream().anyMatch(e -> e.name().text().equals("before"));
    }

    /** Reads rows of the works' own that are asked before those of another table; they have its columns. */
    void readBefore(Declaration.TableDeclaration declaration) {
        List<Table.Row> rows = new ArrayList<>();
        String source = "";
        Table target = null;
        for (Declaration.ValueEntry entry : declaration.entries()) {
            if (entry.name().text().equals("before")) {
                String name = UnitReader.text(entry.value());
                target = vocabulary.tables.get(name);
                if (target == null) {
                    findings.unknownName(entry.value().span(), "table", name, vocabulary.tables.keySet());
                    return;
                }
            }
        }
        if (!declaration.columns().isEmpty()) {
            findings.error("columns-of-another", declaration.columns().get(0).span(),
                    "rows before another table have its columns: leave columns out");
        }
        for (Declaration.ValueEntry entry : declaration.entries()) {
            switch (entry.name().text()) {
                case "from" -> csv(entry, target.name(), target.columns(), rows);
                case "source" -> source = UnitReader.text(entry.value());
                case "before", "expect" -> { }
                default -> findings.unknownName(entry.name().span(), "entry of a table", entry.name().text(),
                        List.of("before", "from", "source", "expect"));
            }
        }
        if (declaration.rows() != null) {
            grid(declaration.rows(), target.name(), target.columns(), rows);
        }
        Table.Layer layer = declaration.span().file().shipped() ? Table.Layer.LIBRARY : Table.Layer.WORKS;
        String from = source;
        rows.replaceAll(row -> new Table.Row(row.cells(), row.span(), row.source().isEmpty() ? from : row.source(), layer));
        List<Table.Row> together = new ArrayList<>(target.rows());
        together.removeIf(row -> row.layer() != layer);
        together.addAll(rows);
        twins(declaration, target.columns(), together);
        rows.addAll(target.rows());
        if (rows.size() > Limits.TABLE_ROWS) {
            findings.add(LimitFindings.tableTooLong(declaration.span(), target.name()));
            return;
        }
        vocabulary.tables.put(target.name(), new Table(target.name(), target.title(), target.columns(), rows,
                target.source(), target.span()));
        vocabulary.tableTexts.put(declaration.head().name().text(), declaration);
    }

    private List<Table.Column> columns(Declaration.TableDeclaration declaration) {
        TypeReader types = new TypeReader(vocabulary, findings);
        List<Table.Column> columns = new ArrayList<>();
        for (Field field : declaration.columns()) {
            Table.Role role = Table.Role.FOUND;
            for (Field.Mark mark : field.marks()) {
                if (mark instanceof Field.Mark.Plain plain) {
                    role = switch (plain.word()) {
                        case KEY -> role == Table.Role.FOUND ? Table.Role.KEY : role;
                        case HOLDS -> Table.Role.HOLDS;
                        case BETWEEN -> Table.Role.BETWEEN;
                        default -> role;
                    };
                }
            }
            Type type = types.read(field.type());
            if ((role == Table.Role.HOLDS || role == Table.Role.BETWEEN) && !(type instanceof Type.Measured)
                    && type != Type.Plain.ANY) {
                findings.error("wrong-type", field.span(), "only a number is looked up between or inside");
            }
            columns.add(new Table.Column(field.name().text(), type, role));
        }
        return columns;
    }

    /** Two rows with the same keys leave it open which one is meant. */
    private void twins(Declaration.TableDeclaration declaration, List<Table.Column> columns, List<Table.Row> rows) {
        Map<List<Object>, Table.Row> seen = new HashMap<>();
        for (Table.Row row : rows) {
            List<Object> keys = new ArrayList<>();
            for (int i = 0; i < columns.size(); i++) {
                if (columns.get(i).role() != Table.Role.FOUND) {
                    Value cell = row.cells()[i];
                    keys.add(cell instanceof Value.Num num ? num.quantity().aim() : cell);
                }
            }
            Table.Row twin = seen.putIfAbsent(keys, row);
            if (twin != null) {
                findings.error("rows-alike", declaration.span(),
                        row.place() + " has the same keys as " + twin.place());
            }
        }
    }

    private void grid(Grid grid, String table, List<Table.Column> columns, List<Table.Row> rows) {
        int[] places = new int[grid.head().size()];
        for (int i = 0; i < places.length; i++) {
            places[i] = place(grid.head().get(i).text(), columns);
            if (places[i] < 0) {
                findings.unknownName(grid.head().get(i).span(), "column", grid.head().get(i).text(),
                        columns.stream().map(Table.Column::name).toList());
                return;
            }
        }
        for (Grid.Row row : grid.rows()) {
            if (full(rows, row.span(), table)) {
                return;
            }
            Value[] cells = new Value[columns.size()];
            for (int i = 0; i < places.length; i++) {
                Expression cell = row.cells().get(i);
                cells[places[i]] = cell == null ? null : value(cell, columns.get(places[i]).type());
            }
            add(rows, columns, cells, row.span());
        }
    }

    private void csv(Declaration.ValueEntry entry, String table, List<Table.Column> columns, List<Table.Row> rows) {
        String from = entry.span().file().name();
        String name = UnitReader.text(entry.value());
        String path = from.contains("/") ? from.substring(0, from.lastIndexOf('/') + 1) + name : name;
        SourceFile file = data.get(path);
        if (file == null) {
            findings.error("file-missing", entry.value().span(), "there is no file " + path);
            return;
        }
        if (file.text().length() > Limits.FILE_CHARACTERS) {
            findings.add(LimitFindings.fileTooLarge(new Span(file, 0, 0), file.text().length(), "characters",
                    Limits.FILE_CHARACTERS));
            return;
        }
        if (file.text().chars().filter(c -> c == '"').count() % 2 != 0) {
            // else the rest of the file would be one cell
            findings.error("file-unreadable", entry.value().span(), path + " cannot be read as CSV: a quotation mark has no partner");
            return;
        }
        int line = 0;
        try {
            int[] places = null;
            String[] units = null;
            for (CsvRecord csv : CsvReader.builder().acceptCharsAfterQuotes(false).ofCsvRecord(file.text())) {
                line = (int) csv.getStartingLineNumber();
                Span span = new Span(file, file.lineStart(line), file.lineStart(line) + file.lineText(line).length());
                if (places == null) {
                    places = new int[csv.getFieldCount()];
                    units = new String[places.length];
                    if (!head(csv, span, columns, places, units)) {
                        return;
                    }
                    continue;
                }
                if (csv.getFieldCount() != places.length) {
                    findings.error("cells-missing", span, "this row has " + csv.getFieldCount() + " cells, the head "
                            + places.length);
                    continue;
                }
                if (full(rows, span, table)) {
                    return;
                }
                Value[] cells = new Value[columns.size()];
                for (int i = 0; i < places.length; i++) {
                    cells[places[i]] = cell(csv.getField(i).strip(), units[i], columns.get(places[i]).type(), span);
                }
                add(rows, columns, cells, span);
            }
        } catch (CsvParseException broken) {
            findings.error("file-unreadable", entry.value().span(), path + " cannot be read as CSV behind line "
                    + line + ": a sign stands behind a closing quotation mark");
        }
    }

    /** Whether there is no room for another row, which is reported at the first one too many. */
    private boolean full(List<Table.Row> rows, Span span, String table) {
        if (rows.size() < Limits.TABLE_ROWS) {
            return false;
        }
        findings.add(LimitFindings.tableTooLong(span, table));
        return true;
    }

    private boolean head(CsvRecord csv, Span span, List<Table.Column> columns, int[] places, String[] units) {
        for (int i = 0; i < places.length; i++) {
            String head = csv.getField(i).strip();
            int blank = head.indexOf(' ');
            String name = blank < 0 ? head : head.substring(0, blank);
            units[i] = blank < 0 ? "" : head.substring(blank + 1).strip();
            places[i] = place(name, columns);
            if (places[i] < 0) {
                findings.error("unknown-name", span, "the table declares no column " + name);
                return false;
            }
        }
        return true;
    }

    private static int place(String name, List<Table.Column> columns) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    private Value cell(String text, String unit, Type type, Span line) {
        if (text.isEmpty()) {
            return null;
        }
        if (type == Type.Plain.TEXT) {
            return new Value.Txt(text);
        }
        // read as the language reads it, then placed at the row of the file
        String written = unit.isEmpty() ? text : text + " " + unit;
        ExpressionResult result = Parser.parseExpression(new SourceFile(line.file().name(), written, line.file().shipped()));
        if (result.expression() == null) {
            findings.error("cell-unreadable", line, "the cell " + text + " cannot be read as "
                    + Type.describe(type));
            return null;
        }
        Findings own = findings.apart();
        Value value = value(result.expression(), type, own);
        for (Diagnostic diagnostic : own.all()) {
            findings.error(diagnostic.name(), line, "the cell " + text + ": " + diagnostic.primary().text());
        }
        return value;
    }

    private Value value(Expression expression, Type type) {
        return value(expression, type, findings);
    }

    private Value value(Expression expression, Type type, Findings into) {
        return new Checker(vocabulary, Scope.roots(java.util.Set.of()), into).check(expression, type).node()
                .eval(new Frame());
    }

    private void add(List<Table.Row> rows, List<Table.Column> columns, Value[] cells, Span span) {
        String source = "";
        for (int i = 0; i < columns.size(); i++) {
            boolean key = columns.get(i).role() == Table.Role.BETWEEN || columns.get(i).role() == Table.Role.HOLDS;
            if (key && !(cells[i] instanceof Value.Num)) {
                if (!(cells[i] instanceof Value.Unknown)) {
                    findings.error("cells-missing", span, "the key " + columns.get(i).name() + " is missing");
                }
                return;
            }
            if (columns.get(i).name().equals("source") && cells[i] != null) {
                source = org.ricasso.dsl.evaluate.Shows.show(cells[i]);
            }
        }
        rows.add(new Table.Row(cells, span, source, Table.Layer.TABLE));
    }

    /** Checks what the tables' texts expect of them; when all tables are there. */
    void expectations(Declaration.TableDeclaration declaration) {
        for (Declaration.ValueEntry entry : declaration.entries()) {
            if (!entry.name().text().equals("expect")) {
                continue;
            }
            Checker checker = new Checker(vocabulary, Scope.roots(java.util.Set.of()), findings);
            Frame frame = new Frame();
            Value value = checker.check(entry.value(), Type.Plain.LOGIC).node().eval(frame);
            if (value instanceof Value.Logic logic && logic.truth() != org.ricasso.dsl.evaluate.Truth.ALL) {
                Diagnostic diagnostic = Diagnostic.error("expectation-missed",
                        new Mark(entry.value().span(), "the table does not give what is expected of it"));
                if (entry.value() instanceof Expression.Infix infix) {
                    Value found = new Checker(vocabulary, Scope.roots(java.util.Set.of()), new Findings())
                            .check(infix.left(), null).node().eval(new Frame());
                    diagnostic = diagnostic.because("it gives " + org.ricasso.dsl.evaluate.Shows.show(found));
                }
                for (Frame.Refusal refusal : frame.refusals) {
                    diagnostic = diagnostic.because(refusal.reason());
                }
                findings.add(diagnostic);
            }
        }
    }
}
