package org.ricasso.dsl.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ricasso.dsl.source.SourceFile;

/** Values and expressions read alone, as cells and calculations are. */
class ExpressionTest {

    private static ExpressionResult parse(String text) {
        return Parser.parseExpression(new SourceFile("text", text, false));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '@', quoteCharacter = '~', value = {
        "5 mm                   @ (Literal 5 - SINGLE - - mm)",
        "1.50                   @ (Literal 1.50 - SINGLE - - -)",
        "200 ± 1 mm             @ (Literal 200 - PLUS_MINUS 1 - mm)",
        "180 °C ± 5 °C          @ (Literal 180 °C PLUS_MINUS 5 - °C)",
        "12 mm +- 5 %           @ (Literal 12 mm PLUS_MINUS 5 - %)",
        "12 mm +/- 5 %          @ (Literal 12 mm PLUS_MINUS 5 - %)",
        "55..58 HRC             @ (Literal 55 - RANGE 58 - HRC)",
        "-80..-60 °C            @ (Literal -80 - RANGE -60 - °C)",
        "\u22125 K              @ (Literal -5 - SINGLE - - K)",
        "45 (+0.5/-0.3) mm      @ (Literal 45 - DEVIATIONS +0.5 -0.3 mm)",
        "6 mm (0/-0.2)          @ (Literal 6 mm DEVIATIONS 0 -0.2 -)",
        "5 N/mm²                @ (Literal 5 - SINGLE - - N/mm²)",
        "5 min                  @ (Literal 5 - SINGLE - - min)",
        "1.4116                 @ (Literal 1.4116 - SINGLE - - -)",
        "max 0.4 µm             @ (Limit true (Literal 0.4 - SINGLE - - µm))",
        "min 56 HRC             @ (Limit false (Literal 56 - SINGLE - - HRC))",
        "max 5 min              @ (Limit true (Literal 5 - SINGLE - - min))",
        "<= limit(s).most       @ (Limit true (Member (Call - limit [(Argument - (NameUse s))]) most))",
        "≥ 3 mm                 @ (Limit false (Literal 3 - SINGLE - - mm))",
        "max(a, b)              @ (Call - max [(Argument - (NameUse a)) (Argument - (NameUse b))])",
        "5 per load             @ (Per (Literal 5 - SINGLE - - -) load)",
        "40 s per piece         @ (Per (Literal 40 - SINGLE - - s) piece)",
        "18, 57, 96 mm          @ (ListOf [(Literal 18 - SINGLE - - -) (Literal 57 - SINGLE - - -) (Literal 96 - SINGLE - - mm)])",
        "(a, b)                 @ (ListOf [(NameUse a) (NameUse b)])",
        "2026-09-14             @ (DateLiteral ~2026-09-14~)",
        "a - b - c              @ (Infix MINUS (Infix MINUS (NameUse a) (NameUse b)) (NameUse c))",
        "a + b * c              @ (Infix PLUS (NameUse a) (Infix TIMES (NameUse b) (NameUse c)))",
        "(a + b) * c            @ (Infix TIMES (Infix PLUS (NameUse a) (NameUse b)) (NameUse c))",
        "-a * b                 @ (Infix TIMES (Prefix MINUS (NameUse a)) (NameUse b))",
        "0.5 / 9 K              @ (Infix OVER (Literal 0.5 - SINGLE - - -) (Literal 9 - SINGLE - - K))",
        "not a and b or c       @ (Infix OR (Infix AND (Prefix NOT (NameUse a)) (NameUse b)) (NameUse c))",
        "a.b = c and d >= 2     @ (Infix AND (Infix EQUALS (Member (NameUse a) b) (NameUse c)) (Infix AT_LEAST (NameUse d) (Literal 2 - SINGLE - - -)))",
        "x in (a, b)            @ (Infix IN (NameUse x) (ListOf [(NameUse a) (NameUse b)]))",
        "a.between(b, to: c)    @ (Call (NameUse a) between [(Argument - (NameUse b)) (Argument to (NameUse c))])",
        "t(s: 1.4116, at: 2 K).loss @ (Member (Call - t [(Argument s (Literal 1.4116 - SINGLE - - -)) (Argument at (Literal 2 - SINGLE - - K))]) loss)",
        "if a then b else c     @ (Choice (NameUse a) (NameUse b) (NameUse c))",
        "if a then b else if c then d else e @ (Choice (NameUse a) (NameUse b) (Choice (NameUse c) (NameUse d) (NameUse e)))",
        "2 * (if a then b else c) @ (Infix TIMES (Literal 2 - SINGLE - - -) (Choice (NameUse a) (NameUse b) (NameUse c)))",
    })
    void isReadAs(String text, String tree) {
        ExpressionResult result = parse(text);
        assertThat(result.diagnostics()).isEmpty();
        assertThat(TreeText.of(result.expression())).isEqualTo(tree.replace('~', '"'));
    }

