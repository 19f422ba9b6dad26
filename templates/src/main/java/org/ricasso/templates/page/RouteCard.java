package org.ricasso.templates.page;

import java.util.List;

/**
 * The card that travels with a lot: every step with room for what became of the lot there.
 *
 * @param identity whose card it is
 * @param rows the steps in the order of the route
 */
public record RouteCard(Identity identity, List<Row> rows) {

    /**
     * A step.
     *
     * @param step the step with its instruction
     * @param timeIn times that the step has to keep
     * @param timeOut whether the time at which the step ends is asked for later
     * @param rework ways back from this step
     */
    public record Row(StepLink step, List<WorkInstruction.Clock> timeIn, boolean timeOut, List<Rework> rework) {}

    /**
     * A way back.
     *
     * @param label what is not right
     * @param to the step that the pieces go back to, at most one
     * @param times how often a piece may go back
     */
    public record Rework(String label, List<StepLink> to, String times) {}
}
