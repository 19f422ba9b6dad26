package org.ricasso.dsl.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongPredicate;
import java.util.function.LongUnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.solve.Search.Probe;
import org.ricasso.dsl.solve.Search.Result;
import org.ricasso.dsl.solve.Search.Window;

/** The search against trying every value, and what it says where there is not one answer. */
class SearchTest {
    private static final double REACH = 50;

    private static Search search(LongUnaryOperator number, LongPredicate allowed, long least, long most, double target) {
        return new Search(at -> new Probe(number.applyAsLong(at), Math.abs(number.applyAsLong(at) - target) <= REACH,
                allowed.test(at) ? Set.of("always") : Set.of("always", "not here"), Set.of()), least, most, target);
    }

    /** 2,000 curves that only rise or only fall, with flat stretches and a window: as good as trying all, and the first of equals. */
    @Test
    void findsWhatTryingAllFinds() {
        Random random = new Random(20260914);
        int found = 0;
        for (int round = 0; round < 2000; round++) {
            int count = 1 + random.nextInt(600);
            long[] numbers = new long[count];
            long sign = random.nextBoolean() ? 1 : -1;
            for (int i = 1; i < count; i++) {
                numbers[i] = numbers[i - 1] + sign * (random.nextInt(3) == 0 ? 0 : random.nextInt(9));
            }
            int first = random.nextInt(count);
            int last = Math.min(count - 1, first + count / 10 + random.nextInt(count));
            double target = numbers[random.nextInt(count)] + random.nextInt(7) - 3.25;
            Result result = search(at -> numbers[(int) at], at -> at >= first && at <= last, 0, count - 1, target).run();
            long best = LongStream.rangeClosed(first, last).boxed()
                    .min(java.util.Comparator.<Long>comparingDouble(at -> Math.abs(numbers[at.intValue()] - target))
                            .thenComparing(at -> at)).orElseThrow();
            if (result instanceof Result.Found right) {
                found++;
                assertThat(right.at()).as("round %d", round).isEqualTo(best);
                assertThat(right.window()).isEqualTo(new Window(first, last));
            } else if (result instanceof Result.Missed missed) {
                assertThat(missed.best()).as("round %d", round).isEqualTo(best);
            } else if (result instanceof Result.NoEffect) {
                assertThat(numbers[last]).isEqualTo(numbers[first]);
            } else {
                // narrower than the coarse scan, and nothing offers a value inside it
                assertThat(result).isInstanceOf(Result.NoWindow.class);
                assertThat(last - first).isLessThan(count / 24 + 1);
            }
        }
        assertThat(found).isGreaterThan(1000);
    }

    @Test
    void asksFewValuesOfMany() {
        Set<Long> asked = new TreeSet<>();
        Result result = new Search(at -> {
            asked.add(at);
            return new Probe(at, true, at > 400_000 ? Set.of("too hot") : Set.of(), Set.of());
        }, 0, 1_000_000, 123_456.4).run();
        assertThat(result).isEqualTo(new Result.Found(123_456, new Window(0, 400_000)));
        assertThat(asked).hasSizeLessThan(130);
    }

    /** A window that the coarse scan steps over is found by what stands against the values beside it offers. */
    @Test
    void whatIsOfferedShowsANarrowWindow() {
        Result result = new Search(at -> new Probe(at, true, at < 500 || at > 503 ? Set.of("outside") : Set.of(),
                at < 500 ? Set.of(500L) : at > 503 ? Set.of(503L) : Set.of()), 0, 100_000, 501).run();
        assertThat(result).isEqualTo(new Result.Found(501, new Window(500, 503)));
    }

    @Test
    void aCurveThatTurnsBackIsAmbiguous() {
        LongUnaryOperator hill = at -> 1000 - Math.abs(at - 100) * 10;
        assertThat(search(hill, at -> true, 0, 200, 500).run())
                .isEqualTo(new Result.Ambiguous(List.of(50L, 150L), 100L));
        // one answer only, but nothing says that there is no other
        assertThat(search(hill, at -> true, 0, 120, 500).run()).isEqualTo(new Result.Ambiguous(List.of(50L), 100L));
        assertThat(search(hill, at -> at <= 100, 0, 200, 500).run()).isEqualTo(new Result.Found(50, new Window(0, 100)));
    }

    @Test
    void twoWindowsThatBothHoldAnAnswerAreAmbiguous() {
        assertThat(search(at -> 3 * Math.abs(at - 100), at -> at <= 90 || at >= 110, 0, 200, 150).run())
                .isEqualTo(new Result.Ambiguous(List.of(50L, 150L), null));
    }

    @Test
    void whatIsMissedNamesTheBest() {
        assertThat(search(at -> at, at -> at >= 10, 0, 60, 400).run()).isEqualTo(new Result.Missed(60, new Window(10, 60)));
        assertThat(search(at -> 7, at -> true, 0, 60, 7).run()).isEqualTo(new Result.NoEffect());
    }

    /** What stands against every value forbids none. */
    @Test
    void whatIsNeverAllowedHasNoWindow() {
        assertThat(search(at -> at, at -> false, 0, 60, 30).run()).isInstanceOf(Result.Found.class);
        assertThat(new Search(at -> new Probe(at, true, Set.of(at % 2 == 0 ? "even" : "odd"), Set.of()), 0, 60, 30).run())
                .isInstanceOf(Result.NoWindow.class);
        assertThat(new Search(at -> new Probe(Double.NaN, false, Set.of(), Set.of()), 0, 60, 30).run())
                .isInstanceOf(Result.NoWindow.class);
    }
}
