package org.ricasso.dsl.house;

import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.vocabulary.Family;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** Every row of a family says what another size needs another value of: entries and settings marked {@code sized}. */
final class Sizes {
    private final Vocabulary vocabulary;
    private final Findings findings;

    Sizes(Vocabulary vocabulary, Findings findings) {
        this.vocabulary = vocabulary;
        this.findings = findings;
    }

    /** @param base the product that the family takes over, with its route; nothing is asked where it is not known */
    void check(Family family, Thing base, Route route) {
        if (base == null) {
            return;
        }
        for (Family.Row row : family.rows()) {
            entries(row, base, base.kind(), "");
            if (route != null) {
                route.steps().forEach(step -> settings(row, step));
            }
        }
    }

    private void entries(Family.Row row, Thing base, String kind, String prefix) {
        for (EntryType entry : vocabulary.entries(kind).values()) {
            String path = prefix + entry.name();
            Value value = base.at(path);
            if (value instanceof Value.Absent || value instanceof Value.Unknown) {
                continue;
            }
            if (entry.sized()) {
                ask(row, path, base.places().containsKey(path) ? base.places().get(path).value() : base.span());
            } else if (entry.type() instanceof Type.ThingOf of && value instanceof Value.Entries) {
                entries(row, base, of.kind(), path + ".");
            }
        }
    }

    private void settings(Family.Row row, RouteStep step) {
        if (step.operation() == null) {
            return;
        }
        for (int i = 0; i < step.settings().length; i++) {
            if (step.operation().takes().get(i).sized() && step.places()[i] != null) {
                ask(row, "route." + step.number() + "." + step.operation().takes().get(i).name(), step.places()[i]);
            }
        }
    }

    private void ask(Family.Row row, String path, org.ricasso.dsl.source.Span base) {
        if (!row.written().containsKey(path)) {
            findings.add(Diagnostic.error("size-missing", new Mark(row.span(), row.product().head().name()
                    + " says nothing of " + path + ", which every size has its own of"))
                    .and(new Mark(base, "the value it would take over"))
                    .because("a size that keeps another size's value is made wrong without a sign"));
        }
    }
}
