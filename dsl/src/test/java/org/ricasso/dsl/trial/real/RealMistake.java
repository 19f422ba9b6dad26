package org.ricasso.dsl.trial.real;

import java.util.List;
import java.util.function.UnaryOperator;
import org.ricasso.dsl.trial.RouteEdit;
import org.ricasso.dsl.trial.Stretch;
import org.ricasso.dsl.trial.TrialHouse;

/**
 * A mistake as engineers really make it, made in the house.
 *
 * @param id what its golden file is called: its number and a word or two, such as {@code 07-edge-too-thin}
 * @param title what was done wrong
 * @param good the house without it
 * @param make the house with it, from the good one
 * @param said all that is found, in the order in which it is shown; nothing where the change is sound
 */
record RealMistake(String id, String title, TrialHouse good, UnaryOperator<TrialHouse> make, List<Said> said) {
    private static final TrialHouse ONE = TrialHouse.single();

    /** A mistake in the house with one cook's knife and the paring knife. */
    static RealMistake of(String id, String title, UnaryOperator<TrialHouse> make, Said... said) {
        return new RealMistake(id, title, ONE, make, List.of(said));
    }

    TrialHouse house() {
        return make.apply(good);
    }

    @Override
    public String toString() {
        return id;
    }

    /** The house with another text in one stretch, which must stand in the file once, behind the beginning of a step or block. */
    static TrialHouse in(TrialHouse house, String file, String begin, String old, String other) {
        return house.with(file, text -> inText(text, begin, old, other));
    }

    /** A text that is other in one stretch of the block that begins so. */
    static String inText(String text, String begin, String old, String other) {
        Stretch block = RouteEdit.block(text, begin);
        return text.substring(0, block.start()) + Stretch.replaced(text.substring(block.start(), block.end()), old, other)
                + text.substring(block.end());
    }

    /** The house without a step or block of a file. */
    static TrialHouse without(TrialHouse house, String file, String begin) {
        return house.with(file, text -> RouteEdit.without(text, begin));
    }

    /** The house with a step put behind another one, under another number. */
    static TrialHouse moved(TrialHouse house, String file, String begin, int number, String behind) {
        return house.with(file, text -> RouteEdit.moved(text, begin, number, behind));
    }

    /** The house with lines put behind a step or block of a file. */
    static TrialHouse added(TrialHouse house, String file, String behind, String lines) {
        return house.with(file, text -> {
            int end = RouteEdit.block(text, behind).end();
            return text.substring(0, end) + lines + text.substring(end);
        });
    }
}
