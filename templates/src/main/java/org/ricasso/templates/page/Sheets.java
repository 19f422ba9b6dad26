package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.CheckedStep;

/**
 * Where the sheets of a product lie. All of them stand in the product's folder, so a link between them is a file name.
 *
 * @param folder the folder, a safe name
 * @param steps the steps by number, without fingerprints
 */
record Sheets(String folder, Map<Integer, StepLink> steps) {
    static final String SPEC_SHEET = "index.html";
    static final String RULES = "rules.html";
    static final String CARD = "card.html";
    static final String COVERAGE = "coverage.html";
    static final String STYLE = "style.css";
    static final String OVERVIEW = "index.html";

    static Sheets of(CheckedProduct product, String folder, Tongue tongue) {
        Map<Integer, StepLink> steps = new HashMap<>();
        for (CheckedStep step : product.steps()) {
            steps.put(step.number(), link(step, "", tongue));
        }
        return new Sheets(folder, steps);
    }

    static Where.Owner operation(CheckedStep step) {
        return new Where.Owner("operation", step.operation());
    }

    static StepLink link(CheckedStep step, String fingerprint, Tongue tongue) {
        return new StepLink(String.valueOf(step.number()), tongue.text(operation(step), step.title()),
                step.centre() == null ? "" : step.centre().name(), file(step), fingerprint);
    }

    static String file(CheckedStep step) {
        return "step-" + step.number() + ".html";
    }

    /** The step with this number; none for a number that no step has, such as 0. */
    List<StepLink> step(int number) {
        StepLink link = steps.get(number);
        return link == null ? List.of() : List.of(link);
    }

    List<StepLink> steps(List<Integer> numbers) {
        List<StepLink> result = new ArrayList<>();
        numbers.forEach(number -> result.addAll(step(number)));
        return result;
    }
}
