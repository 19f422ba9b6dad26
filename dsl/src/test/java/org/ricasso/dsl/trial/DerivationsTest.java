package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.evaluate.Derivation;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
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
                if (why == null || last instanceof Value.Clock || last instanceof Value.Unknown) {
                    continue;
                }
                assertThat(why.value()).as("%s of %s", property.path(), entry.getKey()).isEqualTo(last);
                assertThat(why.lines()).as(property.path()).isNotEmpty();
                replayed++;
            }
        }
        assertThat(replayed).isGreaterThan(60);
    }
}
