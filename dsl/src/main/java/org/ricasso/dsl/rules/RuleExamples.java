package org.ricasso.dsl.rules;

import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Table;
import org.ricasso.dsl.evaluate.Uses;
import org.ricasso.dsl.source.Origin;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** Runs the examples of rules: each rule has one that passes and one that fails, and they do. */
public final class RuleExamples {
    private RuleExamples() {}

    public static void run(Vocabulary vocabulary, Findings findings) {
        for (Rule rule : vocabulary.rules()) {
            for (boolean passes : new boolean[] {true, false}) {
                if (rule.examples().stream().noneMatch(e -> e.passes() == passes)) {
                    findings.error("example-missing", rule.syntax().head().name().span(),
                            "the rule has no example that " + (passes ? "passes" : "fails"));
                }
            }
            rule.examples().forEach(example -> run(rule, example, findings));
        }
    }

    /** Whether rows were asked that were put before those which the rule's writer knew: the example speaks of those. */
    private static boolean others(Rule rule, Uses uses) {
        Origin writer = Origin.of(rule.syntax().head().name().span());
        return uses.rows.keySet().stream()
                .anyMatch(row -> row.layer() != Table.Layer.TABLE && !Origin.of(row.span()).equals(writer));
    }

    private static void run(Rule rule, Rule.Example example, Findings findings) {
        Frame frame = new Frame();
        frame.bound = example.bound();
        frame.uses = new Uses();
        Verdict verdict = Verdict.of(rule, example.form() == null ? rule.general() : example.form(), frame);
        if (!frame.missing.isEmpty()) {
            findings.error("example-incomplete", example.span(),
                    "the example does not bind " + String.join(", ", new TreeSet<>(frame.missing)));
            return;
        }
        if (frame.reported) {
            return;
        }
        Verdict.Outcome asked = example.passes() ? Verdict.Outcome.HOLDS : Verdict.Outcome.FAILS;
        if (verdict.outcome() != asked && !others(rule, frame.uses)) {
            Diagnostic diagnostic = Diagnostic.error("example-contradicts", new Mark(example.span(), switch (verdict.outcome()) {
                case HOLDS -> "the rule holds here";
                case FAILS -> "the rule fails here";
                case NOT_JUDGED -> "the rule is not judged here";
                case NOT_A_SUBJECT -> "the rule's when: does not hold here";
            }));
            findings.add(verdict.detail().isEmpty() ? diagnostic : diagnostic.because(verdict.detail()));
        }
    }
}
