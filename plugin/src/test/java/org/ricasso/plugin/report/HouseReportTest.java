package org.ricasso.plugin.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The demonstration house as JSON against its published schema, by an independent validator; and as XML. */
class HouseReportTest {
    private static final Path HOUSE = Path.of("..", "specs", "src", "main", "ricasso");
    private static Ricasso ricasso;
    private static byte[] bytes;
    private static JsonNode house;

    @BeforeAll
    static void read() throws IOException {
        ricasso = load("", "");
        bytes = new HouseReport(ricasso).bytes();
        house = new JsonMapper().readTree(bytes);
    }

    private static Ricasso load(String old, String other) throws IOException {
        List<SourceFile> files = new ArrayList<>();
        try (Stream<Path> walk = Files.walk(HOUSE)) {
            for (Path path : walk.filter(p -> p.toString().endsWith(".ricasso")).sorted().toList()) {
                String text = Files.readString(path);
                files.add(new SourceFile(path.getFileName().toString(), old.isEmpty() ? text : text.replace(old, other),
                        false));
            }
        }
        return Ricasso.check(Ricasso.withShipped(new Texts(files, Map.of())),
                Ricasso.calculations(HouseReportTest.class.getClassLoader()), Set.of());
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
    void theSchemaRefusesAnotherForm() throws IOException {
        ObjectNode other = house.deepCopy();
        ((ObjectNode) other.at("/products/0/outcomes/0/found/number")).remove("aim");
        assertThat(schema().validate(other.toString(), InputFormat.JSON)).isNotEmpty();
        other = house.deepCopy();
        ((ObjectNode) other.at("/products/0/steps/0")).put("number", "ten");
        assertThat(schema().validate(other.toString(), InputFormat.JSON)).isNotEmpty();
    }

    @Test
    void theSameHouseGivesTheSameBytes() throws IOException {
        assertThat(new HouseReport(load("", "")).bytes()).isEqualTo(bytes);
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
        for (JsonNode product : house.get("products")) {
            for (JsonNode outcome : product.get("outcomes")) {
                if (outcome.get("entry").asText().equals("blade.hardness")) {
                    assertThat(outcome.get("made").asText()).isEqualTo("aimed");
                    assertThat(outcome.at("/margin/aim").asDouble()).isPositive();
                    assertThat(outcome.get("derivation").get("is")).isEqualTo(outcome.get("found"));
                    assertThat(outcome.get("derivation").findValuesAsText("source").toString())
                            .contains("tempering-loss.csv line");
                }
            }
        }
    }

    @Test
    void aCaseForEachKnife() throws Exception {
        Element suite = suite(new CaseReport().of(ricasso.checked()));
        assertThat(suite.getAttribute("tests")).isEqualTo(Integer.toString(house.get("products").size() + 1));
        assertThat(suite.getAttribute("failures")).isEqualTo("0");
        assertThat(suite.getElementsByTagName("testcase").getLength()).isEqualTo(house.get("products").size() + 1);
        assertThat(suite.getElementsByTagName("failure").getLength()).isZero();
    }

    @Test
    void aFailureCarriesTheFindingAsPrinted() throws Exception {
        Element suite = suite(new CaseReport().of(load("temperature: 180 ± 5 °C; hold: 120 (+20/0) min",
                "temperature: 245 ± 5 °C; hold: 120 (+20/0) min").checked()));
        assertThat(suite.getElementsByTagName("failure").getLength()).isPositive();
        Element failure = (Element) suite.getElementsByTagName("failure").item(0);
        assertThat(((Element) failure.getParentNode()).getAttribute("classname")).isEqualTo("knife");
        assertThat(failure.getAttribute("type")).isEqualTo("characteristic-missed");
        assertThat(failure.getTextContent()).contains("^^^^", "remedy ", "245 ± 5 °C");
    }

    private static Element suite(byte[] xml) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(xml));
        return document.getDocumentElement();
    }
}
