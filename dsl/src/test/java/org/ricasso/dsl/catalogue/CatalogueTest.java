package org.ricasso.dsl.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.format.Formatter;
import org.ricasso.dsl.format.LayoutFinding;
import org.ricasso.dsl.source.SourceFile;

/** Every finding stands in the catalogue, its example gives it alone and as printed there, and mended it gives nothing. */
class CatalogueTest {
    /** What no text can give, with the integration test of the plugin that gives it. */
    private static final Map<String, String> OF_THE_PLUGIN = Map.of("not-utf-8", "not-utf-8");
    /** Mended they would be as long as the limit; {@code LimitsTest} holds that there is no finding at the limit. */
    private static final Set<String> NOT_MENDED = Set.of("file-too-large", "like-too-deep", "line-too-long",
            "nested-too-deep", "route-too-long", "table-too-long");
    /** How a finding gets its name in the sources. */
    private static final Pattern NAMED =
            Pattern.compile("(?:\\b(?:error|warning|missing|Finding)\\(|\\badd\\((?=\"[^\"]*\", Severity))\\s*\"([a-z][a-z0-9-]*)\"");

    static Collection<CatalogueEntry> entries() {
        return Catalogue.shipped().entries();
    }

    static List<CatalogueEntry> examples() {
        return entries().stream().filter(CatalogueEntry::hasExample).toList();
    }

