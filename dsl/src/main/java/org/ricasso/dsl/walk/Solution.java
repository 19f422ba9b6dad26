package org.ricasso.dsl.walk;

import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.house.Solve;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.solve.LockEntry;

/**
 * What solving for a setting came to.
 *
 * @param product the product
 * @param step the index of the step among all steps of its route
 * @param solve what is solved for
 * @param key how the lock names the setting
 * @param entry what the lock is to hold, or null where there is no solution
 * @param failure why there is no solution; null where there is one, or where the cause is reported elsewhere
 */
public record Solution(Thing product, int step, Solve solve, LockEntry.Key key, LockEntry entry, Diagnostic failure) {
    Solution with(LockEntry found) {
        return new Solution(product, step, solve, key, found, null);
    }

    Solution with(Diagnostic why) {
        return new Solution(product, step, solve, key, null, why);
    }
}
