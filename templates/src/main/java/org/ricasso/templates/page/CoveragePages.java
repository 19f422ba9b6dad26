package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.CheckedStep;
import org.ricasso.dsl.walk.Outcome;

/** Makes the matrix of what is specified against the steps of the route. */
final class CoveragePages {
    private final CheckedProduct checked;
    private final Thing product;
    private final Tongue tongue;

    private CoveragePages(CheckedProduct checked, Tongue tongue) {
        this.checked = checked;
        this.product = checked.product();
        this.tongue = tongue;
    }

    static CoverageMatrix page(Identity identity, CheckedProduct checked, Tongue tongue) {
        CoveragePages pages = new CoveragePages(checked, tongue);
        return new CoverageMatrix(identity, checked.outcomes().stream().map(pages::characteristic).toList(),
                checked.steps().stream().map(pages::row).toList(),
                checked.steps().stream().flatMap(step -> pages.process(step).stream()).toList());
    }

    private CoverageMatrix.Characteristic characteristic(Outcome outcome) {
        Where property = Tongue.property(product, outcome.path());
        return new CoverageMatrix.Characteristic(tongue.property(product, outcome.path(), ""),
                tongue.values().shown(outcome.asked(), property), Names.capital(SpecPages.word(outcome.made(), tongue)));
    }

    private CoverageMatrix.Row row(CheckedStep step) {
        return new CoverageMatrix.Row(Sheets.link(step, "", tongue), checked.outcomes().stream().map(outcome -> {
            boolean makes = outcome.madeAt() == step.number();
            boolean changes = step.disturbs().contains(outcome.path())
                    || step.handOver().stream().anyMatch(left -> left.path().equals(outcome.path()));
            boolean measures = step.measured().stream().anyMatch(measured -> measured.path().equals(outcome.path()));
            return new CoverageMatrix.Cell(makes, changes && !makes, measures);
        }).toList());
    }

    private List<CoverageMatrix.Process> process(CheckedStep step) {
        StepLink link = Sheets.link(step, "", tongue);
        List<CoverageMatrix.Process> result = new ArrayList<>();
        for (CheckedStep.Watched watched : step.watched()) {
            Where setting = Tongue.settingsOf(product, step).in(watched.setting());
            result.add(new CoverageMatrix.Process(link, tongue.label(setting), tongue.values().shown(watched.limit(), setting), true));
        }
        for (CheckedStep.Measured measured : step.measured()) {
            if (!measured.characteristic()) {
                result.add(new CoverageMatrix.Process(link, tongue.property(product, measured.path(), step.works()),
                        tongue.values().shown(measured.limit(), Tongue.property(product, measured.path())), false));
            }
        }
        return result;
    }
}
