package org.ricasso.dsl.walk;

import java.util.List;
import org.ricasso.dsl.evaluate.Filled;
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
 * @param said what failed with its values, in the words of the rule; null where it says nothing of its own
 */
public record Judgement(String rule, String title, int step, Verdict verdict, String detail, List<Margin> margins,
        Filled said) {
    public Judgement {
        margins = List.copyOf(margins);
    }

    /** A judgement of which the rule says nothing of its own. */
    public Judgement(String rule, String title, int step, Verdict verdict, String detail, List<Margin> margins) {
        this(rule, title, step, verdict, detail, margins, null);
    }

    /** The verdicts. */
    public enum Verdict { HOLDS, FAILS, NOT_JUDGED }
}
