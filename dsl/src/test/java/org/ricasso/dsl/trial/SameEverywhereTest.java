package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TimeZone;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;

/** The same texts give the same findings, letter by letter: whatever the locale, the time zone, the order, the threads. */
class SameEverywhereTest {
    private static final Texts FAULTY = TrialHouse.whole()
            .with(TrialHouse.ROUTE, "temperature: 180 ± 5 °C", "temperature: 245 ± 5 °C")
            .with(TrialHouse.PARING, text -> text.replaceFirst("steel:( +)1\\.4116", "steel:$11.4161")).texts();

    private static String printed(Texts texts) {
        Ricasso ricasso = Ricasso.check(texts, Ricasso.calculations(SameEverywhereTest.class.getClassLoader()), Set.of());
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
        return ricasso.checked().diagnostics().stream().map(printer::print).collect(Collectors.joining("\n"));
    }

    @Test
    void theFindingsAreTheSame() throws Exception {
        String expected = printed(FAULTY);
        assertThat(expected).contains("characteristic-missed", "unknown-name");
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String tag : List.of("tr-TR", "de-DE", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone(tag.startsWith("tr") ? "Asia/Tokyo" : "America/Lima"));
                assertThat(printed(FAULTY)).as(tag).isEqualTo(expected);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
        for (int seed = 0; seed < 3; seed++) {
            List<SourceFile> files = new ArrayList<>(FAULTY.files());
            Collections.shuffle(files, new Random(seed));
            Texts shuffled = new Texts(files, FAULTY.data(), FAULTY.lock());
            ForkJoinPool pool = new ForkJoinPool(1 + seed);
            try {
                assertThat(pool.submit(() -> printed(shuffled)).get()).as("order %d", seed).isEqualTo(expected);
            } finally {
                pool.shutdown();
            }
        }
    }
}
