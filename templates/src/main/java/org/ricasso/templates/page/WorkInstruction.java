package org.ricasso.templates.page;

import java.util.List;

/**
 * The page of a step, in the order in which an operator needs it.
 *
 * @param identity whose sheet it is
 * @param number the step's number
 * @param title the step's title
 * @param purpose why the step is there, or empty
 * @param works the part that is worked
 * @param centre the work centre's name, or empty
 * @param centreTitle its title, or empty
 * @param before the step before, at most one
 * @param after the step after, at most one
 * @param setUp the time to set up at least, or empty
 * @param run the time that the step takes, at most one
 * @param cautions the dangers
 * @param wear protective equipment as the works typed it; none where it did not
 * @param emergency emergency facts as the works typed them; none where it did not
 * @param ask whom to ask as the works typed it; none where it did not
 * @param arrival what the piece must be like on arrival
 * @param timeIn clocks that this step has to keep
 * @param ready what has to be at hand: what settings name and what the operation asks for, then what is used up
 * @param settings what is set
 * @param work the work, line by line
 * @param checks what is measured
 * @param timeOut clocks that begin with this step
 * @param handOn what the step leaves changed and the next step looks at
 * @param changes what else it leaves changed
 * @param more attributes of the operation that have no place of their own
 * @param centreFacts what is stated of the work centre
 * @param brought the knowledge behind the step that does not come with the tool
 */
public record WorkInstruction(Identity identity, String number, String title, String purpose, String works,
        String centre, String centreTitle, List<StepLink> before, List<StepLink> after, String setUp, List<Shown> run,
        List<Caution> cautions, List<String> wear, List<String> emergency, List<String> ask, List<Arrival> arrival, List<Clock> timeIn,
        List<Fact> ready, List<Fact> settings,
        List<Work> work, List<Check> checks, List<Clock> timeOut, List<Fact> handOn, List<Fact> changes, List<Fact> more,
        List<Fact> centreFacts, List<Knowledge> brought) {

    /**
     * A danger with its signs.
     *
     * @param thing what hurts
     * @param moment when, or empty
     * @param act what to do, or empty
     * @param signs the signs beside it
     */
    public record Caution(String thing, String moment, String act, List<Sign> signs) {}

    /**
     * A sign of ISO 7010.
     *
     * @param code its code there
     * @param title its title there, or empty
     * @param shape {@code warning}, {@code prohibition}, {@code mandatory}, {@code safe} or {@code fire} by the code's
     *     letter, else {@code none}
     */
    public record Sign(String code, String title, String shape) {}

    /**
     * A thing to look at before the work begins.
     *
     * @param label what
     * @param condition what it must be like
     * @param complaint what happens otherwise, or empty
     */
    public record Arrival(String label, String condition, String complaint) {}

    /**
     * A time that must be kept and written down, because no route can prove it.
     *
     * @param label which time
     * @param limit the limit
     * @param other the step at the other end, at most one
     * @param complaint what happens otherwise, or empty
     */
    public record Clock(String label, String limit, List<StepLink> other, String complaint) {}

    /** A line of the work in runs. */
    public record Work(List<Run> runs) {}

    /** A stretch of a line; {@code value} says whether it is a setting. */
    public record Run(String text, boolean value) {}

    /**
     * A characteristic to measure, or a setting to watch.
     *
     * @param label what
     * @param limit the limit
     * @param note what it is measured for; empty where the product specifies it
     * @param facts gauge, sample and the rest
     */
    public record Check(String label, Shown limit, String note, List<Fact> facts) {}
}
