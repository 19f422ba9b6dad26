package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.StepText;
import org.ricasso.dsl.house.Thing;

/** A step that is written once more elsewhere loses nothing. */
class StepTextTest {

    @Test
    void whatAStepMeasuresAndWatchesIsWrittenWithIt() {
        House house = Ricasso.check(TrialHouse.single().texts(), Ricasso.calculations(StepTextTest.class.getClassLoader()),
                Set.of()).house();
        int watching = 0;
        int measuring = 0;
        for (Map.Entry<Thing, Route> entry : house.routes().entrySet()) {
            for (RouteStep step : entry.getValue().all()) {
                RouteStep again = StepText.read(house.vocabulary(), entry.getKey(), StepText.of(step, step.number() + 1, true, true));
                assertThat(again).as("step %s of %s", step.number(), entry.getKey().name()).isNotNull();
                assertThat(again.watches()).extracting(RouteStep.Watch::setting).containsExactlyInAnyOrderElementsOf(
                        step.watches().stream().map(RouteStep.Watch::setting).toList());
                assertThat(again.measures()).extracting(RouteStep.Measure::property).containsExactlyInAnyOrderElementsOf(
                        step.measures().stream().map(RouteStep.Measure::property).toList());
                watching += again.watches().size();
                measuring += again.measures().size();
            }
        }
        assertThat(watching).isPositive();
        assertThat(measuring).isPositive();
    }
}
