package org.ricasso.dsl.syntax;

import org.ricasso.dsl.source.Span;

/** A line of a route. */
public sealed interface RouteItem {
    Span span();

    /** {@code 170 temper at temper-3 { … }}: a step of its own. */
    record Own(Step step, Span span) implements RouteItem {}

    /** {@code change 170 temper { … }}: a step taken over, with other settings. */
    record Change(Step step, Span span) implements RouteItem {}

    /** {@code add 255 scallop at scallop-cell { … }}: a step put between those taken over. */
    record Add(Step step, Span span) implements RouteItem {}

    /** {@code omit 300 passivate}: a step taken over that is left out. */
    record Omit(Step step, Span span) implements RouteItem {}

    /** {@code rework 200 to 180 { when: straightness; times: 2 }} */
    record Rework(Name from, Name to, Block block, Span span) implements RouteItem {}

    /** {@code part scales like scales-pom}: a part with a route of its own. */
    record Part(Name part, Name like, Span span) implements RouteItem {}

    /**
     * A cell of a family's row: one setting of the step with this number.
     *
     * @param number the step's number as the column names it
     * @param setting the setting
     * @param value its value in the row
     */
    record Cell(Name number, Path setting, EntryValue value, Span span) implements RouteItem {}
}
