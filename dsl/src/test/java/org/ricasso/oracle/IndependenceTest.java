package org.ricasso.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The second opinion owes nothing to the check: no class of it names anything of the tool. */
class IndependenceTest {
    @Test
    void noClassNamesTheTool() throws IOException, URISyntaxException {
        Path folder = Path.of(Oracle.class.getResource("Oracle.class").toURI()).getParent();
        List<String> foreign = List.of(String.join("/", "org", "ricasso", "dsl"), String.join("/", "org", "ricasso", "shared"),
                String.join(".", "org", "ricasso", "dsl"), String.join(".", "org", "ricasso", "shared"));
        try (Stream<Path> classes = Files.list(folder)) {
            List<Path> all = classes.filter(f -> f.toString().endsWith(".class")).toList();
            assertThat(all).hasSizeGreaterThan(10);
            for (Path file : all) {
                // names of classes stand in a class file as they are, in its constants
                assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).as(file.toString())
                        .doesNotContain(foreign.toArray(String[]::new));
            }
        }
    }

    @Test
    void theOpinionIsOneOfItsOwn() {
        Job job = new Job("N-1", java.util.Map.of(), List.of(), List.of(), java.util.Map.of());
        assertThat(Oracle.judge(job)).extracting(Violation::rule).contains("R19", "R63", "R65");
    }
}
