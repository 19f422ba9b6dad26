package org.ricasso.plugin.report.replay;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.evaluate.Checker;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.quantity.Measure;

/** Looks up the places that {@code house.json} names: the written number stands there, and is worth what is stored. */
final class WrittenPlaces {
    private final Map<String, SourceFile> files = new HashMap<>();
    private final Vocabulary vocabulary;
    private final Replay replay;

    WrittenPlaces(Texts texts, Vocabulary vocabulary, Replay replay) {
        texts.files().forEach(file -> files.put(file.name(), file));
        if (texts.lock() != null) {
            files.put(texts.lock().name(), texts.lock());
        }
        this.vocabulary = vocabulary;
        this.replay = replay;
    }

    /** Checks all places, and the numbers of all objects that are written and not computed, wherever they stand. */
    void check(JsonNode node) {
        if (node.isObject() && node.has("file") && node.has("line") && node.has("column")) {
            assertThat(text(node)).as("what stands at %s", node).isNotBlank();
            replay.numbers().told(node);
        }
        if (node.isObject() && node.has("written") && !node.has("computed")) {
            String text = text(node.get("written"));
            for (String form : List.of("number", "rate", "list", "along")) {
                if (node.path(form).isContainerNode()) {
                    switch (form) {
                        case "number" -> stands(node.get("number"), text, 0);
                        case "rate" -> rate(node.get("rate"), text);
                        case "list" -> list(node.get("list"), text);
                        default -> along(node.get("along"), text);
                    }
                    replay.numbers().told(node);
                }
            }
        }
        node.forEach(this::check);
    }

    private String text(JsonNode place) {
        SourceFile file = files.get(place.get("file").asText());
        assertThat(file).as("%s", place).isNotNull();
        assertThat(place.path("shipped").asBoolean()).isEqualTo(file.shipped());
        int line = place.get("line").asInt();
        assertThat(line).as("%s", place).isBetween(1, (int) file.text().lines().count());
        return (file.lineText(line).substring(place.get("column").asInt() - 1)
                + file.text().substring(file.lineStart(line) + file.lineText(line).length())).replaceAll(" +", " ");
    }

    /** @return where it ends in the text */
    private int stands(JsonNode number, String text, int from) {
        String shown = number.get("shown").asText();
        assertThat(number.path("asWritten").asBoolean()).as("%s at %s", number, text).isTrue();
        assertThat(text.substring(from)).startsWith(shown);
        worth(number, shown);
        return from + shown.length();
    }

    private void worth(JsonNode number, String shown) {
        Value stored = replay.values().read(new com.fasterxml.jackson.databind.node.ObjectNode(
                com.fasterxml.jackson.databind.node.JsonNodeFactory.instance, Map.of("number", number)));
        Value again = new Checker(vocabulary, Scope.roots(java.util.Set.of()), new Findings())
                .check(Substitution.parsed(shown), replay.typeOf(stored)).node().eval(new Frame());
        assertThat(StoredValues.same(stored, again)).as("%s stored as %s", shown, stored).isTrue();
    }

    private void rate(JsonNode rate, String text) {
        int end = rate.has("amount") ? stands(rate.get("amount"), text, 0) : 0;
        assertThat(text.substring(end).strip()).startsWith(rate.has("amount") ? "per " + rate.get("each").asText()
                : rate.get("each").asText());
    }

    /** The unit of an element may stand at the list's end alone. */
    private void list(JsonNode list, String text) {
        String rest = text;
        for (JsonNode one : list) {
            if (!one.has("number")) {
                return;
            }
            String shown = one.at("/number/shown").asText();
            String digits = shown.split(" ")[0];
            assertThat(rest.strip()).startsWith(digits);
            worth(one.get("number"), shown);
            rest = rest.substring(rest.indexOf(digits) + digits.length()).replaceFirst("^[^,]*,", "");
        }
    }

    /** A grid with a row a station, or in the row of a size a cell a station. */
    private void along(JsonNode along, String text) {
        boolean cells = Character.isDigit(text.charAt(0));
        List<String> row = Stream.of(text.lines().findFirst().orElseThrow().split("[|]")).map(String::strip).toList();
        for (JsonNode station : along) {
            String shown = station.at("/number/shown").asText();
            // behind the name of a place its distance is told, which is not written
            String at = station.get("at").asText().replaceFirst(" [(].*", "");
            if (cells) {
                assertThat(row).as("cells for %s", at).contains(shown);
            } else {
                assertThat(text).containsPattern("\\|\\s*" + Pattern.quote(at) + "\\s*\\|\\s*" + Pattern.quote(shown));
            }
            worth(station.get("number"), shown);
        }
        double[] positions = along.valueStream().mapToDouble(station -> station.get("position").asDouble()).toArray();
        assertThat(positions).isSorted();
        for (int i = 0; i < positions.length; i++) {
            Expression at = Substitution.parsed(along.get(i).get("at").asText());
            if (at instanceof Expression.Literal) {
                Value position = new Checker(vocabulary, Scope.roots(java.util.Set.of()), new Findings())
                        .check(at, replay.measured(Measure.LENGTH)).node().eval(new Frame());
                assertThat(((Value.Num) position).quantity().nominal()).isEqualTo(positions[i]);
            }
        }
    }
}