    @Test
    void textsHaveHolesAndBraces() {
        assertThat(TreeText.of(parse("\"a {b} {{c}} \\\" \\\\ {d.most}\"").expression())).isEqualTo(
                "(TextLiteral (Text [(Plain \"a \") (Hole (NameUse b)) (Plain \" {c}} \" \\ \") "
                        + "(Hole (Member (NameUse d) most))]))");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "// nothing", "a b", "5mm", "a +", "(a", "a)", "{", "a: b", "max a", "\"open", "1,5 mm",
        "not", "if a then b", ", a", "a;b", "\uD83D\uDD2A", "\uD83D"})
    void whatIsNoValueHasOneFinding(String text) {
        ExpressionResult result = parse(text);
        assertThat(result.expression()).isNull();
        assertThat(result.diagnostics()).hasSize(1);
    }

    @Test
    void aValueMayRunOverLines() {
        assertThat(TreeText.of(parse("max(\n  a,\n  b\n)").expression())).isEqualTo(TreeText.of(parse("max(a, b)").expression()));
        assertThat(TreeText.of(parse("if a\n then b\n else c\n").expression()))
                .isEqualTo(TreeText.of(parse("if a then b else c").expression()));
        assertThat(parse("a\n+ b").diagnostics()).hasSize(1);
    }

    @Test
    void cellsPointIntoTheirFile() {
        SourceFile csv = new SourceFile("t.csv", "steel,hardened °C\n1.4116,980..1080\n1.4034,\n1.4031,5mm\n", false);
        int start = csv.text().indexOf("980");
        ExpressionResult cell = Parser.parseCell(csv, start, start + 9);
        assertThat(TreeText.of(cell.expression())).isEqualTo("(Literal 980 - RANGE 1080 - -)");
        assertThat(cell.expression().span().toString()).isEqualTo("t.csv:2:8");
        int empty = csv.text().indexOf("1.4034,") + 7;
        assertThat(Parser.parseCell(csv, empty, empty)).isEqualTo(new ExpressionResult(null, java.util.List.of()));
        int bad = csv.text().indexOf("5mm");
        assertThat(Parser.parseCell(csv, bad, bad + 3).diagnostics()).singleElement()
                .satisfies(d -> assertThat(d.primary().span().toString()).isEqualTo("t.csv:4:8"));
    }

    @Test
    void nestingIsLimited() {
        assertThat(parse("(".repeat(90) + "1" + ")".repeat(90)).diagnostics()).isEmpty();
        assertThat(parse("a" + " + a".repeat(90)).diagnostics()).isEmpty();
        for (String deep : new String[] {"(".repeat(50_000) + "1" + ")".repeat(50_000), "a" + " + a".repeat(50_000),
            "not ".repeat(50_000) + "a", "a" + ".b".repeat(50_000), "if a then b else ".repeat(20_000) + "c",
            "f(".repeat(50_000)}) {
            assertThat(parse(deep).diagnostics()).singleElement()
                    .satisfies(d -> assertThat(d.name()).isEqualTo("nested-too-deep"));
        }
        SourceFile blocks = new SourceFile("text", "a b {".repeat(50_000), false);
        assertThat(Parser.parse(blocks).diagnostics()).singleElement()
                .satisfies(d -> assertThat(d.name()).isEqualTo("nested-too-deep"));
    }
}
