package org.ricasso.oracle;

/**
 * What is not as the reference asks.
 *
 * @param rule the reference's rule, operation, or the plain demand it violates
 * @param grave whether it spoils the knife or harms somebody; else the shop would ask
 * @param step the step's place in the job, or -1
 * @param at a setting, a measured property, or a path of the spec; empty for the step itself
 * @param text what is wrong
 */
public record Violation(String rule, boolean grave, int step, String at, String text) {}
