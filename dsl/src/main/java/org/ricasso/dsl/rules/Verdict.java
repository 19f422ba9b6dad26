package org.ricasso.dsl.rules;

import java.util.Set;
import org.ricasso.dsl.evaluate.Comparisons;
import org.ricasso.dsl.evaluate.Filled;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.vocabulary.Rule;

/**
 * What a rule comes to on one subject.
 *
 * @param outcome the outcome
 * @param truth what {@code require}, or {@code when} where that decided, was worth
 * @param detail what is said of a breach, or why it was not judged
 * @param said what is said of a breach with its values; null where the rule says nothing of its own
 */
public record Verdict(Outcome outcome, Truth truth, String detail, Filled said) {

    /** A rule passes only on what holds for all values. */
    public enum Outcome { HOLDS, FAILS, NOT_JUDGED, NOT_A_SUBJECT }

    private Verdict(Outcome outcome, Truth truth, String detail) {
        this(outcome, truth, detail, null);
    }

    /** Judges a rule on what a frame holds; the frame's in-between values are set. */
    public static Verdict of(Rule rule, Rule.Form form, Frame frame) {
        frame.reach = rule.level() == Rule.Level.SAFETY;
        try {
            frame.clearNotes();
            if (form.when() != null) {
                Truth when = Comparisons.truth(form.when().eval(frame));
                if (when == Truth.NONE) {
                    return new Verdict(Outcome.NOT_A_SUBJECT, when, "");
                }
                if (when == Truth.UNKNOWN) {
                    return new Verdict(Outcome.NOT_JUDGED, when, whyNot(frame));
                }
            }
            frame.clearNotes();
            frame.lets = new Value[form.lets().size()];
            for (int i = 0; i < frame.lets.length; i++) {
                frame.lets[i] = form.lets().get(i).eval(frame);
            }
            Truth truth = Comparisons.truth(form.require().eval(frame));
            if (truth == Truth.ALL) {
                return new Verdict(Outcome.HOLDS, truth, "");
            }
            if (frame.absent != null || frame.reported) {
                return new Verdict(Outcome.NOT_JUDGED, truth, whyNot(frame));
            }
            if (truth == Truth.UNKNOWN) {
                return new Verdict(Outcome.FAILS, truth, whyNot(frame));
            }
            Filled said = said(form, frame);
            return new Verdict(Outcome.FAILS, truth, said == null ? "does not hold: \"" + rule.title() + "\"" : said.text(), said);
        } finally {
            frame.reach = false;
        }
    }

    /** What is said of a breach; an example need not bind what only the saying reads. */
    private static Filled said(Rule.Form form, Frame frame) {
        if (form.say() == null) {
            return null;
        }
        Set<String> missing = Set.copyOf(frame.missing);
        Filled said = form.say().filled(frame);
        frame.missing.retainAll(missing);
        return said;
    }

    private static String whyNot(Frame frame) {
        if (frame.absent != null) {
            return frame.absent + " is not stated";
        }
        if (frame.reported) {
            return "it depends on a fault reported elsewhere";
        }
        return frame.refusals.isEmpty() ? "nothing says" : frame.refusals.get(0).reason();
    }
}
