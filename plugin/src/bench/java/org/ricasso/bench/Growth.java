package org.ricasso.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.ricasso.dsl.LargeHouse;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.Verdict;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.shared.calculation.Calculation;

/**
 * How a check grows from 100 to 10,000 knives of 26 steps, written out and from families, each in a process of its own with
 * a heap of 512 MiB: time of the parse of the works' own texts and of the whole check from text to verdict, both on all
 * cores, on the clock and of the processors; the exponent of growth between the first and the last count; and the check as a
 * multiple of the parse. Knives from families are few texts, so their check is also told as a multiple of the parse of the
 * same knives written out.
 */
public final class Growth {
    private static final int[] COUNTS = {100, 1000, 10_000};
    private static final List<String> FORMS = List.of("written-out", "families");
    private static final String HEAP = "-Xmx512m";

    private Growth() {}

    /** With a form and a count it measures; without, it starts itself for each and tells. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        if (arguments.length == 2) {
            measure(arguments[0], Integer.parseInt(arguments[1]));
            return;
        }
        Map<String, double[]> all = new TreeMap<>();
        System.out.printf(Locale.ROOT, "%-12s %7s %14s %14s %16s %16s %9s%n", "form", "knives", "parse ms", "check ms", "parse cpu ms",
                "check cpu ms", "MiB used");
        for (String form : FORMS) {
            for (int count : COUNTS) {
                double[] figures = started(form, count);
                all.put(form + count, figures);
                System.out.printf(Locale.ROOT, "%-12s %7d %14.1f %14.1f %16.1f %16.1f %9.0f%n", form, count, figures[0], figures[1],
                        figures[2], figures[3], figures[4]);
            }
        }
        for (String form : FORMS) {
            double[] first = all.get(form + COUNTS[0]);
            double[] last = all.get(form + COUNTS[COUNTS.length - 1]);
            double[] written = all.get(FORMS.get(0) + COUNTS[COUNTS.length - 1]);
            double decades = StrictMath.log(1.0 * COUNTS[COUNTS.length - 1] / COUNTS[0]);
            System.out.printf(Locale.ROOT, "%s: exponent of the check %.2f (clock), %.2f (processors); check / parse of the knives "
                    + "written out %.2f (clock), %.2f (processors)%n", form, StrictMath.log(last[1] / first[1]) / decades,
                    StrictMath.log(last[3] / first[3]) / decades, last[1] / written[0], last[3] / written[2]);
        }
    }

    private static double[] started(String form, int count) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(System.getProperty("java.home") + "/bin/java", HEAP, "-XX:+UseParallelGC",
                "-classpath", System.getProperty("java.class.path"), Growth.class.getName(), form, Integer.toString(count))
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String told = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8).strip();
        if (process.waitFor() != 0) {
            throw new IllegalStateException(form + " " + count + ": " + told);
        }
        return Arrays.stream(told.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private interface Work {
        void run();
    }

    /** Clock and processors of one run in milliseconds, by the run that took the processors least. */
    private static double[] least(Work work, int times) {
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        List<double[]> runs = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            long cpu = machine.getProcessCpuTime();
            long clock = System.nanoTime();
            work.run();
            runs.add(new double[] {(System.nanoTime() - clock) / 1e6, (machine.getProcessCpuTime() - cpu) / 1e6});
        }
        runs.sort(java.util.Comparator.comparingDouble(run -> run[1]));
        return runs.get(0);
    }

    private static void measure(String form, int count) throws IOException {
        List<Calculation> calculations = Ricasso.calculations(Growth.class.getClassLoader());
        // the compiler is warm before anything counts, whatever the count
        warm(house(form, 100), calculations);
        Texts texts = house(form, count);
        List<SourceFile> own = texts.files().stream().filter(file -> !file.shipped()).toList();
        int times = Math.max(3, 3000 / count);
        double[] parse = least(() -> own.parallelStream().forEach(Parser::parse), times);
        double[] check = least(() -> held(LargeHouse.check(texts, calculations), count), times);
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(Locale.ROOT, "%f %f %f %f %f%n", parse[0], check[0], parse[1], check[1],
                (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0);
    }

    private static void warm(Texts texts, List<Calculation> calculations) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(15);
        while (System.nanoTime() < end) {
            texts.files().parallelStream().forEach(Parser::parse);
            LargeHouse.check(texts, calculations);
        }
    }

    private static Texts house(String form, int count) throws IOException {
        return form.equals("families") ? GeneratedHouse.families(count) : GeneratedHouse.of("paring-90.ricasso", true, count);
    }

    private static void held(Verdict verdict, int count) {
        if (!verdict.diagnostics().isEmpty() || verdict.products() != count) {
            throw new IllegalStateException(verdict.products() + " knives, " + verdict.diagnostics());
        }
    }
}
