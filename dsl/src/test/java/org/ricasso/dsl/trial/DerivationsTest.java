package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.evaluate.Derivation;
import org.ricasso.dsl.evaluate.Joins;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.walk.Walked;

/** A derivation evaluates again what the walk left; its value is the walk's, number for number. */
class DerivationsTest {
    @Test
    void replayingADerivationGivesTheSameValue() {
        House house = Ricasso.check(TrialHouse.whole().texts(),
                Ricasso.calculations(getClass().getClassLoader()), Set.of()).house();
        int replayed = 0;
        for (Map.Entry<Thing, Route> entry : house.routes().entrySet()) {
            Walked walked = Walked.of(house, entry.getKey());
            for (Property property : house.vocabulary().properties()) {
                Derivation why = walked.why(property.slot());
                Value last = walked.last()[property.slot()];
                if (why == null || last instanceof Value.Unknown) {
                    continue;
                }
                assertThat(why.value()).as("%s of %s", property.path(), entry.getKey()).isEqualTo(last);
                assertThat(why.lines()).as(property.path()).isNotEmpty();
                replayed++;
            }
        }
        assertThat(replayed).isGreaterThan(60);
    }

    /** Of what a loop leaves, each way out of it is told; together they are the walk's value. */
    @Test
    void theWaysOutOfALoopAreTold() {
        TrialHouse whole = TrialHouse.whole();
        House house = checked(whole).house();
        int told = 0;
        for (Map.Entry<Thing, Route> entry : house.routes().entrySet()) {
            List<RouteStep> steps = entry.getValue().all();
            for (int from = 1; from + 1 < steps.size() && told == 0; from++) {
                for (int to = from - 1; to >= Math.max(0, from - 3) && told == 0; to--) {
                    for (RouteStep.Measure measure : steps.get(from).measures()) {
                        if (steps.get(to).operation().leaves().stream().anyMatch(l -> l.property() == measure.property())) {
                            told += ways(checked(whole.with(steps.get(from + 1).head().file().name(),
                                    loop(steps.get(from), steps.get(to), steps.get(from + 1), measure))), entry.getKey().name());
                        }
                    }
                }
            }
        }
        assertThat(told).as("numbers that a loop leaves").isPositive();
    }

    private static Ricasso checked(TrialHouse trial) {
        return Ricasso.check(trial.texts(), Ricasso.calculations(DerivationsTest.class.getClassLoader()), Set.of());
    }

    private static UnaryOperator<String> loop(RouteStep from, RouteStep to, RouteStep next, RouteStep.Measure measure) {
        int at = next.head().file().lineStart(next.head().line());
        return text -> text.substring(0, at) + "rework " + from.number() + " to " + to.number() + " { when: "
                + measure.property().name() + "; times: 2 }\n" + text.substring(at);
    }

    /** Of a loop that can be walked; one that asks for what is not there leaves values that nothing says. */
    private static int ways(Ricasso ricasso, String product) {
        if (ricasso.checked().diagnostics().stream().anyMatch(d -> d.name().equals("need-unmet"))) {
            return 0;
        }
        House house = ricasso.house();
        int told = 0;
        Walked walked = Walked.of(house, Walked.product(house, product));
        for (Property property : house.vocabulary().properties()) {
            Derivation why = walked.why(property.slot());
            if (why == null || !why.text().endsWith(", straight on or after rework")) {
                continue;
            }
            assertThat(why.value()).isEqualTo(walked.last()[property.slot()]);
            assertThat(why.inputs()).as("%s", why.lines()).hasSize(2);
            Value both = Joins.join(why.inputs().get(0).value(), why.inputs().get(1).value(), house.vocabulary().arithmetic());
            assertThat(both).isEqualTo(why.value());
            assertThat(String.join("\n", why.lines())).contains(", done again");
            told += why.value() instanceof Value.Num ? 1 : 0;
        }
        return told;
    }
}
