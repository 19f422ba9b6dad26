package org.ricasso.plugin.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.TreeSet;
import org.ricasso.dsl.evaluate.Table;
import org.ricasso.dsl.source.Origin;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.calculation.Calculation;

/** Tables and calculations that a house can ask, and where each comes from, as {@code house.json} writes them. */
final class KnowledgeJson {
    private final JsonGenerator json;
    private final LinesPrinter lines;
    private final ValueJson values;
    private final Vocabulary vocabulary;

    KnowledgeJson(JsonGenerator json, LinesPrinter lines, ValueJson values, Vocabulary vocabulary) {
        this.json = json;
        this.lines = lines;
        this.values = values;
        this.vocabulary = vocabulary;
    }

    /** Two objects, by name. */
    void write() throws IOException {
        json.writeObjectFieldStart("tables");
        for (String name : new TreeSet<>(vocabulary.tableNames())) {
            begin(name);
            table(vocabulary.table(name));
            end();
        }
        json.writeEndObject();
        json.writeObjectFieldStart("calculations");
        for (String name : new TreeSet<>(vocabulary.calculationNames())) {
            begin(name);
            calculation(vocabulary.calculation(name));
            end();
        }
        json.writeEndObject();
    }

    private void begin(String name) throws IOException {
        json.writeFieldName(name);
        lines.beginLine();
        json.writeStartObject();
    }

    private void end() throws IOException {
        json.writeEndObject();
        lines.endLine();
    }

    private void table(Table table) throws IOException {
        json.writeStringField("title", table.title());
        json.writeStringField("source", table.source());
        values.place("written", table.span());
        Span replaced = vocabulary.replaced("table", table.name());
        if (replaced != null) {
            values.place("replaces", replaced);
        }
        if (table.rows().stream().anyMatch(row -> row.layer() != Table.Layer.TABLE)) {
            json.writeArrayFieldStart("rowsBefore");
            for (Table.Row row : table.rows()) {
                if (row.layer() != Table.Layer.TABLE) {
                    json.writeStartObject();
                    values.place("written", row.span());
                    json.writeEndObject();
                }
            }
            json.writeEndArray();
        }
    }

    private void calculation(Calculation calculation) throws IOException {
        json.writeStringField("title", calculation.title());
        json.writeStringField("source", calculation.source());
        json.writeStringField("class", calculation.provider().type());
        values.library(Origin.of(calculation.provider().library()));
    }
}
