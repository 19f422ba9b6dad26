package org.ricasso.dsl.trial;

import java.util.function.UnaryOperator;
import org.ricasso.dsl.source.SourceFile;

/**
 * A mistake as an engineer makes it, and what the check must say.
 *
 * @param title what was done wrong
 * @param make the house with it, from the good one
 * @param file the text that the finding marks
 * @param marked the stretch that is marked
 * @param behind what stands before the marked stretch, to tell it from others like it
 * @param name the finding's name
 * @param says what its own words must hold
 * @param because what its reasons must hold
 */
record Mistake(String title, UnaryOperator<TrialHouse> make, String file, String behind, String marked, String name,
        String says, String because) {

    TrialHouse house() {
        return make.apply(TrialHouse.whole());
    }

    /** Where the marked stretch begins in the mistaken text. */
    int offset(TrialHouse house) {
        SourceFile text = house.file(file);
        int from = text.text().indexOf(behind);
        if (from < 0 || text.text().indexOf(marked, from) < 0) {
            throw new AssertionError("nothing like " + behind + " … " + marked + " stands in " + file);
        }
        return text.text().indexOf(marked, from);
    }

    /** {@code file:line:column} of the marked stretch. */
    String place(TrialHouse house) {
        SourceFile text = house.file(file);
        int offset = offset(house);
        return file + ":" + text.line(offset) + ":" + text.column(offset);
    }
}
