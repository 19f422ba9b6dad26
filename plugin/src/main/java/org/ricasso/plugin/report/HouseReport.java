package org.ricasso.plugin.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.dsl.walk.CheckedProduct;

/**
 * The resolved house as JSON, for other programs: products with every entry, step, outcome and judgement, all things, all
 * rules. Each number has its bands, its unit, and where it comes from: the place where it is written, or the formula, the
 * places that the formula reads and what tables and calculations answered, so that it can be computed again. The form is
 * published as {@code house.schema.json}.
 *
 * <p>The same house gives the same bytes on every machine. It is written product by product, never held as a whole.
 */
public final class HouseReport {
    /** The version of the form; it changes when a reader has to. */
    public static final int VERSION = 2;
    /** Digits of numbers that do not depend on the Java that runs. */
    private static final JsonFactory JSON = JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();
    private final Ricasso ricasso;
    private final Vocabulary vocabulary;

    public HouseReport(Ricasso ricasso) {
        this.ricasso = ricasso;
        this.vocabulary = ricasso.house().vocabulary();
    }

    /** The schema of the form (JSON Schema 2020-12), UTF-8. */
    public static byte[] schema() throws IOException {
        try (InputStream in = HouseReport.class.getResourceAsStream("house.schema.json")) {
            return in.readAllBytes();
        }
    }

    /** Writes the house, UTF-8 with line feeds; the stream is left open. */
    public void write(OutputStream out) throws IOException {
        LinesPrinter lines = new LinesPrinter();
        try (JsonGenerator json = JSON.createGenerator(out)) {
            json.setPrettyPrinter(lines);
            ValueJson values = new ValueJson(json, lines);
            OriginJson origins = new OriginJson(json, values, vocabulary);
            ProductJson products = new ProductJson(json, lines, values, origins, ricasso.house());
            json.writeStartObject();
            json.writeStringField("form", "ricasso-house");
            json.writeNumberField("version", VERSION);
            json.writeStringField("product", vocabulary.productKind() == null ? "" : vocabulary.productKind());
            json.writeArrayFieldStart("products");
            for (CheckedProduct product : ricasso.checked().products()) {
                json.writeStartObject();
                thing(json, lines, values, origins, product.product());
                products.product(product);
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("things");
            for (Thing thing : ricasso.checked().things()) {
                if (!ricasso.house().routes().containsKey(thing)) {
                    json.writeStartObject();
                    thing(json, lines, values, origins, thing);
                    json.writeEndObject();
                }
            }
            json.writeEndArray();
            json.writeObjectFieldStart("operations");
            operations(json, lines, values);
            json.writeEndObject();
            json.writeObjectFieldStart("rules");
            rules(json, lines, values);
            json.writeEndObject();
            new KnowledgeJson(json, lines, values, vocabulary).write();
            json.writeObjectFieldStart("formulas");
            origins.formulas(lines);
            json.writeEndObject();
            json.writeObjectFieldStart("units");
            lines.beginLine();
            values.units();
            lines.endLine();
            json.writeEndObject();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private void thing(JsonGenerator json, LinesPrinter lines, ValueJson values, OriginJson origins, Thing thing)
            throws IOException {
        json.writeStringField("kind", thing.kind());
        json.writeStringField("name", thing.name());
        json.writeStringField("title", thing.title());
        values.place("written", thing.span());
        if (thing.replaced() != null) {
            values.place("replaces", thing.replaced());
        }
        json.writeObjectFieldStart("entries");
        entries(json, lines, origins, thing, thing.kind(), thing.entries(), "");
        json.writeEndObject();
    }

    /** Entries by dotted path, blocks opened. */
    private void entries(JsonGenerator json, LinesPrinter lines, OriginJson origins, Thing thing, String kind,
            Map<String, Value> entries, String prefix) throws IOException {
        Map<String, EntryType> types = vocabulary.entries(kind);
        for (Map.Entry<String, Value> entry : entries.entrySet()) {
            String path = prefix + entry.getKey();
            EntryType type = types.get(entry.getKey());
            if (entry.getValue() instanceof Value.Entries block && type.type() instanceof Type.ThingOf of) {
                entries(json, lines, origins, thing, of.kind(), block.entries(), path + ".");
                continue;
            }
            json.writeFieldName(path);
            lines.beginLine();
            json.writeStartObject();
            Thing.Place place = thing.places().get(path);
            Thing product = thing.kind().equals(vocabulary.productKind()) ? thing : null;
            if (place != null) {
                origins.written(entry.getValue(), place.value(), place.inheritedAt(), type, product);
            } else {
                origins.unwritten(entry.getValue(), kind, type, product);
            }
            json.writeEndObject();
            lines.endLine();
        }
    }

    private void operations(JsonGenerator json, LinesPrinter lines, ValueJson values) throws IOException {
        for (Operation operation : vocabulary.operations()) {
            json.writeFieldName(operation.name());
            lines.beginLine();
            json.writeStartObject();
            json.writeStringField("title", operation.title());
            if (operation.works() != null) {
                json.writeStringField("works", operation.works());
            }
            places(values, "operation", operation.name(), operation.span());
            json.writeObjectFieldStart("attributes");
            for (Map.Entry<String, Value> attribute : operation.attributes().entrySet()) {
                json.writeObjectFieldStart(attribute.getKey());
                values.fields(attribute.getValue());
                json.writeEndObject();
            }
            json.writeEndObject();
            json.writeEndObject();
            lines.endLine();
        }
    }

    private void rules(JsonGenerator json, LinesPrinter lines, ValueJson values) throws IOException {
        Collection<Rule> rules = vocabulary.rules();
        for (Rule rule : rules) {
            json.writeFieldName(rule.name());
            lines.beginLine();
            json.writeStartObject();
            json.writeStringField("title", rule.title());
            json.writeStringField("for", rule.subjectName());
            json.writeStringField("level", rule.level().name().toLowerCase(Locale.ROOT));
            json.writeStringField("because", rule.because());
            json.writeStringField("source", rule.source());
            places(values, "rule", rule.name(), rule.syntax().head().name().span());
            json.writeEndObject();
            lines.endLine();
        }
    }

    private void places(ValueJson values, String what, String name, Span span) throws IOException {
        values.place("written", span);
        Span replaced = vocabulary.replaced(what, name);
        if (replaced != null) {
            values.place("replaces", replaced);
        }
    }
}
