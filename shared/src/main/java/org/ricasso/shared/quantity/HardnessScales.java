package org.ricasso.shared.quantity;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Conversion between the hardness scales Rockwell C, Vickers and Brinell (carbide ball, 10 mm, 3000 kgf) by ASTM E140
 * table 1, non-austenitic steels; linear between its rows, nothing outside them. A converted value is good to about
 * ± 1 HRC; martensitic knife steels with much carbide fit the table less well.
 */
public final class HardnessScales {
    /** The name of the table, for derivations. */
    public static final String SOURCE = "ASTM E140 table 1";

    private static final Map<Base, String> COLUMNS =
            Map.of(Base.ROCKWELL_C, "HRC", Base.VICKERS, "HV", Base.BRINELL, "HBW");
    private static final Map<Base, double[]> TABLE = read();

    private HardnessScales() {}

    /**
     * The hardness on another scale.
     *
     * @param value the hardness on scale {@code from}
     * @param from {@link Base#ROCKWELL_C}, {@link Base#VICKERS} or {@link Base#BRINELL}
     * @param to one of the same
     * @throws IllegalArgumentException if the table does not cover the value; the message gives the range it covers
     */
    public static double convert(double value, Base from, Base to) {
        if (from == to && TABLE.containsKey(from)) {
            return value;
        }
        double[] given = column(from);
        double[] wanted = column(to);
        int rows = Math.min(given.length, wanted.length);
        if (Numbers.compare(value, given[0]) < 0 || Numbers.compare(value, given[rows - 1]) > 0
                || Double.isNaN(value)) {
            throw new IllegalArgumentException(outside(value, from, to, given[0], given[rows - 1]));
        }
        int row = 1;
        while (row < rows - 1 && value > given[row]) {
            row++;
        }
        double part = (value - given[row - 1]) / (given[row] - given[row - 1]);
        return wanted[row - 1] + part * (wanted[row] - wanted[row - 1]);
    }

    /**
     * A band of hardness on another scale, end by end; an infinite end stays.
     *
     * @throws IllegalArgumentException if the table does not cover a finite end
     */
    public static Interval convert(Interval band, Base from, Base to) {
        return new Interval(end(band.least(), from, to), end(band.most(), from, to));
    }

    /**
     * The values on one scale that can be converted to another.
     *
     * @throws IllegalArgumentException if a scale is not one of hardness
     */
    public static Interval range(Base from, Base to) {
        double[] given = column(from);
        return new Interval(given[0], given[Math.min(given.length, column(to).length) - 1]);
    }

    private static double end(double value, Base from, Base to) {
        return Double.isInfinite(value) ? value : convert(value, from, to);
    }

    private static double[] column(Base scale) {
        double[] column = TABLE.get(scale);
        if (column == null) {
            throw new IllegalArgumentException(scale.symbol() + " is not a hardness scale");
        }
        return column;
    }

    private static String outside(double value, Base from, Base to, double least, double most) {
        return String.format(Locale.ROOT, "%s %s cannot be converted to %s: %s covers %.0f..%.0f %s",
                trimmed(value), from.symbol(), to.symbol(), SOURCE, least, most, from.symbol());
    }

    private static String trimmed(double value) {
        return value == StrictMath.rint(value) ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.1f", value);
    }

    /** The columns, rising; a column may end before the others, since Brinell is not tabled for the hardest rows. */
    private static Map<Base, double[]> read() {
        List<NamedCsvRecord> rows = new ArrayList<>();
        try (InputStream in = HardnessScales.class.getResourceAsStream("/ricasso/data/hardness-conversion.csv");
                CsvReader<NamedCsvRecord> csv = CsvReader.builder().commentStrategy(CommentStrategy.SKIP)
                        .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            csv.forEach(rows::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        rows.sort(Comparator.comparingDouble(row -> Double.parseDouble(row.getField("HRC"))));
        Map<Base, double[]> table = new EnumMap<>(Base.class);
        COLUMNS.forEach((scale, column) -> table.put(scale, rows.stream().map(row -> row.getField(column))
                .filter(cell -> !cell.isEmpty()).mapToDouble(Double::parseDouble).toArray()));
        return table;
    }
}
