package org.ricasso.dsl.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.source.SourceFile;

/** The lock's lines: read as written, sorted, and refused in any other form. */
class LockTest {
    private static LockEntry entry(String product, int step) {
        return new LockEntry(new LockEntry.Key(product, step, "warmth"), "bake", "205 ± 5 °C", "core", "94..98 °C",
                "95.1..96.9 °C", "0123abcd");
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        List<LockEntry> entries = List.of(entry("rye", 100), entry("rye", 20), entry("brot-größe", 5));
        String text = Lock.text(entries);
        assertThat(text.lines().filter(l -> !l.startsWith("//")).map(l -> l.substring(0, 7)))
                .containsExactly("brot-gr", "rye / 2", "rye / 1");
        Findings findings = new Findings();
        Lock lock = Lock.read(new SourceFile("lock", text, false), findings);
        assertThat(findings.isEmpty()).isTrue();
        assertThat(lock.lines().values()).extracting(Lock.Line::entry).containsExactlyInAnyOrderElementsOf(entries);
        assertThat(lock.lines().values()).extracting(l -> l.value().text()).containsOnly("205 ± 5 °C");
        assertThat(Lock.text(List.of())).isEmpty();
        assertThat(Lock.read(null, findings).lines()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"=======", "rye / 20 bake / warmth = 205 ± 5 °C for core 94..98 °C, leaves 95.1 °C",
        "rye / 20 bake / warmth = 205 ± 5 °C for core 94..98 °C, leaves 95.1 °C  #0123ABCD", "rye / bake / warmth = 1 for core 2, leaves 3  #0123abcd",
        " rye / 20 bake / warmth = 205 ± 5 °C for core 94..98 °C, leaves 95.1 °C  #0123abcd"})
    void anotherFormIsAFinding(String line) {
        Findings findings = new Findings();
        assertThat(Lock.read(new SourceFile("lock", line + "\n\n// a comment\n", false), findings).lines()).isEmpty();
        assertThat(findings.all()).extracting(d -> d.name()).containsExactly("lock-line");
    }
}
