package org.ricasso.templates.page;

import java.util.List;

/**
 * What the rules said of a product.
 *
 * @param identity whose sheet it is
 * @param specSheet where the spec sheet lies
 * @param fails rules that do not hold (warnings and notes; an error has no pages)
 * @param notJudged rules that could not be judged, with the reason
 * @param holds rules that hold
 * @param findings the findings on this product
 */
public record RuleReport(Identity identity, String specSheet, List<Ruling> fails, List<Ruling> notJudged,
        List<Ruling> holds, List<Finding> findings) {

    /**
     * A rule with all subjects where it came out alike.
     *
     * @param rule its name
     * @param title its title
     * @param whole whether the product as a whole is a subject of which nothing more is said
     * @param steps the steps of which nothing more is said
     * @param places the subjects of which more is said
     */
    public record Ruling(String rule, String title, boolean whole, List<StepLink> steps, List<Place> places) {}

    /**
     * A subject of a rule.
     *
     * @param step the step, at most one; none for the product as a whole
     * @param detail what failed or why it was not judged
     */
    public record Place(List<StepLink> step, String detail) {}
}
