package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.words.Words;

/** Whatever pages say of their own stands in a text, and nothing stands there that no page says. */
class PageWordsTest {
    private static final PageWords ENGLISH = PageWords.of(Words.NONE, "en");
    /** Groups that are asked for by an entry's name, a code or an outcome. */
    private static final Set<String> BY_NAME = Set.of("measurement", "of-gauge", "of-reaction", "signs", "outcome");

    @Test
    void everyWordOfATextIsSaidByAPage() throws IOException {
        Set<String> said = new TreeSet<>();
        for (Path folder : new Path[] {Path.of("src", "main", "java"), Path.of("src", "main", "resources")}) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Pattern.compile("\"([a-z]+\\.[a-z0-9-]+)\"").matcher(Files.readString(file)).results()
                            .map(r -> r.group(1)).filter(key -> !key.endsWith(".csv")).forEach(said::add);
                }
            }
        }
        Set<String> declared = new TreeSet<>(ENGLISH.keys());
        declared.removeIf(key -> BY_NAME.contains(key.substring(0, key.indexOf('.'))));
        said.retainAll(new TreeSet<>(ENGLISH.keys()));
        declared.removeAll(Set.of("values.yes", "values.no"));
        assertThat(said).containsAll(declared);
    }

    @Test
    void germanIsWhole() {
        assertThat(PageWords.of(Words.NONE, "de").borrows()).isFalse();
        assertThat(PageWords.of(Words.NONE, "xx").borrows()).isTrue();
        assertThat(ENGLISH.borrows()).isFalse();
        assertThat(PageWords.of(Words.NONE, "de").keys()).isEqualTo(ENGLISH.keys());
    }

    /** No sentence is left in a template: it holds markup and names of what stands elsewhere. */
    @Test
    void templatesHoldNoWords() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "resources", "pages"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".ftlh")).toList()) {
                String text = Files.readString(file).replaceAll("(?s)<#--.*?-->", "").replaceAll("(?s)<style>.*?</style>", "")
                        .replaceAll("\\$\\{(?:[^{}]|\\{[^{}]*})*}", "").replaceAll("</?[#@](?:\"[^\"]*\"|[^\">])*>", "")
                        .replaceAll("<(?:\"[^\"]*\"|[^>\"])*>", "\n");
                // the words of findings are those that the build prints
                text = text.replaceAll("(?<=\n)(also|because|remedy|source)(?=\n)", "");
                assertThat(text).as(file.toString()).doesNotContainPattern("(?<![\\p{L}&#])\\p{L}\\p{Ll}{2,}");
            }
        }
    }

    @Test
    void aWordThatNoTextHasIsAMistakeInATemplate() {
        assertThatThrownBy(() -> ENGLISH.say("sheet.sheep")).hasMessageContaining("sheet.sheep");
        assertThatThrownBy(() -> ENGLISH.say("sheet.revision")).hasMessageContaining("{revision}");
    }
}
