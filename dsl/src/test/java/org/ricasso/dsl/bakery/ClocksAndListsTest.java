package org.ricasso.dsl.bakery;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;

/** Rules read what a clock shows at least, and how near to each other the numbers of a list stand. */
class ClocksAndListsTest {
    private static final String FLOUR = "flour rye-1150 \"Rye";
    private static final String RULES = """
            rule dough-not-old "The dough goes into the oven in time" {
                for:     step
                when:    operation.warms
                require: before.loaf.rested.least <= %s
                say:     "it has rested for {before.loaf.rested}"
                because: "it falls"
                example passes { operation.warms: yes; before.loaf.rested: 10 min }
                example fails  { operation.warms: yes; before.loaf.rested: 20 h }
            }
            kind rack "Rack" { shelves: list of length }
            rack tall "Tall" { shelves: 10, 42, %s mm }
            rule shelves-apart "A loaf fits between two shelves" {
                for:     rack
                require: shelves.closest >= 20 mm
                say:     "two shelves are {shelves.closest} apart"
                because: "the loaf rises to the next shelf"
                example passes { shelves: 10, 42, 80 mm }
                example fails  { shelves: 10, 42, 45 mm }
            }
            """;

    private static List<Diagnostic> found(String rest, String shelf) {
        return Bakery.checked(Map.of(FLOUR, RULES.formatted(rest, shelf) + FLOUR)).checked().diagnostics();
    }

    @Test
    void holds() {
        assertThat(found("12 h", "80")).isEmpty();
    }

    @Test
    void whatTheStepsTakeAtLeastIsRead() {
        assertThat(found("30 min", "80")).hasSize(2).allMatch(d -> d.name().equals("dough-not-old"));
    }

    @Test
    void theNearestTwoOfAListAreRead() {
        assertThat(found("12 h", "25")).extracting(d -> d.primary().text()).singleElement().asString()
                .contains("two shelves are 15.0 mm apart");
    }
}
