package org.ricasso.dsl.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.syntax.Parser;

/** Texts of the repository with signs put in, taken out and moved: laid out if they can be read, else left alone. */
class MutatedTextsTest {
    private static final long SEED = Long.getLong("ricasso.seed", 20260914);
    private static final long MILLISECONDS = Long.getLong("ricasso.robustness.ms", 4000);
    private static final String[] SIGNS = {" ", "\n", "\n\n", ";", "; ", "// x\n", " // x\n", "{", "}", "(", ")", ",", ".", "-", "- ",
        "+", "/", "\u2212", "|", ":", "\"", "5", "mm", "a", "\t", "\u00A0", "\u2028", "..", "±", "else", "min", ">= "};

    @Test
    void isLaidOutOrLeftAlone() {
        List<String> texts = Layouts.repository().stream().map(Layouts::read).toList();
        Random random = new Random(SEED);
        long end = System.nanoTime() + MILLISECONDS * 1_000_000;
        int laid = 0;
        int left = 0;
        while (System.nanoTime() < end) {
            String text = mutated(texts.get(random.nextInt(texts.size())), random);
            if (!Parser.parse(Layouts.file(text)).diagnostics().isEmpty()) {
                assertThat(Formatter.format(Layouts.file(text)).text()).isEqualTo(text);
                left++;
                continue;
            }
            try {
                Layouts.check(text);
            } catch (RuntimeException | Error e) {
                throw new AssertionError("seed " + SEED + ", text " + (laid + left) + ":\n" + text, e);
            }
            laid++;
        }
        System.out.println("formatter: " + laid + " mutated texts laid out, " + left + " left alone, seed " + SEED);
        assertThat(laid).isPositive();
        assertThat(left).isPositive();
    }

    private static String mutated(String text, Random random) {
        StringBuilder result = new StringBuilder(text);
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes && result.length() > 1; i++) {
            int at = random.nextInt(result.length());
            switch (random.nextInt(4)) {
                case 0 -> result.deleteCharAt(at);
                case 1 -> {
                    int to = Math.min(result.length(), at + 1 + random.nextInt(30));
                    result.insert(random.nextInt(result.length()), result.substring(at, to));
                }
                default -> result.insert(at, SIGNS[random.nextInt(SIGNS.length)]);
            }
        }
        return result.toString();
    }
}
