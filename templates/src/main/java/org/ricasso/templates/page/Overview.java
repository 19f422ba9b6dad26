package org.ricasso.templates.page;

import java.util.List;

/**
 * The first page of a set.
 *
 * @param house the house's title
 * @param products its products
 * @param stepsOpen whether the steps are unfolded from the start
 * @param findings warnings and notes
 */
public record Overview(String house, List<Product> products, boolean stepsOpen, List<Finding> findings) {

    /**
     * A product with its sheets.
     *
     * @param identity what it is
     * @param href where its spec sheet lies
     * @param fingerprint of the spec sheet
     * @param rules where its rule report lies
     * @param card where its route card lies
     * @param coverage where its coverage matrix lies
     * @param steps where its instructions lie
     * @param notJudged how many rules could not be judged on it; empty for none
     */
    public record Product(Identity identity, String href, String fingerprint, String rules, String card, String coverage,
            List<StepLink> steps, String notJudged) {}
}
