package org.ricasso.dsl.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.source.SourceFile;

/**
 * One fault gives one finding: of the one-token faults that are found at all, nearly all give exactly one diagnostic.
 * Each place of the house is damaged in one of the three ways; with {@code -Dricasso.damage.rounds=24} in all of them
 * and with every token of the list. {@code -Dricasso.damage.list=true} lists what gives more than one.
 */
class DamageTest {
    private static final int ROUNDS = Integer.getInteger("ricasso.damage.rounds", 0);

    @Test
    void ofTheSamples() {
        judge("samples", Samples.samples(), true);
    }

    @Test
    void ofTheHouse() {
        judge("house", Samples.house(), ROUNDS > 0);
    }

    private static void judge(String what, List<SourceFile> files, boolean everyWay) {
        TreeMap<Integer, Integer> byCount = new TreeMap<>();
        for (SourceFile file : files) {
            for (int round = 0; round < Math.max(1, ROUNDS); round++) {
                List<TokenDamage.Damaged> cases = TokenDamage.of(file, round);
                for (int i = 0; i < cases.size(); i++) {
                    if (!everyWay && i % 3 != i / 3 % 3) {
                        continue;
                    }
                    int count = Parser.parse(cases.get(i).file()).diagnostics().size();
                    byCount.merge(count, 1, Integer::sum);
                    if (count > 1 && Boolean.getBoolean("ricasso.damage.list")) {
                        System.out.println(count + " " + cases.get(i).what());
                    }
                }
            }
        }
        int all = byCount.values().stream().mapToInt(Integer::intValue).sum();
        int most = byCount.lastKey();
        int missed = byCount.getOrDefault(0, 0);
        int one = byCount.getOrDefault(1, 0);
        System.out.printf(java.util.Locale.ROOT, "damage to the %s: %d cases, %.1f %% not a matter of syntax, "
                + "of the others %.2f %% exactly one diagnostic, most %d %s%n", what, all,
                100.0 * missed / Math.max(1, all),
                100.0 * one / Math.max(1, all - missed), most, byCount);
        assertThat(1.0 * one / (all - missed)).isGreaterThanOrEqualTo(0.98);
        assertThat(most).isLessThanOrEqualTo(4);
    }
}
