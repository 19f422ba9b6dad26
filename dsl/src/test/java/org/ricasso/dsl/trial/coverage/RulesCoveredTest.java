package org.ricasso.dsl.trial.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.trial.TrialHouse;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;

/**
 * The reference's 72 rules of order and limits ({@code operation-rules.csv}, a copy with its sources stands beside the second opinion): {@code rules.csv}
 * says of each which needs, rules, ranges and leaves of the shipped texts hold it, and what of it is only said.
 * {@code NeedsAreJudgedTest} breaks the needs, the rules' own examples the rules.
 */
class RulesCoveredTest {
    static final List<Map<String, String>> MAP = Rows.of("/org/ricasso/dsl/trial/coverage/rules.csv");
    private static final Vocabulary VOCABULARY = TrialHouse.whole().vocabulary(new Findings());

    static Stream<Holder> holders() {
        return MAP.stream().flatMap(row -> Holder.in(row.get("held by")).stream());
    }

    @Test
    void everyRuleStandsThereOnce() {
        assertThat(MAP).extracting(row -> row.get("rule")).hasSize(72)
                .isEqualTo(Rows.of("/org/ricasso/oracle/operation-rules.csv").stream().map(row -> row.get("rule_id")).toList());
    }

    @Test
    void whatHoldsThemIsThere() {
        assertThat(holders().filter(holder -> !holder.exists(VOCABULARY))).isEmpty();
    }

    /** What a person reads and nobody checks holds no rule alone. */
    @Test
    void eachIsJudged() {
        assertThat(MAP.stream().filter(row -> Holder.in(row.get("held by")).stream().noneMatch(h -> Holder.JUDGED.contains(h.what()))))
                .isEmpty();
    }

    /** That the example fails, and no other, {@code RulesOfTheTradeTest} holds of every rule. */
    @Test
    void eachRuleOfTheTextsShowsHowItIsBroken() {
        assertThat(holders().filter(h -> h.what().equals("rule")).map(h -> VOCABULARY.rule(h.name()))
                .filter(rule -> rule.examples().stream().allMatch(Rule.Example::passes))).isEmpty();
    }
}
