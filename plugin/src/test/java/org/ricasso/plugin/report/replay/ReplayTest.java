package org.ricasso.plugin.report.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.plugin.report.HouseReport;
import org.ricasso.plugin.report.TestHouse;

/** Every number in {@code house.json} of the demonstration house is computed again from what it says that it comes from. */
class ReplayTest {
    /** All numbers, of which none is untold. */
    private static Numbers replayed(Texts texts, JsonNode house, Ricasso ricasso) {
        Vocabulary vocabulary = ricasso.house().vocabulary();
        Replay replay = new Replay(vocabulary, house);
        replay.head();
        for (String list : List.of("products", "things")) {
            for (JsonNode thing : house.get(list)) {
                thing.get("entries").properties().forEach(e -> {
                    Type type = vocabulary.entryType(thing.get("kind").asText(), e.getKey()).type();
                    if (e.getValue().has("computed")) {
                        replay.check(e.getValue(), type, null, false,
                                (as, read, computed) -> replay.entry(thing, read.path("entry").asText()));
                    }
                });
            }
        }
        for (JsonNode product : house.get("products")) {
            new ReplayedProduct(vocabulary, house, product, replay).check();
        }
        new WrittenPlaces(texts, vocabulary, replay).check(house);
        return replay.numbers().count(house);
    }

    private static JsonNode house(Ricasso ricasso) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new HouseReport(ricasso).write(out);
        return new JsonMapper().readTree(out.toByteArray());
    }

    @Test
    void everyNumberOfTheDemonstrationHouse() throws IOException {
        Texts texts = TestHouse.texts(text -> text);
        Ricasso ricasso = TestHouse.checked(texts);
        Numbers numbers = replayed(texts, house(ricasso), ricasso);
        assertThat(numbers.untold()).isEmpty();
        assertThat(numbers.values()).isPositive();
        assertThat(numbers.all()).isGreaterThan(numbers.values());
    }

    /**
     * What a loop leaves names the ways out of it, and is as wide as they are together. Loops are written into the routes
     * until two have joined numbers; one whose steps cannot be done again is passed over.
     */
    @Test
    void everyNumberWhereWorkIsDoneAgain() throws IOException {
        Texts texts = TestHouse.texts(text -> text);
        int loops = 0;
        for (Loop loop : Loop.all(house(TestHouse.checked(texts)))) {
            if (loops == 2) {
                break;
            }
            Texts again = loop.in(texts);
            Ricasso ricasso = TestHouse.checked(again);
            if (ricasso.checked().diagnostics().stream().noneMatch(d -> d.name().equals("need-unmet"))) {
                JsonNode house = house(ricasso);
                assertThat(replayed(again, house, ricasso).untold()).as("%s", loop).isEmpty();
                loops += Loop.joined(house) > 0 ? 1 : 0;
            }
        }
        assertThat(loops).as("loops that join numbers").isPositive();
    }

    /** A number that is not what its formula gives is found, and so is one that nothing tells. */
    @Test
    void aWrongNumberIsFound() throws IOException {
        Texts texts = TestHouse.texts(text -> text);
        Ricasso ricasso = TestHouse.checked(texts);
        for (String place : List.of("/products/0/steps/1/leaves", "/products/0/outcomes/0/became", "/products/0/axes",
                "/products/0/outcomes/0/margin", "/units/mm", "/products/0/entries/blade.hardness", "/products/0/steps/1/time")) {
            JsonNode house = house(ricasso);
            assertThat(nudged(house.at(place))).as(place).isTrue();
            assertThatThrownBy(() -> replayed(texts, house, ricasso)).as(place).isInstanceOf(AssertionError.class);
        }
        JsonNode house = house(ricasso);
        ((ObjectNode) house.get("products").get(0)).putObject("more").put("least", 1.5);
        assertThat(replayed(texts, house, ricasso).untold()).containsExactly("/products/0/more/least");
    }

    /** Makes the first broken number below a node a little larger. */
    private static boolean nudged(JsonNode node) {
        if (node instanceof ObjectNode object) {
            for (Map.Entry<String, JsonNode> entry : object.properties()) {
                if (entry.getValue().isDouble()) {
                    object.put(entry.getKey(), Math.nextUp(entry.getValue().asDouble()) + 1e-6);
                    return true;
                }
            }
        }
        return node.valueStream().anyMatch(ReplayTest::nudged);
    }
}
