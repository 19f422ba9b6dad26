package org.ricasso.templates.page;

import java.util.List;

/**
 * The page of a product: all that is specified, and what became of it.
 *
 * @param identity whose sheet it is
 * @param summary how many characteristics came out how, in words; empty where there are none
 * @param meanings what the words for those outcomes mean
 * @param sections what is specified, by block
 * @param steps the route, with the fingerprint of each instruction
 * @param rules where the rule report lies
 * @param card where the route card lies
 * @param coverage where the coverage matrix lies
 * @param notJudged how many rules could not be judged
 * @param brought things that the product names and that do not come with the tool as they are
 */
public record SpecSheet(Identity identity, String summary, List<String> meanings, List<Section> sections,
        List<StepLink> steps, String rules, String card, String coverage, String notJudged, List<Knowledge> brought) {

    /**
     * A block of the spec.
     *
     * @param title its title
     * @param judged whether something in it is a characteristic
     * @param groups its rows
     */
    public record Section(String title, boolean judged, List<Group> groups) {
        static Section of(String title, List<Group> groups) {
            return new Section(title,
                    groups.stream().flatMap(g -> g.rows().stream()).anyMatch(r -> !r.became().isEmpty()), groups);
        }
    }

    /** Rows that belong together; {@code title} is empty for those of the section itself. */
    public record Group(String title, List<Row> rows) {}

    /**
     * An entry.
     *
     * @param label what
     * @param asked what is specified
     * @param became what the route makes of it, at most one; none for what is no characteristic
     */
    public record Row(String label, Shown asked, List<Became> became) {}

    /**
     * What became of a characteristic.
     *
     * @param word the outcome in a word
     * @param found what the route leaves
     * @param made the step that makes it, at most one
     * @param measured the steps that measure it after that
     * @param together whether the one step that makes it is the one that measures it
     */
    public record Became(String word, Shown found, List<StepLink> made, List<StepLink> measured, boolean together) {}
}
