package org.ricasso.plugin.report.replay;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;

/**
 * A loop that could be written into a route: back from a step that measures a number to one that leaves it.
 *
 * @param file the text of the route
 * @param line before which line the loop is written
 * @param from the step that measures
 * @param to the step that is gone back to
 * @param property the property's own name
 */
record Loop(String file, int line, int from, int to, String property) {

    /** All such loops, those around few steps first. */
    static List<Loop> all(JsonNode house) {
        List<Loop> result = new ArrayList<>();
        for (JsonNode product : house.get("products")) {
            Map<String, List<Integer>> changed = new HashMap<>();
            JsonNode steps = product.get("steps");
            for (int i = 0; i + 1 < steps.size(); i++) {
                JsonNode step = steps.get(i);
                JsonNode next = steps.get(i + 1).get("written");
                for (JsonNode measured : step.get("measured")) {
                    String path = measured.get("property").asText();
                    for (int to : changed.getOrDefault(path, List.of())) {
                        if (next.get("file").equals(step.at("/written/file"))) {
                            result.add(new Loop(next.get("file").asText(), next.get("line").asInt(), step.get("number").asInt(), to,
                                    path.substring(path.lastIndexOf('.') + 1)));
                        }
                    }
                }
                step.get("leaves").properties().stream().filter(e -> e.getValue().has("number"))
                        .forEach(e -> changed.computeIfAbsent(e.getKey(), k -> new ArrayList<>()).add(0, step.get("number").asInt()));
            }
        }
        result.sort(java.util.Comparator.comparingInt(loop -> loop.from() - loop.to()));
        return result;
    }

    /** The texts with the loop. */
    Texts in(Texts texts) {
        List<SourceFile> files = new ArrayList<>();
        for (SourceFile old : texts.files()) {
            if (old.name().equals(file)) {
                int at = old.lineStart(line);
                files.add(new SourceFile(file, old.text().substring(0, at) + "        rework " + from + " to " + to + " { when: "
                        + property + "; times: 2 }\n" + old.text().substring(at), old.shipped()));
            } else {
                files.add(old);
            }
        }
        return new Texts(files, texts.data(), texts.lock());
    }

    /** How many numbers are joined; each is as wide as both that it names, found by its own arithmetic. */
    static int joined(JsonNode house) {
        int count = 0;
        for (JsonNode product : house.get("products")) {
            Map<String, JsonNode> left = new HashMap<>();
            left.put("start", product.get("start"));
            for (JsonNode step : product.get("steps")) {
                left.put(step.get("number").asText(), step.get("leaves"));
                step.path("again").forEach(pass -> left.put(pass.get("pass").asText(), pass.get("leaves")));
            }
            for (JsonNode leaves : left.values()) {
                for (Map.Entry<String, JsonNode> property : leaves.properties()) {
                    JsonNode joins = property.getValue().path("joins");
                    if (joins.isEmpty() || !property.getValue().has("number")) {
                        continue;
                    }
                    assertThat(joins.get(0)).isNotEqualTo(joins.get(1));
                    assertThat(joins.get(1).asText()).as("round again").contains("/");
                    for (String band : List.of("aim", "reach")) {
                        JsonNode one = left.get(joins.get(0).asText()).at("/" + property.getKey() + "/number/" + band);
                        JsonNode other = left.get(joins.get(1).asText()).at("/" + property.getKey() + "/number/" + band);
                        JsonNode both = property.getValue().at("/number/" + band);
                        assertThat(both.path("least").asDouble(-1e300)).isEqualTo(
                                Math.min(one.path("least").asDouble(-1e300), other.path("least").asDouble(-1e300)));
                        assertThat(both.path("most").asDouble(1e300)).isEqualTo(
                                Math.max(one.path("most").asDouble(1e300), other.path("most").asDouble(1e300)));
                    }
                    count++;
                }
            }
        }
        return count;
    }
}