    /** The names that the language and the plugin give to findings, by their sources. */
    private static Set<String> named() throws IOException {
        Set<String> names = new TreeSet<>();
        for (Path root : List.of(Path.of("src", "main", "java"), Path.of("..", "plugin", "src", "main", "java"))) {
            assertThat(root).exists();
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                    Matcher matcher = NAMED.matcher(Files.readString(file, StandardCharsets.UTF_8));
                    while (matcher.find()) {
                        names.add(matcher.group(1));
                    }
                }
            }
        }
        return names;
    }

    @Test
    void everyNameInTheSourcesHasItsEntryAndNoEntryIsUnused() throws IOException {
        Set<String> entries = new TreeSet<>();
        entries().forEach(entry -> entries.add(entry.name()));
        Set<String> unused = new TreeSet<>(entries);
        unused.removeAll(named());
        Set<String> unwritten = named();
        unwritten.removeAll(entries);
        assertThat(unwritten).as("findings without an entry; how to add one is told in package-info of the catalogue").isEmpty();
        assertThat(unused).as("entries of findings that nothing gives").isEmpty();
    }

    @Test
    void onlyWhatNoTextCanGiveHasNoExample() {
        assertThat(entries()).filteredOn(e -> !e.hasExample()).extracting(CatalogueEntry::name)
                .containsExactlyInAnyOrderElementsOf(OF_THE_PLUGIN.keySet());
        assertThat(examples()).filteredOn(e -> e.mended().isEmpty()).extracting(CatalogueEntry::name)
                .containsExactlyInAnyOrderElementsOf(NOT_MENDED);
        OF_THE_PLUGIN.forEach((name, project) -> assertThat(Path.of("..", "plugin", "src", "it", project, "verify.groovy"))
                .content(StandardCharsets.UTF_8).contains(name));
    }

    @Test
    void everyTextOfTheFolderIsAThemeOrKnown() throws IOException {
        try (Stream<Path> files = Files.list(CatalogueFiles.FOLDER)) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactlyInAnyOrderElementsOf(Stream.concat(
                    Catalogue.THEMES.stream().map(t -> t + ".md"), Stream.of("guideline.md", "little-house.ricasso")).toList());
        }
    }

    private static List<Diagnostic> findings(CatalogueEntry entry, String text) {
        if (entry.name().equals("layout")) {
            return layout(text);
        }
        List<Diagnostic> findings = LittleHouse.findings(text, entry.files());
        // words that are not printed are missing as well
        return !entry.theme().equals("words") || entry.name().equals("words-missing") ? findings
                : findings.stream().filter(d -> !d.name().equals("words-missing")).toList();
    }

    private static List<Diagnostic> layout(String text) {
        SourceFile file = new SourceFile("example.ricasso", text, false);
        return LayoutFinding.of(file, Formatter.format(file), "mvn ricasso:format").stream().toList();
    }

    @Test
    void theLittleHouseHolds() {
        assertThat(Cases.printed(LittleHouse.findings("", Map.of()))).isEmpty();
        assertThat(LittleHouse.check("", Map.of()).checked().products()).hasSize(1);
        assertThat(layout(Catalogue.littleHouse())).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theExampleGivesThisFindingAloneAndPrintsWhatStandsThere(CatalogueEntry entry) {
        List<Diagnostic> findings = findings(entry, entry.gives());
        assertThat(findings).as(Cases.printed(findings)).extracting(Diagnostic::name).containsExactly(entry.name());
        assertThat(findings.get(0).severity()).isEqualTo(entry.severity());
        Cases.prints(CatalogueFiles.FOLDER.resolve(entry.theme() + ".md"), entry.name(), entry.prints(), Cases.printed(findings));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theMendedExampleGivesNothing(CatalogueEntry entry) {
        assertThat(entry.mended()).isNotEqualTo(entry.gives());
        assertThat(Cases.printed(findings(entry, entry.mended()))).isEmpty();
        assertThat(layout(entry.mended())).isEmpty();
    }

    /** A remedy with an edit is exact: written as it stands, the finding is gone. */
    @ParameterizedTest
    @MethodSource("examples")
    void editsCure(CatalogueEntry entry) {
        for (Diagnostic diagnostic : findings(entry, entry.gives())) {
            for (Remedy remedy : diagnostic.remedies()) {
                if (remedy.edits().stream().anyMatch(e -> e.span().file().name().equals("example.ricasso"))) {
                    StringBuilder text = new StringBuilder(entry.gives());
                    for (Edit edit : remedy.edits()) {
                        text.replace(edit.span().start(), edit.span().end(), edit.replacement());
                    }
                    assertThat(findings(entry, text.toString())).as(remedy.text()).extracting(Diagnostic::name)
                            .doesNotContain(entry.name());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("entries")
    void entriesKeepToTheGuideline(CatalogueEntry entry) {
        assertThat(entry.name()).matches("[a-z]+(-[a-z0-9]+){0,3}");
        assertThat(entry.title()).matches("[A-Z][^.!]*").hasSizeLessThanOrEqualTo(72);
        for (String text : List.of(String.join(" ", entry.meaning()), entry.remedy())) {
            assertThat(text).matches("(?s)[A-Z`].*\\.").doesNotContain("!")
                    .satisfies(t -> assertThat(t.chars().filter(c -> c == '`').count() % 2).isZero());
        }
        String file = "(?s).*\\b" + "%s" + "\\b.*";
        entry.files().keySet().forEach(name -> assertThat(entry.gives() + entry.mended()).as("a file that is not read")
                .matches(file.formatted(Pattern.quote(name))));
    }

    @Test
    void aTextOfAnotherFormIsRefused() {
        String one = "# Head\n\n## a\nTitle\n\nMeaning.\n\nRemedy: Mend it.\n";
        assertThat(new Catalogue(Map.of("x", one)).entries()).hasSize(1);
        refuses(one + one.substring(6), "a stands twice");
        refuses(one + "```gives\n```\n```gives\n```\n", "fences want different words");
        refuses(one + "```mended\nx\n```\n", "none that gives it");
        refuses(one + "```gives\nx\n", "a fence is not closed");
        refuses(one.replace("Remedy: ", ""), "wants a title");
        refuses(one.replace("## a", "## a (grave)"), "no name of a finding");
        refuses(one.substring(3), "the first line has no title");
    }

    private static void refuses(String text, String reason) {
        assertThatThrownBy(() -> new Catalogue(Map.of("x", text))).isInstanceOf(IllegalStateException.class)
                .hasMessageContaining(reason);
    }
}
