package org.ricasso.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.source.SourceFile;

/**
 * The demonstration house with edits made by chance, checked twice, with one thread and with two: the same findings in the
 * same order, the same report; every fourth time also the same bytes of every value, other report and page. Whatever is
 * written, there is never an exception. The edits follow from the seed; {@code -Dricasso.edits=…} asks for more of them,
 * {@code -Dricasso.seed=…} for others.
 */
class RandomEditsTest {
    private static final long SEED = Long.getLong("ricasso.seed", 20260914);
    private static final int EDITED = Integer.getInteger("ricasso.edits", 60);

    @Test
    void editedHousesAreCheckedTheSameTwiceAndOnOneAndOnTwoThreads() throws Exception {
        Map<String, Integer> outcomes = new TreeMap<>();
        ForkJoinPool one = new ForkJoinPool(1);
        ForkJoinPool two = new ForkJoinPool(2);
        long begin = System.nanoTime();
        try {
            List<SourceFile> house = SameEverywhereTest.files(false);
            for (int i = 0; i < EDITED; i++) {
                List<SourceFile> edited = edited(house, new Random(SEED + i));
                boolean whole = i % 4 == 0;
                Map<String, String> alone;
                try {
                    alone = one.submit(() -> SameEverywhereTest.made(edited, whole)).get();
                    SameEverywhereTest.same("seed " + (SEED + i), two.submit(() -> SameEverywhereTest.made(edited, whole)).get(), alone);
                } catch (ExecutionException e) {
                    throw new AssertionError("seed " + (SEED + i), e.getCause());
                }
                if (whole) {
                    outcomes.merge(alone.containsKey("index.html") ? "whole with pages" : "whole without pages", 1, Integer::sum);
                }
                outcomes.merge(alone.get("log").contains("error") ? "with errors" : "without", 1, Integer::sum);
            }
        } finally {
            one.shutdown();
            two.shutdown();
        }
        System.out.printf(Locale.ROOT, "edited houses: %d, seed %d, %s, %d s%n", EDITED, SEED, outcomes,
                (System.nanoTime() - begin) / 1_000_000_000L);
        // neither only broken houses nor only whole ones
        assertThat(outcomes.get("whole with pages")).isPositive();
        assertThat(outcomes.get("with errors")).isGreaterThan(EDITED / 2);
    }

    private static List<SourceFile> edited(List<SourceFile> house, Random random) {
        RandomEdits edits = new RandomEdits(random);
        List<SourceFile> result = new ArrayList<>(house);
        for (int i = random.nextInt(3); i >= 0; i--) {
            int at = random.nextInt(result.size());
            SourceFile file = result.get(at);
            result.set(at, new SourceFile(file.name(), edits.edited(file.text()), false));
        }
        return result;
    }
}
