package org.ricasso.dsl.diagnostics;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

class DiagnosticPrinterTest {
    private static final DiagnosticPrinter PLAIN = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
    private static final DiagnosticPrinter ASCII = new DiagnosticPrinter(StandardCharsets.US_ASCII, false);

    private static Span span(SourceFile file, String what) {
        int start = file.text().indexOf(what);
        assertThat(start).isNotNegative();
        return new Span(file, start, start + what.length());
    }

    private static Diagnostic soft() {
        SourceFile knife = new SourceFile("cooks-200.ricasso", "\n".repeat(8)
                + "        hardness:  55..58 HRC\n" + "\n".repeat(15)
                + "        170 temper { temperature: 245 ± 5 °C }\n", false);
        SourceFile table = new SourceFile("tempering.csv", "steel,hardened °C\n1.4116,1050\n", true);
        return Diagnostic.error("tempered-too-soft", new Mark(span(knife, "245 ± 5 °C"), "leaves 54.8..55.7 HRC"))
                .and(new Mark(span(knife, "55..58 HRC"), "asked for here"))
                .and(new Mark(span(knife, "170 temper"), "by this step"))
                .and(new Mark(span(table, "1050"), "row that says so"))
                .because("1.4116 falls below 55 HRC above 243 °C").because("one\ntwo")
                .also("245 °C is outside the window")
                .remedy(new Remedy("temper at 180 ± 5 °C", List.of()))
                .source("tempering.csv line 2");
    }

    @Test
    void printsPlaceLinesMarksAndReasons() {
        assertThat(PLAIN.print(soft())).isEqualTo("""
                error: tempered-too-soft
                  cooks-200.ricasso:25:35
                  25 |         170 temper { temperature: 245 ± 5 °C }
                     |                                   ^^^^^^^^^^ leaves 54.8..55.7 HRC
                     |         ---------- by this step
                   9 |         hardness:  55..58 HRC
                     |                    ---------- asked for here
                  tempering.csv:2:8
                   2 | 1.4116,1050
                     |        ---- row that says so
                  because  1.4116 falls below 55 HRC above 243 °C
                  because  one
                           two
                  also     245 °C is outside the window
                  remedy   temper at 180 ± 5 °C
                  source   tempering.csv line 2
                """);
    }

    @Test
    void marksStandUnderTheirPlaceInAsciiToo() {
        assertThat(ASCII.print(soft())).contains("""
                  25 |         170 temper { temperature: 245 +/- 5 degC }
                     |                                   ^^^^^^^^^^^^^^ leaves 54.8..55.7 HRC
                """).isEqualTo(new String(ASCII.print(soft()).getBytes(StandardCharsets.US_ASCII),
                        StandardCharsets.US_ASCII));
    }

    @Test
    void onlySignsThatTheCharsetLacksAreReplaced() {
        DiagnosticPrinter latin = new DiagnosticPrinter(StandardCharsets.ISO_8859_1, false);
        SourceFile file = new SourceFile("a", "a ± b … µ – ≤ é 漢", false);
        assertThat(latin.print(Diagnostic.warning("n", new Mark(span(file, "≤"), "Łódź")))).isEqualTo("""
                warning: n
                  a:1:13
                  1 | a ± b ... µ - <= é ?
                    |               ^^ Lódz
                """);
        assertThat(ASCII.line(Diagnostic.warning("n", new Mark(span(file, "≤"), "80 µm ≥ x²"))))
                .isEqualTo("a:[1,13] n 80 um >= x^2");
    }

    @Test
    void wideCombiningAndTabsBeforeTheMarkDoNotShiftIt() {
        SourceFile file = new SourceFile("a", "\t漢e\u0301\uD83D\uDD2A x", false);
        assertThat(PLAIN.print(Diagnostic.error("n", new Mark(span(file, "x"), "here")))).isEqualTo("""
                error: n
                  a:1:7
                  1 | \t漢e\u0301\uD83D\uDD2A x
                    | \t      ^ here
                """);
    }

    @Test
    void longLinesAreCutAroundTheMark() {
        SourceFile file = new SourceFile("a", "0123456789".repeat(30) + "HERE" + "0123456789".repeat(30), false);
        String[] lines = PLAIN.print(Diagnostic.error("n", new Mark(span(file, "HERE"), "!"))).split("\n");
        assertThat(lines[2]).hasSizeLessThan(130).contains("HERE").startsWith("  1 | …").endsWith("…");
        assertThat(lines[3].indexOf("^^^^ !")).isEqualTo(lines[2].indexOf("HERE"));
        String[] ascii = ASCII.print(Diagnostic.error("n", new Mark(span(file, "HERE"), "!"))).split("\n");
        assertThat(ascii[3].indexOf("^^^^ !")).isEqualTo(ascii[2].indexOf("HERE"));
    }

    @Test
    void aMarkOverSeveralLinesIsShownOnItsFirst() {
        SourceFile file = new SourceFile("a", "knife a {\r\n  b: 1\r\n}", false);
        assertThat(PLAIN.print(Diagnostic.error("n", new Mark(new Span(file, 8, 18), "all this")))).isEqualTo("""
                error: n
                  a:1:9
                  1 | knife a {
                    |         ^ all this
                """);
    }

    @Test
    void aMarkAtTheEndHasOneSign() {
        SourceFile file = new SourceFile("a", "b\n", false);
        assertThat(PLAIN.print(Diagnostic.error("n", new Mark(new Span(file, 2, 2), "end"))))
                .isEqualTo("error: n\n  a:2:1\n  2 |\n    | ^ end\n");
    }

    @Test
    void controlCharactersDoNotReachTheConsole() {
        SourceFile file = new SourceFile("a", "x \u001B[31m \u202E y", false);
        assertThat(PLAIN.print(Diagnostic.error("n", new Mark(span(file, "y"), "\u001B[2J"))))
                .doesNotContain("\u001B", "\u202E");
    }

    @Test
    void colourAddsNothingButColour() {
        String coloured = new DiagnosticPrinter(StandardCharsets.UTF_8, true).print(soft());
        assertThat(coloured).contains("\u001B[1;31merror: \u001B[0m");
        assertThat(coloured.replaceAll("\u001B\\[[0-9;]*m", "")).isEqualTo(PLAIN.print(soft()));
    }
}
