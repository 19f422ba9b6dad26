package org.ricasso.dsl.trial;

import java.util.function.UnaryOperator;
import org.ricasso.dsl.source.SourceFile;

/**
 * A mistake as an engineer makes it, and what the check must say of it.
 *
 * @param id what its golden file is called
 * @param title what was done wrong
 * @param make the house with it, from the good one
 * @param file the text that the finding marks
 * @param behind a stretch of that text behind which the marked stretch comes next
 * @param marked the marked stretch
 * @param name the finding's name
 * @param says what its own words must hold
 * @param reason what the reasons, or what is said as well, must hold; empty where the words alone are the reason
 * @param mends whether there must be a remedy that can be applied as it stands
 */
record Mistake(String id, String title, UnaryOperator<TrialHouse> make, String file, String behind, String marked,
        String name, String says, String reason, boolean mends) {

    TrialHouse house() {
        return make.apply(TrialHouse.single());
    }

    /** {@code file:line:column} of the stretch that must be marked. */
    String place(TrialHouse house) {
        SourceFile text = house.file(file);
        int offset = text.text().indexOf(marked, Stretch.once(text.text(), behind).end());
        if (offset < 0) {
            throw new AssertionError("nothing like " + behind + " … " + marked + " stands in " + file);
        }
        return file + ":" + text.line(offset) + ":" + text.column(offset);
    }

    @Override
    public String toString() {
        return title;
    }
}
