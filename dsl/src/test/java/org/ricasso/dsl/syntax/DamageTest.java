package org.ricasso.dsl.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.source.SourceFile;

/**
 * One fault gives one finding: of the one-token faults that are found at all, nearly all give exactly one diagnostic.
 * With {@code -Dricasso.damage.rounds=24} every token is put in at every place, and what gives more is listed.
 */
class DamageTest {
    private static final int ROUNDS = Integer.getInteger("ricasso.damage.rounds", 1);

    @Test
    void ofTheSamples() {
        judge("samples", Samples.samples());
    }

    @Test
    void ofTheHouse() {
        judge("house", Samples.house());
    }

    private static void judge(String what, List<SourceFile> files) {
        TreeMap<Integer, Integer> byCount = new TreeMap<>();
        int most = 0;
        for (SourceFile file : files) {
            for (int round = 0; round < ROUNDS; round++) {
                for (Damage.Damaged damaged : Damage.of(file, round)) {
                    int count = Parser.parse(damaged.file()).diagnostics().size();
                    byCount.merge(count, 1, Integer::sum);
                    most = Math.max(most, count);
                    if (count > 1 && Boolean.getBoolean("ricasso.damage.list")) {
                        System.out.println(count + " " + damaged.what());
                    }
                }
            }
        }
        int all = byCount.values().stream().mapToInt(Integer::intValue).sum();
        int missed = byCount.getOrDefault(0, 0);
        int one = byCount.getOrDefault(1, 0);
        System.out.printf(java.util.Locale.ROOT, "damage to the %s: %d cases, %.1f %% not a matter of syntax, "
                + "of the others %.2f %% exactly one diagnostic, most %d %s%n", what, all, 100.0 * missed / Math.max(1, all),
                100.0 * one / Math.max(1, all - missed), most, byCount);
        if (all > 0) {
            assertThat(1.0 * one / (all - missed)).isGreaterThanOrEqualTo(0.94);
            assertThat(most).isLessThanOrEqualTo(4);
        }
    }
}
