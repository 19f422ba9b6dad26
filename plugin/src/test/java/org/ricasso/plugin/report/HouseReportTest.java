package org.ricasso.plugin.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;

/** The demonstration house as JSON against its published schema, by an independent validator. */
class HouseReportTest {
    private static Ricasso ricasso;
    private static byte[] bytes;
    private static JsonNode house;

    @BeforeAll
    static void read() throws IOException {
        ricasso = load("", "");
        bytes = bytes(ricasso);
        house = new JsonMapper().readTree(bytes);
    }

    private static byte[] bytes(Ricasso ricasso) throws IOException {
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        new HouseReport(ricasso).write(out);
        return out.toByteArray();
    }

    private static Ricasso load(String old, String other) throws IOException {
        return TestHouse.checked(TestHouse.texts(text -> old.isEmpty() ? text : text.replace(old, other)));
    }

    private static Schema schema() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(new String(HouseReport.schema(), StandardCharsets.UTF_8), InputFormat.JSON);
    }

    @Test
    void keepsToItsSchema() throws IOException {
        assertThat(schema().validate(new String(bytes, StandardCharsets.UTF_8), InputFormat.JSON)).isEmpty();
    }

    @Test
    void aHouseThatDoesNotHoldKeepsToItToo() throws IOException {
        for (String[] change : new String[][] {{" temper ", " no-such-step "}, {"deburr ", "no-such-step "}, {" °C", " mm"},
                {" ± 5 °C", " ± 90 °C"}, {"length:", "breadth:"}}) {
            Ricasso broken = load(change[0], change[1]);
            assertThat(broken.checked().diagnostics()).as(change[0]).isNotEmpty();
            assertThat(schema().validate(new String(bytes(broken), StandardCharsets.UTF_8), InputFormat.JSON))
                    .as(change[0]).isEmpty();
        }
    }

    /** Each kind of thing that a reader relies on, taken away or written otherwise. */
    @Test
    void theSchemaRefusesAnotherForm() throws IOException {
        Schema schema = schema();
        for (String member : List.of("/products/0/outcomes/0/asked/entry", "/products/0/steps/0/settings",
                "/products/0/steps/0/written/line", "/products/0/axes", "/units", "/formulas")) {
            ObjectNode other = house.deepCopy();
            int end = member.lastIndexOf('/');
            assertThat(((ObjectNode) other.at(member.substring(0, end))).remove(member.substring(end + 1)))
                    .as(member).isNotNull();
            assertThat(schema.validate(other.toString(), InputFormat.JSON)).as(member).isNotEmpty();
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        for (String[] change : new String[][] {{"\"aim\": {", "\"goal\": {"}, {"\"computed\": {", "\"derived\": {"},
                {"\"formula\": ", "\"formulas\": "}, {"\"left\": \"start\"", "\"left\": \"beginning\""},
                {"\"version\": 2", "\"version\": 1"}}) {
            assertThat(text).contains(change[0]);
            assertThat(schema.validate(text.replace(change[0], change[1]), InputFormat.JSON)).as(change[0]).isNotEmpty();
        }
    }

    @Test
    void theSameHouseGivesTheSameBytes() throws IOException {
        assertThat(bytes(load("", ""))).isEqualTo(bytes);
    }

    @Test
    void everyNumberHasItsAimInItsReach() {
        List<JsonNode> numbers = house.findValues("number").stream().filter(JsonNode::isObject).toList();
        assertThat(numbers).hasSizeGreaterThan(500);
        for (JsonNode number : numbers) {
            double slack = 1e-12;
            assertThat(number.at("/reach/least").asDouble(-1e300))
                    .isLessThanOrEqualTo(number.at("/aim/least").asDouble(-1e300) + slack);
            assertThat(number.at("/reach/most").asDouble(1e300))
                    .isGreaterThanOrEqualTo(number.at("/aim/most").asDouble(1e300) - slack);
        }
    }

    @Test
    void hardnessSaysHowItCameAbout() {
        int told = 0;
        for (JsonNode product : house.get("products")) {
            for (JsonNode outcome : product.get("outcomes")) {
                if (!outcome.get("entry").asText().equals("blade.hardness")) {
                    continue;
                }
                assertThat(outcome.get("made").asText()).isIn("aimed", "proved");
                assertThat(outcome.at("/margin/aim").asDouble()).isPositive();
                String pass = outcome.at("/became/left").asText();
                for (JsonNode step : product.get("steps")) {
                    if (step.get("number").asText().equals(pass)) {
                        JsonNode left = step.at("/leaves/blade.hardness");
                        assertThat(left.get("number")).isEqualTo(outcome.at("/became/number"));
                        assertThat(step.findValuesAsText("source").toString()).contains("tempering-loss.csv line");
                        assertThat(house.get("formulas").has(left.at("/computed/formula").asText())).isTrue();
                        told++;
                    }
                }
            }
        }
        assertThat(told).isPositive().isEqualTo(house.get("products").size());
    }

    @Test
    void aSolvedSettingNamesItsLineOfTheLock() throws IOException {
        JsonNode setting = null;
        for (JsonNode product : house.get("products")) {
            for (JsonNode step : product.get("steps")) {
                JsonNode one = step.at("/settings/temperature");
                setting = one.has("solves") ? one : setting;
            }
        }
        assertThat(setting).isNotNull();
        assertThat(setting.at("/solves/file").asText()).isEqualTo("paring-90.ricasso");
        assertThat(setting.at("/written/file").asText()).isEqualTo(TestHouse.lock().name());
        String line = TestHouse.lock().lineText(setting.at("/written/line").asInt());
        assertThat(line).startsWith("paring-90 / 110 temper / temperature = ");
        assertThat(line.substring(setting.at("/written/column").asInt() - 1))
                .startsWith(setting.at("/number/shown").asText() + " for ");
    }
}
