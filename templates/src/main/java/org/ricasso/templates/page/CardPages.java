package org.ricasso.templates.page;

import java.util.List;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.CheckedStep;

/** Makes the route card of a product. */
final class CardPages {
    private final CheckedProduct checked;
    private final Sheets sheets;
    private final Tongue tongue;
    private final Arrivals arrivals;

    private CardPages(CheckedProduct checked, Sheets sheets, Tongue tongue) {
        this.checked = checked;
        this.sheets = sheets;
        this.tongue = tongue;
        this.arrivals = new Arrivals(checked, sheets, tongue);
    }

    static RouteCard page(Identity identity, CheckedProduct checked, Sheets sheets, Tongue tongue) {
        CardPages pages = new CardPages(checked, sheets, tongue);
        return new RouteCard(identity, checked.steps().stream().map(pages::row).toList());
    }

    private RouteCard.Row row(CheckedStep step) {
        List<RouteCard.Rework> rework = checked.loops().stream()
                .filter(loop -> loop.from() == step.number())
                .map(loop -> new RouteCard.Rework(tongue.label(Tongue.property(checked.product(), loop.path())),
                        sheets.step(loop.to()), String.valueOf(loop.times())))
                .toList();
        return new RouteCard.Row(Sheets.link(step, "", tongue), arrivals.timeIn(step), !arrivals.timeOut(step).isEmpty(), rework);
    }
}
