package org.ricasso.dsl.source;

/**
 * How much is read. Each limit lies far above what people write and below what would use up stack, memory or patience;
 * beyond it stands a finding with a remedy. They are told in {@code LANGUAGE.md}, which a test compares with this.
 */
public final class Limits {
    /** Characters (UTF-16 units) of a text or a table's file. */
    public static final int FILE_CHARACTERS = 2_000_000;
    /** Words, numbers, texts and signs of a text. */
    public static final int FILE_WORDS = 500_000;
    /** How deep brackets and operators may hang into each other; see {@code Nesting}. */
    public static final int NESTING = 100;
    /** Words, numbers, texts and signs of one entry or row: of an expression, a list, an example's line. */
    public static final int LINE_WORDS = 5_000;
    /** Digits of a number, without zeros before the first other one: more does no double hold. */
    public static final int DIGITS = 15;
    /** Findings of the syntax that are told of one text. */
    public static final int SYNTAX_FINDINGS = 1_000;
    /** Rows of a table, those put before it counted. */
    public static final int TABLE_ROWS = 20_000;
    /** Points at which one look-up between rows is worked out: corners and grid lines inside what is asked for. */
    public static final int LOOK_UP_POINTS = 100_000;
    /** Steps of a product's route, those of its parts counted. */
    public static final int ROUTE_STEPS = 1_000;
    /** Steps that all loops of a product's route add, each as often as it may be gone. */
    public static final int REWORK_STEPS = 10_000;
    /** How often one thing or route is {@code like} another that is {@code like} another … */
    public static final int LIKE = 50;

    private Limits() {}
}
