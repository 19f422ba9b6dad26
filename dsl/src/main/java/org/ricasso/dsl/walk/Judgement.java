package org.ricasso.dsl.walk;

import java.util.List;
import org.ricasso.dsl.evaluate.Margin;

/**
 * A rule's verdict on one subject.
 *
 * @param rule the rule's name
 * @param title its title
 * @param step the number of the step it was judged at, 0 for the product
 * @param verdict what came out
 * @param detail why it was not judged, or what failed; empty where it holds
 * @param margins how far the numbers that the rule compares are from where the verdict would change
 */
public record Judgement(String rule, String title, int step, Verdict verdict, String detail, List<Margin> margins) {
    public Judgement {
        margins = List.copyOf(margins);
    }

    /** The verdicts. */
    public enum Verdict { HOLDS, FAILS, NOT_JUDGED }
}
