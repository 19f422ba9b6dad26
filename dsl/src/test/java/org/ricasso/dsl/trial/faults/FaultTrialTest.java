package org.ricasso.dsl.trial.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Severity;

/**
 * Systematic mistakes in every route of the house: what is unsound is caught, at its place, with remedies that work; what is still
 * sound passes. Which is which a second opinion says, {@link org.ricasso.oracle.Oracle}. {@code target/faults.json} holds all counts and what was missed.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FaultTrialTest {
    private static final Path REPORT = Path.of("target", "faults.json");
    private final Trial trial = new Trial();

    @Test
    void noRouteOfTheHouseDrawsAnError() {
        for (WrittenKnife knife : trial.house.knives()) {
            List<Diagnostic> found = trial.house.check(new KnifeText(knife).text());
            assertThat(found).as(knife.name()).noneMatch(d -> d.severity() == Severity.ERROR);
        }
        // a route that the second opinion cannot read is told of and left out
        trial.refused().forEach((knife, why) -> System.out.println("the second opinion refuses " + knife + ": " + why));
        assertThat(trial.house.knives().size() - trial.refused().size()).isGreaterThanOrEqualTo(5);
    }

    @Test
    void unsoundKnivesAreCaughtAndSoundOnesPass() throws IOException {
        Reviewed reviewed = new Reviewed();
        List<Outcome> outcomes = trial.faults().parallelStream().map(trial::outcome).map(reviewed::judged).toList();
        Tally tally = new Tally(outcomes);
        Files.createDirectories(REPORT.getParent());
        Files.writeString(REPORT, tally.json(trial.refused()), StandardCharsets.UTF_8);
        System.out.printf("%d faults, %d sound (%d refused); of the others %.1f %% caught, %.1f %% of these located; %.1f %% of remedies work%n",
                tally.seeded(), tally.sound(), tally.wronglyRefused(), 100 * tally.caught(), 100 * tally.located(), 100 * tally.working());
        assertThat(reviewed.unused()).as("disagreements that are none any more").isEmpty();
        assertThat(tally.seeded()).isGreaterThanOrEqualTo(1000);
        assertThat(tally.sound()).isGreaterThanOrEqualTo((long) (0.15 * tally.seeded()));
        assertThat(tally.caught()).isGreaterThanOrEqualTo(0.97);
        assertThat(tally.located()).isGreaterThanOrEqualTo(0.90);
        assertThat(tally.working()).isGreaterThanOrEqualTo(0.80);
        assertThat(tally.wronglyRefused()).isLessThanOrEqualTo(tally.sound() / 50);
    }
}
