package org.ricasso.dsl.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.antlr.v4.runtime.CommonToken;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.source.SourceFile;

/** How long reading takes: printed, and bounded only so far that a slow machine does not fail it. */
class SpeedTest {

    private static SourceFile large() {
        StringBuilder text = new StringBuilder();
        while (text.length() < 150_000) {
            Samples.samples().forEach(s -> text.append(s.text()).append('\n'));
        }
        return new SourceFile("large", text.toString(), false);
    }

    private static double best(int rounds, Supplier<Object> work) {
        double best = Double.MAX_VALUE;
        for (int i = 0; i < rounds; i++) {
            long start = System.nanoTime();
            assertThat(work.get()).isNotNull();
            best = Math.min(best, (System.nanoTime() - start) / 1e6);
        }
        return best;
    }

    @Test
    void ofALargeText() {
        SourceFile file = large();
        int end = file.text().length();
        assertThat(Parser.parse(file).diagnostics()).isEmpty();
        double lex = best(40, () -> LineFilter.raw(file, 0, end));
        List<CommonToken> tokens = LineFilter.filter(LineFilter.raw(file, 0, end), end);
        double antlr = best(40, () -> Attempt.parser(tokens).file());
        double all = best(40, () -> Parser.parse(file));
        SourceFile damaged = new SourceFile("damaged", file.text().replaceFirst("200 ± 1 mm", "200,5 mm"), false);
        double lineByLine = best(10, () -> Parser.parse(damaged));
        System.out.printf(Locale.ROOT, "reading %d characters, %d tokens: ANTLR %.1f + %.1f ms (lexer + parser), all of it "
                + "%.1f ms; with one fault %.1f ms%n", end, tokens.size(), lex, antlr, all, lineByLine);
        assertThat(all).isLessThan(500);
    }
}
