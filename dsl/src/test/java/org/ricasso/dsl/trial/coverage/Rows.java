package org.ricasso.dsl.trial.coverage;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** The rows of a table in the test's resources, cells by their column's head. */
public final class Rows {
    private Rows() {}

    /** @param path from the root of the resources, with its slash */
    public static List<Map<String, String>> of(String path) {
        try (InputStream in = Rows.class.getResourceAsStream(path)) {
            return CsvReader.builder().ofNamedCsvRecord(new String(in.readAllBytes(), StandardCharsets.UTF_8)).stream()
                    .map(NamedCsvRecord::getFieldsAsMap).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
