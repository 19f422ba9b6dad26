package org.ricasso.plugin.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.networknt.schema.InputFormat;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.SourceFile;

/**
 * Fixes as an editor applies them: from the log alone, by file, line and column as SARIF 2.1.0 defines them (sections 3.55
 * to 3.57 and 3.30). What a fix was for is found no more.
 */
class SarifFixesTest {
    private static final Path ROOT = Path.of("/repo").toAbsolutePath();

    /** Mistakes of which each has a remedy; 420 °C and the misspelled names stand in whatever line the house has them. */
    private static List<SourceFile> mistaken() throws IOException {
        return TestHouse.files().stream().map(file -> new SourceFile(file.name(), file.text()
                .replaceFirst("(\\btemper\\s+at\\s+[\\w-]+\\s*\\{\\s*temperature:\\s*)\\d+", "$1" + 230)
                .replaceFirst("\\bstraighten(\\s+at)", "straigthen$1")
                .replaceFirst("\\bgauge:", "guage:")
                .replaceFirst("reaction:(\\s+)scrap", "reaction:$1skrap"), false)).toList();
    }

    private static byte[] log(List<SourceFile> files) {
        List<Diagnostic> found = TestHouse.checked(TestHouse.texts(files)).checked().diagnostics();
        return new SarifReport(ROOT, ROOT, "1", ReportRule::named).of(found);
    }

    @Test
    void eachFixTakesItsFindingAway() throws IOException {
        List<SourceFile> files = mistaken();
        byte[] log = log(files);
        assertThat(SarifReportTest.schema().validate(new String(log, StandardCharsets.UTF_8), InputFormat.JSON)).isEmpty();
        int applied = 0;
        for (JsonNode result : JsonMapper.builder().build().readTree(log).at("/runs/0/results")) {
            for (JsonNode fix : result.path("fixes")) {
                Ricasso mended = TestHouse.checked(TestHouse.texts(apply(files, fix)));
                String rule = result.get("ruleId").asText();
                JsonNode place = result.at("/locations/0/physicalLocation");
                assertThat(mended.checked().diagnostics().stream().filter(d -> d.name().equals(rule)
                        && d.primary().span().file().name().equals(name(place.get("artifactLocation")))
                        && d.primary().span().line() == place.at("/region/startLine").asInt())).as("%s", result).isEmpty();
                applied++;
            }
        }
        assertThat(applied).isGreaterThanOrEqualTo(4);
    }

    /** A step is put in, and one that stands too late goes before others: the house holds again. */
    @Test
    void aFixWritesAStepAndMovesOne() throws IOException {
        // German words for a step that is gone would be told of as well
        List<SourceFile> house = TestHouse.files().stream().filter(f -> !f.name().endsWith("-de.ricasso")).toList();
        String route = "paring-90.ricasso";
        String washed = step(text(house, route), 200);
        List<SourceFile> unwashed = with(house, route, text(house, route).replace(washed, ""));
        String checked = step(text(house, route), 165);
        String bent = step(text(house, route), 160);
        List<SourceFile> bentLast = with(house, route, text(house, route).replace(checked, "")
                .replace(bent, checked.replace(" 165 ", " 155 ") + bent));
        for (List<SourceFile> wrong : List.of(unwashed, bentLast)) {
            JsonNode result = JsonMapper.builder().build().readTree(log(wrong)).at("/runs/0/results/0");
            assertThat(result.path("fixes")).as("%s", result).isNotEmpty();
            for (JsonNode fix : result.path("fixes")) {
                assertThat(TestHouse.checked(TestHouse.texts(apply(wrong, fix))).checked().diagnostics()).as("%s", fix).isEmpty();
            }
        }
    }

    private static String text(List<SourceFile> files, String name) {
        return files.stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow().text();
    }

    private static List<SourceFile> with(List<SourceFile> files, String name, String text) {
        return files.stream().map(f -> f.name().equals(name) ? new SourceFile(name, text, false) : f).toList();
    }

    private static String step(String route, int number) {
        Matcher step = Pattern.compile("(?m)^        " + number + " [a-z-]+ at [a-z0-9-]+ \\{\n(?:         .*\n)+        \\}\n").matcher(route);
        assertThat(step.find()).isTrue();
        return step.group();
    }

    private static List<SourceFile> apply(List<SourceFile> files, JsonNode fix) {
        assertThat(fix.at("/description/text").asText()).isNotBlank();
        Map<String, String> changed = new HashMap<>();
        for (JsonNode change : fix.get("artifactChanges")) {
            String name = name(change.get("artifactLocation"));
            String text = files.stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow().text();
            List<JsonNode> replacements = new ArrayList<>(change.get("replacements").valueStream().toList());
            java.util.Collections.reverse(replacements);
            for (JsonNode replacement : replacements) {
                JsonNode region = replacement.get("deletedRegion");
                text = text.substring(0, offset(text, region.get("startLine"), region.get("startColumn")))
                        + replacement.at("/insertedContent/text").asText()
                        + text.substring(offset(text, region.path("endLine").isMissingNode() ? region.get("startLine")
                                : region.get("endLine"), region.get("endColumn")));
            }
            changed.put(name, text);
        }
        return files.stream().map(f -> new SourceFile(f.name(), changed.getOrDefault(f.name(), f.text()), false)).toList();
    }

    private static String name(JsonNode artifact) {
        return URI.create(artifact.get("uri").asText()).getPath();
    }

    /** Lines and columns count from 1, columns in code points. */
    private static int offset(String text, JsonNode line, JsonNode column) {
        int at = 0;
        for (int i = 1; i < line.asInt(); i++) {
            at = text.indexOf('\n', at) + 1;
        }
        return text.offsetByCodePoints(at, column.asInt() - 1);
    }
}
