package org.ricasso.dsl.trial.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.trial.TrialHouse;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;

/**
 * A work centre's limits bound what a step may ask of it: every number that a centre states is read by the rules that
 * {@code centre-limits.csv} names, and every size that a step sets the work to is held against the centre's scatter.
 */
class CentreLimitsTest {
    private static final List<Map<String, String>> MAP = Rows.of("/org/ricasso/dsl/trial/coverage/centre-limits.csv");
    private static final Vocabulary VOCABULARY = TrialHouse.whole().vocabulary(new Findings());

    @Test
    void everyNumberOfACentreIsBound() {
        assertThat(MAP.stream().map(row -> row.get("entry"))).containsExactlyInAnyOrderElementsOf(VOCABULARY.entries("centre").values().stream()
                .filter(entry -> entry.type() instanceof Type.Measured).map(EntryType::name).toList());
        assertThat(MAP.stream().flatMap(row -> Holder.in(row.get("held by")).stream()).filter(holder -> !holder.exists(VOCABULARY))).isEmpty();
    }

    @Test
    void theRulesReadIt() {
        List<String> wrong = new ArrayList<>();
        for (Map<String, String> row : MAP) {
            for (Holder holder : Holder.in(row.get("held by"))) {
                if (holder.what().equals("rule") && !reads(VOCABULARY.rule(holder.name()), row.get("entry"))) {
                    wrong.add(holder + " does not read " + row.get("entry"));
                }
            }
            if (row.get("why").isEmpty() && Holder.in(row.get("held by")).stream().noneMatch(h -> h.what().equals("rule"))) {
                wrong.add(row.get("entry"));
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** A setting from which a step makes a size, within the centre's scatter, is asked no more exactly than the centre can. */
    @Test
    void everySizeThatIsSetIsHeldAgainstTheScatter() {
        Set<String> open = new TreeSet<>();
        int sizes = 0;
        for (Operation operation : VOCABULARY.operations()) {
            for (Operation.Leave leave : operation.leaves()) {
                Set<String> scatters = leave.reads().centre.stream().filter(e -> e.equals("scatter") || e.endsWith("-scatter"))
                        .collect(Collectors.toSet());
                for (int setting : scatters.isEmpty() ? List.<Integer>of() : List.copyOf(leave.reads().settings)) {
                    String name = operation.takes().get(setting).name();
                    // what is left on comes to the nominal size of the product: no size of its own
                    if (operation.takes().get(setting).type() instanceof Type.WordsOf || name.equals("allowance")) {
                        continue;
                    }
                    sizes++;
                    boolean held = VOCABULARY.rulesAt(operation).stream().map(judged -> judged.form().reads())
                            .anyMatch(reads -> reads.settings.contains(setting) && reads.centre.stream().anyMatch(scatters::contains));
                    if (!held) {
                        open.add(operation.name() + "." + name + " within " + scatters);
                    }
                }
            }
        }
        assertThat(open).isEmpty();
        assertThat(sizes).isGreaterThan(25);
    }

    private static boolean reads(Rule rule, String entry) {
        return rule.general().reads().centre.contains(entry);
    }
}
