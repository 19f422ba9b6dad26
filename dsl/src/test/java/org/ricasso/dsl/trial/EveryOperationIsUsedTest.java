package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.CheckedStep;

/** The demonstration house uses every operation that is shipped, in routes against which nothing stands. */
class EveryOperationIsUsedTest {
    private static final String DECLARED = "operation ";

    @Test
    void inAValidRoute() {
        TrialHouse house = TrialHouse.whole();
        Set<String> shipped = house.texts().files().stream().filter(SourceFile::shipped).flatMap(f -> f.text().lines())
                .filter(l -> l.startsWith(DECLARED)).map(l -> l.substring(DECLARED.length()).split(" ")[0])
                .collect(Collectors.toCollection(TreeSet::new));
        CheckedHouse checked = house.check();
        Set<String> used = checked.products().stream().flatMap(p -> p.steps().stream()).map(CheckedStep::operation)
                .collect(Collectors.toSet());

        assertThat(house.errors()).isEmpty();
        assertThat(shipped).hasSizeGreaterThan(90);
        assertThat(used).containsAll(shipped);
    }
}
