package org.ricasso.dsl.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.answer.Calculator;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.format.Formatter;
import org.ricasso.dsl.format.LayoutFinding;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.SourceFile;

/**
 * Golden cases of what is no finding's own example: ways of overriding, what loops and parts come to, findings in combination.
 * A case is a section of a text under {@code cases}:
 *
 * <pre>
 * ## like-merges-by-path
 * A block of the taking thing adds to the block that is taken over
 *
 * ```gives
 * knife short like paring { blade { length: 80 mm } }
 * ```
 * ```asks
 * calculate short: blade.length
 * calculate: loss(tempered: 180 °C).loss
 * explain loss
 * steps short
 * ```
 * ```prints
 * (what is found, then each question with its answer; written by -Dricasso.golden=write, read by people)
 * ```
 * </pre>
 *
 * {@code gives} stands in the little house as in the catalogue ({@code // without …} works, and {@code ~~ … from …:}); fences named
 * {@code x.ricasso} or {@code x.csv} are files beside it. A question is {@code calculate PRODUCT: EXPRESSION}, {@code calculate:
 * EXPRESSION}, {@code explain NAME} or {@code steps PRODUCT}, which prints the route as it is walked. Texts that hold are laid out.
 */
class GoldenCasesTest {

    /** A case with the text that it stands in. */
    record Case(Path text, CaseText.Section section) {
        String fence(String word) {
            return section.fences().getOrDefault(word, "");
        }

        Map<String, String> files() {
            Map<String, String> files = new LinkedHashMap<>(section.fences());
            files.keySet().removeAll(Set.of("gives", "asks", "prints"));
            return files;
        }

        @Override
        public String toString() {
            return section.name();
        }
    }

    static List<Path> texts() {
        try (Stream<Path> files = Files.list(CatalogueFiles.CASES)) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (Path text : texts()) {
            try {
                CaseText.of(Files.readString(text, StandardCharsets.UTF_8).replace("\r\n", "\n")).sections()
                        .forEach(section -> cases.add(new Case(text, section)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return cases;
    }

    @Test
    void textsAreReadAndNamesAreTheirOwn() {
        assertThat(texts()).isNotEmpty().allSatisfy(text -> assertThat(text.toString()).endsWith(".md"));
        assertThat(cases()).extracting(Case::toString).doesNotHaveDuplicates()
                .allSatisfy(name -> assertThat(name).matches("[a-z]+(-[a-z0-9]+)*"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isAsPrinted(Case one) {
        assertThat(one.section().lines()).as("what the case shows").isNotEmpty();
        assertThat(one.fence("gives")).as("what the case gives").isNotEmpty();
        Ricasso ricasso = LittleHouse.check(one.fence("gives"), one.files());
        StringBuilder out = new StringBuilder(Cases.printed(ricasso.checked().diagnostics()));
        assertThat(out.length() + one.fence("asks").length()).as("a case finds something, or asks something").isPositive();
        one.fence("asks").lines().forEach(question -> answer(ricasso, question.strip(), out));
        assertThat(out).as("an answer").isNotEmpty();
        Cases.prints(one.text(), one.section().name(), one.fence("prints"), out.toString());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void usesAllThatItHolds(Case one) {
        String texts = one.fence("gives") + String.join("", one.files().values());
        one.files().keySet().forEach(name -> assertThat(name.endsWith(".ricasso") || texts.contains('"' + name + '"'))
                .as("%s is read", name).isTrue());
        if (LittleHouse.findings(one.fence("gives"), one.files()).isEmpty()) {
            SourceFile file = new SourceFile("example.ricasso", one.fence("gives"), false);
            assertThat(LayoutFinding.of(file, Formatter.format(file), "").map(d -> Cases.printed(List.of(d)))).isEmpty();
        }
    }

    /** Names that are found in cases are findings of the catalogue, or rules that the cases declare. */
    @Test
    void findingsAreOfTheCatalogueOrOfRules() {
        Set<String> strange = new TreeSet<>();
        for (Case one : cases()) {
            Ricasso ricasso = LittleHouse.check(one.fence("gives"), one.files());
            ricasso.checked().diagnostics().stream().map(d -> d.name())
                    .filter(name -> Catalogue.shipped().entry(name) == null
                            && ricasso.house().vocabulary().rule(name) == null)
                    .forEach(strange::add);
        }
        assertThat(strange).isEmpty();
    }

    private static void answer(Ricasso ricasso, String question, StringBuilder out) {
        out.append("> ").append(question).append('\n');
        if (question.startsWith("explain ")) {
            Optional<List<String>> lines = ricasso.explain(question.substring(8).strip());
            assertThat(lines).as(question).isPresent();
            lines.orElseThrow().forEach(line -> out.append(line).append('\n'));
        } else if (question.startsWith("calculate")) {
            int colon = question.indexOf(':');
            String product = question.substring(9, colon).strip();
            Calculator.Answer answer = ricasso.calculate(question.substring(colon + 1).strip(), product.isEmpty() ? null : product);
            out.append(Cases.printed(answer.diagnostics()));
            if (answer.diagnostics().isEmpty()) {
                out.append(answer.value()).append(answer.reach().isEmpty() ? "" : " (" + answer.reach() + " with scatter)").append('\n');
                answer.derivation().forEach(line -> out.append("  ").append(line).append('\n'));
            }
        } else if (question.startsWith("steps ")) {
            steps(ricasso, question.substring(6).strip(), out);
        } else {
            throw new AssertionError("a question is calculate, explain or steps: " + question);
        }
    }

    private static void steps(Ricasso ricasso, String product, StringBuilder out) {
        Map.Entry<Thing, Route> found = ricasso.house().routes().entrySet().stream()
                .filter(e -> e.getKey().name().equals(product)).findFirst().orElseThrow();
        Route route = found.getValue();
        route.parts().forEach(part -> {
            out.append("part ").append(part.part()).append('\n');
            part.steps().forEach(step -> step(step, "  ", out));
        });
        route.steps().forEach(step -> step(step, "", out));
        route.loops().forEach(loop -> out.append("rework ").append(route.steps().get(loop.from()).number()).append(" to ")
                .append(route.steps().get(loop.to()).number()).append(", when ").append(loop.when().path()).append(", times ")
                .append(loop.times()).append('\n'));
    }

    private static void step(RouteStep step, String before, StringBuilder out) {
        out.append(before).append(step.number()).append(' ').append(step.operation().name())
                .append(step.centre() == null ? "" : " at " + step.centre().name());
        for (int i = 0; i < step.settings().length; i++) {
            if (step.settings()[i] != null && !(step.settings()[i] instanceof Value.Absent)) {
                out.append("; ").append(step.operation().takes().get(i).name()).append(' ').append(Shows.show(step.settings()[i]));
            }
        }
        step.measures().forEach(measure -> out.append("; measures ").append(measure.property().path()));
        step.watches().forEach(watch -> out.append("; watches ").append(step.operation().takes().get(watch.setting()).name())
                .append(", sample ").append(Shows.show(watch.entries().entries().get("sample"))));
        out.append('\n');
    }
}
