package org.ricasso.bench;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.BareParse;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.HouseCheck;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.templates.page.PageRenderer;

/**
 * How long a house takes: the bare ANTLR parse of its text, our parse, the whole check from text to verdict, the walk and
 * its rules alone, and the pages. A small fixed heap, so that the collector's share is in the figures.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(value = 1, jvmArgs = {"-Xms512m", "-Xmx512m", "-XX:+UseParallelGC"})
public class HouseBenchmark {
    @Param({"10", "100", "1000"})
    public int knives;

    /** The demonstration knife that is copied, the strip-cut one also with what it can do without left out. */
    @Param({"paring-90.ricasso/26-steps", "paring-90.ricasso", "cooks-200.ricasso"})
    public String copied;

    private Texts texts;
    private List<SourceFile> own;
    private List<Calculation> calculations;

    /** A house that is loaded and checked; only where one is needed, since a check has a heap without a second one. */
    @State(Scope.Benchmark)
    public static class Ready {
        private House house;
        private CheckedHouse checked;

        /** Checks the house once. */
        @Setup
        public void check(HouseBenchmark benchmark) {
            Ricasso ricasso = Ricasso.check(benchmark.texts, benchmark.calculations, Set.of());
            house = ricasso.house();
            checked = ricasso.checked();
        }
    }

    /** Reads the house once and makes sure that it holds: a benchmark of faults would measure something else. */
    @Setup
    public void read() throws IOException {
        texts = GeneratedHouse.of(copied.replaceFirst("/.*", ""), copied.endsWith("/26-steps"), knives);
        own = texts.files().stream().filter(f -> !f.shipped()).toList();
        calculations = Ricasso.calculations(getClass().getClassLoader());
        CheckedHouse checked = Ricasso.check(texts, calculations, Set.of()).checked();
        List<Diagnostic> errors = checked.diagnostics().stream().filter(d -> d.severity() == Severity.ERROR).toList();
        if (!errors.isEmpty() || checked.products().size() != knives) {
            throw new IllegalStateException(checked.products().size() + " knives, " + errors);
        }
        System.out.println("# " + knives + " knives, " + checked.products().stream().mapToInt(p -> p.steps().size()).sum()
                + " steps, " + own.stream().mapToInt(f -> f.text().length()).sum() + " characters");
    }

    @Benchmark
    public void bareAntlr(Blackhole hole) {
        own.forEach(file -> hole.consume(BareParse.parse(file)));
    }

    @Benchmark
    public void parse(Blackhole hole) {
        own.forEach(file -> hole.consume(Parser.parse(file)));
    }

    @Benchmark
    public Object check() {
        return Ricasso.check(texts, calculations, Set.of());
    }

    @Benchmark
    public Object walk(Ready ready) {
        return HouseCheck.check(ready.house, new Findings(), Set.of());
    }

    @Benchmark
    public Object render(Ready ready) {
        return new PageRenderer().render(ready.checked, "Benchmark");
    }
}
