package org.ricasso.dsl.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/** Whatever bytes a file holds, reading it ends, and with findings that can be printed. */
class RobustnessTest {
    private static final long SEED = Long.getLong("ricasso.seed", 20260914);
    private static final long MILLISECONDS = Long.getLong("ricasso.robustness.ms", 4000);

    private static final String SIGNS = "{}()\"\\;:|,\n\r\t .-+='/0";

    @Test
    void randomBytesAreRead() {
        List<SourceFile> samples = Samples.samples();
        Random random = new Random(SEED);
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.US_ASCII, false);
        long end = System.nanoTime() + MILLISECONDS * 1_000_000;
        int cases = 0;
        while (System.nanoTime() < end) {
            SourceFile sample = samples.get(random.nextInt(samples.size()));
            SourceFile mutated = new SourceFile("mutated", mutate(sample.text(), random), false);
            try {
                long start = System.nanoTime();
                ParseResult result = Parser.parse(mutated);
                result.diagnostics().forEach(d -> check(d, mutated, printer));
                assertThat(System.nanoTime() - start).as("time").isLessThan(5_000_000_000L);
            } catch (RuntimeException | Error e) {
                throw new AssertionError("seed " + SEED + ", case " + cases + ":\n" + mutated.text(), e);
            }
            cases++;
        }
        System.out.println("robustness: " + cases + " texts with random bytes, seed " + SEED);
        assertThat(cases).isPositive();
    }

    private static void check(Diagnostic diagnostic, SourceFile file, DiagnosticPrinter printer) {
        assertThat(printer.print(diagnostic)).isNotBlank();
        assertThat(printer.line(diagnostic)).isNotBlank();
        checkSpan(diagnostic.primary().span(), file);
        for (Mark mark : diagnostic.others()) {
            checkSpan(mark.span(), file);
        }
        diagnostic.remedies().forEach(r -> r.edits().forEach(e -> checkSpan(e.span(), file)));
    }

    private static void checkSpan(Span span, SourceFile file) {
        assertThat(span.file()).isSameAs(file);
        assertThat(span.start()).isBetween(0, file.text().length());
        assertThat(span.end()).isBetween(span.start(), file.text().length());
    }

    private static String mutate(String text, Random random) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        int from = random.nextInt(bytes.length);
        int length = Math.min(bytes.length - from, 1 + random.nextInt(1500));
        byte[] part = random.nextInt(4) == 0 ? java.util.Arrays.copyOfRange(bytes, from, from + length) : bytes.clone();
        int changes = 1 + random.nextInt(6);
        for (int i = 0; i < changes; i++) {
            int at = random.nextInt(part.length);
            switch (random.nextInt(4)) {
                case 0 -> part[at] = (byte) random.nextInt(256);
                case 1 -> part[at] = (byte) SIGNS.charAt(random.nextInt(SIGNS.length()));
                case 2 -> part[at] = part[random.nextInt(part.length)];
                default -> {
                    int to = random.nextInt(part.length);
                    System.arraycopy(part.clone(), Math.min(at, to), part, Math.max(at, to),
                            Math.min(20, part.length - Math.max(at, to)));
                }
            }
        }
        return new String(part, StandardCharsets.UTF_8);
    }
}
