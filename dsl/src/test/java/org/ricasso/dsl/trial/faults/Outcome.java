package org.ricasso.dsl.trial.faults;

import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.oracle.Violation;

/**
 * What became of a fault.
 *
 * @param violations what the second opinion holds against the knife
 * @param unsound whether the knife is unsound: as the second opinion says, unless that case has been read and the check is right
 * @param found what the check found
 * @param caught whether the check says that it is wrong: with an error if it is grave, else at least with a warning
 * @param passes whether the check finds no error
 * @param located whether a finding marks where a foreman points at
 * @param remedies remedies offered that can be applied as they stand
 * @param work how many of them make the build pass
 */
record Outcome(Fault fault, List<Violation> violations, boolean unsound, List<Diagnostic> found, boolean caught, boolean passes,
        boolean located, int remedies, int work) {

    /** Whether second opinion and check say the same. */
    boolean agreed() {
        return unsound ? caught : passes;
    }

    /** As it is where the check is right. */
    Outcome as(boolean refused) {
        return new Outcome(fault, violations, refused, found, refused, !refused, located, remedies, work);
    }

    /** The case in a line. */
    String line() {
        return fault + " | opinion: " + (violations.isEmpty() ? "sound" : violations.get(0).rule() + " " + violations.get(0).text())
                + " | check: " + (found.isEmpty() ? "nothing" : found.get(0).name() + " " + found.get(0).primary().text());
    }
}
