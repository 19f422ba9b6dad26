package org.ricasso.templates.page;

import java.util.List;

/**
 * Which step makes, can change and measures what is specified.
 *
 * @param identity whose page it is
 * @param characteristics what is specified, in the order of the spec
 * @param rows the steps in the order of the route
 * @param process what steps measure and watch beside that, in the order of the route
 */
public record CoverageMatrix(Identity identity, List<Characteristic> characteristics, List<Row> rows, List<Process> process) {

    /**
     * A characteristic.
     *
     * @param label what
     * @param asked what is specified
     * @param word what the route makes of it, in a word
     */
    public record Characteristic(String label, Shown asked, String word) {}

    /** A step with a cell for each characteristic. */
    public record Row(StepLink step, List<Cell> cells) {}

    /**
     * What a step does to a characteristic.
     *
     * @param makes whether it is the last that leaves it changed
     * @param changes whether it changes it otherwise, or can
     * @param measures whether it measures it
     */
    public record Cell(boolean makes, boolean changes, boolean measures) {}

    /**
     * Something measured that the product does not specify, or a setting that is watched.
     *
     * @param step the step
     * @param label what
     * @param limit the limit
     * @param watched whether it is a setting
     */
    public record Process(StepLink step, String label, Shown limit, boolean watched) {}
}
