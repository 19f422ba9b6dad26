package org.ricasso.dsl.walk;

/**
 * A rule's verdict on one subject.
 *
 * @param rule the rule's name
 * @param title its title
 * @param step the number of the step it was judged at, 0 for the product
 * @param verdict what came out
 * @param detail why it was not judged, or what failed; empty where it holds
 */
public record Judgement(String rule, String title, int step, Verdict verdict, String detail) {
    /** The verdicts. */
    public enum Verdict { HOLDS, FAILS, NOT_JUDGED }
}
