package org.ricasso.templates.page;

import java.util.List;

/**
 * What the rules said of a product.
 *
 * @param identity whose sheet it is
 * @param specSheet where the spec sheet lies
 * @param characteristics what became of each characteristic, and with what to spare
 * @param fails rules that do not hold (warnings and notes; an error has no pages)
 * @param notJudged rules that could not be judged, with the reason
 * @param holds rules that hold
 * @param findings the findings on this product
 */
public record RuleReport(Identity identity, String specSheet, List<Made> characteristics, List<Ruling> fails,
        List<Ruling> notJudged, List<Ruling> holds, List<Finding> findings) {

    /**
     * A characteristic.
     *
     * @param label its name
     * @param asked what the spec asks
     * @param became proved, aimed, missed or unmade
     * @param room how far it is from its limit, at most one; none where that is no number
     */
    public record Made(String label, Shown asked, String became, List<Room> room) {}

    /**
     * How far a number is from where the verdict changes.
     *
     * @param of the comparison as written; empty for a characteristic inside its limit
     * @param aim what the aim has to spare
     * @param reach what the aim with all scatter has to spare; empty where that is the same
     */
    public record Room(String of, String aim, String reach) {}

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
     * @param detail what failed or why it was not judged; empty where it holds
     * @param room how far the numbers are from where the verdict changes
     */
    public record Place(List<StepLink> step, String detail, List<Room> room) {}
}
