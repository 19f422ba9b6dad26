package org.ricasso.dsl.bakery;

import static org.ricasso.shared.calculation.Definition.define;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.quantity.Measure;

/** A bakery: vocabulary, house and a calculation of its own, and nothing of what is shipped. */
final class Bakery {
    static final String HOUSE = "house.ricasso";
    private static final List<String> FILES = List.of("units.ricasso", "kinds.ricasso", "workpiece.ricasso",
            "tables.ricasso", "operations.ricasso", "rules.ricasso", HOUSE);

    private Bakery() {}

    /**
     * The bakers' rule of the base temperature: water = 3 · dough − flour − room − warming by work (common practice, no
     * source). In kelvins the three points cancel but for one.
     */
    static Calculation doughWater() {
        return define("dough-water", "water for a dough of a wanted warmth")
                .rises("dough", Measure.TEMPERATURE, 273.15, 320).falls("flour", Measure.TEMPERATURE, 250, 320)
                .falls("room", Measure.TEMPERATURE, 250, 320).falls("work", Measure.TEMPERATURE_DIFFERENCE, 0, 30)
                .gives(Measure.TEMPERATURE, "common practice of bakers", a -> 3 * a[0] - a[1] - a[2] - a[3]);
    }

    static Ricasso checked() {
        return checked(Map.of());
    }

    /** The bakery with changes: what stands once in the house is replaced by what is to stand there. */
    static Ricasso checked(Map<String, String> changes) {
        return Ricasso.check(texts(changes, List.of()), List.of(doughWater()), Set.of());
    }

    /** The same after edits of its house. */
    static Ricasso checked(Map<String, String> changes, List<Edit> edits) {
        return Ricasso.check(texts(changes, edits), List.of(doughWater()), Set.of());
    }

    private static Texts texts(Map<String, String> changes, List<Edit> edits) {
        List<SourceFile> files = new ArrayList<>();
        for (String file : FILES) {
            String text = read(file);
            if (file.equals(HOUSE)) {
                for (Map.Entry<String, String> change : changes.entrySet()) {
                    if (text.split(java.util.regex.Pattern.quote(change.getKey()), -1).length != 2) {
                        throw new IllegalArgumentException("stands not once: " + change.getKey());
                    }
                    text = text.replace(change.getKey(), change.getValue());
                }
                StringBuilder edited = new StringBuilder(text);
                edits.stream().sorted(Comparator.comparing(Edit::span).reversed())
                        .forEach(e -> edited.replace(e.span().start(), e.span().end(), e.replacement()));
                text = edited.toString();
            }
            files.add(new SourceFile(file, text, false));
        }
        Map<String, SourceFile> data = new LinkedHashMap<>();
        data.put("rising.csv", new SourceFile("rising.csv", read("rising.csv"), false));
        return new Texts(files, data);
    }

    private static String read(String file) {
        try (InputStream in = Bakery.class.getResourceAsStream("/bakery/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
