package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** The shipped rules: none says what its examples do not show, and most look at the workpiece, not at the form. */
class RulesOfTheTradeTest {
    private static final Pattern REQUIRE = Pattern.compile("(?m)^(    require: )(.*)$");
    private static Vocabulary vocabulary;

    @BeforeAll
    static void load() {
        Findings findings = new Findings();
        vocabulary = TrialHouse.whole().vocabulary(findings);
        assertThat(findings.all()).isEmpty();
    }

    @Test
    void thereIsEnoughToWorkWith() {
        System.out.printf(Locale.ROOT, "shipped: %d operations, %d rules, %d tables%n", vocabulary.operations().size(),
                vocabulary.rules().size(), vocabulary.tableNames().size());
        assertThat(vocabulary.operations()).hasSizeGreaterThanOrEqualTo(20);
        assertThat(vocabulary.rules()).hasSizeGreaterThanOrEqualTo(30);
        assertThat(vocabulary.tableNames()).hasSizeGreaterThanOrEqualTo(8);
    }

    /** With its {@code require} negated each rule is contradicted by each of its examples, and by nothing else. */
    @Test
    void aNegatedRuleIsContradictedByItsOwnExamples() {
        TrialHouse negated = TrialHouse.whole();
        int replaced = 0;
        for (String name : TrialHouse.whole().names()) {
            if (name.startsWith("ricasso/rules/")) {
                replaced += (int) REQUIRE.matcher(negated.file(name).text()).results().count();
                negated = negated.with(name, text -> REQUIRE.matcher(text).replaceAll("$1not ($2)"));
            }
        }
        assertThat(replaced).isEqualTo(vocabulary.rules().size());
        Findings findings = new Findings();
        Vocabulary other = negated.vocabulary(findings);
        Map<String, List<String>> contradicted = new TreeMap<>();
        for (Diagnostic diagnostic : findings.all()) {
            assertThat(diagnostic.name()).as(diagnostic.primary().text()).isEqualTo("example-contradicts");
            Rule rule = other.rules().stream().filter(r -> r.examples().stream()
                    .anyMatch(e -> e.span().equals(diagnostic.primary().span()))).findFirst().orElseThrow();
            contradicted.computeIfAbsent(rule.name(), n -> new ArrayList<>()).add(diagnostic.primary().span().text());
        }
        for (Rule rule : other.rules()) {
            assertThat(contradicted.getOrDefault(rule.name(), List.of())).as(rule.name())
                    .hasSize(rule.examples().size()).contains("passes", "fails");
        }
    }

    /** A rule reads the state of the workpiece if its {@code when}, a {@code let} or its {@code require} does. */
    @Test
    void atLeastHalfReadTheStateOfTheWorkpiece() {
        List<String> reading = vocabulary.rules().stream().filter(r -> !properties(r).isEmpty()).map(Rule::name).toList();
        System.out.printf(Locale.ROOT, "%d of %d rules read the state of the workpiece%n", reading.size(),
                vocabulary.rules().size());
        assertThat(2 * reading.size()).isGreaterThanOrEqualTo(vocabulary.rules().size());
    }

    /**
     * A rule reads the effects of two steps if it reads two properties that are not left by the same operations, so that
     * one of them can come from a step that does not touch the other.
     */
    @Test
    void atLeastEightReadTheEffectsOfTwoSteps() {
        List<String> reading = vocabulary.rules().stream().filter(rule -> {
            Set<Set<String>> leaving = properties(rule).stream().map(RulesOfTheTradeTest::leaving)
                    .filter(names -> !names.isEmpty()).collect(Collectors.toSet());
            return leaving.size() > 1;
        }).map(Rule::name).toList();
        System.out.printf(Locale.ROOT, "%d rules read the effects of two steps: %s%n", reading.size(), reading);
        assertThat(reading).hasSizeGreaterThanOrEqualTo(8).contains("rivets-reach", "scallop-leaves-steel", "keep-the-temper");
    }

    /** Slots of properties that a rule reads in any of its forms. */
    private static Set<Integer> properties(Rule rule) {
        Set<Integer> result = new TreeSet<>();
        List<Rule.Form> forms = new ArrayList<>(rule.forms().values());
        forms.add(rule.general());
        for (Rule.Form form : forms) {
            result.addAll(form.reads().properties);
            result.addAll(form.asked().properties);
        }
        return result;
    }

    /** The names of the operations that leave a property. */
    private static Set<String> leaving(int slot) {
        return vocabulary.operations().stream().filter(o -> o.leaves().stream().anyMatch(l -> l.property().slot() == slot))
                .map(Operation::name).collect(Collectors.toCollection(TreeSet::new));
    }
}
