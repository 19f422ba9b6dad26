package org.ricasso.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is read of one job, and what is found in it. */
final class Reading {
    private static final Map<String, Map<String, String>> RULES = Table.rows("operation-rules.csv").stream()
            .collect(Collectors.toMap(r -> r.get("rule_id"), Function.identity()));
    final Job job;
    private final List<Violation> found = new ArrayList<>();

    Reading(Job job) {
        this.job = job;
    }

    List<Violation> found() {
        return List.copyOf(found);
    }

    States.Operation operation(int step) {
        States.Operation operation = States.OPERATIONS.get(job.steps().get(step).operation());
        if (operation == null) {
            throw new IllegalArgumentException("the reading has no operation " + job.steps().get(step).operation());
        }
        return operation;
    }

    /** The first step from some place on whose operation is one of the named; -1 if there is none. */
    int next(int from, String... operations) {
        for (int i = from; i < job.steps().size(); i++) {
            if (List.of(operations).contains(job.steps().get(i).operation())) {
                return i;
            }
        }
        return -1;
    }

    /** The last step of the named operations; -1 if there is none. */
    int last(String... operations) {
        for (int i = job.steps().size() - 1; i >= 0; i--) {
            if (List.of(operations).contains(job.steps().get(i).operation())) {
                return i;
            }
        }
        return -1;
    }

    /** A violation as grave as the reference's table of rules says; what is no rule of that table is grave. */
    void add(String rule, int step, String at, String text) {
        Map<String, String> row = RULES.get(rule);
        add(rule, row == null || row.get("severity").equals("error"), step, at, text);
    }

    void add(String rule, boolean grave, int step, String at, String text) {
        found.add(new Violation(rule, grave, step, at, text));
    }
}
