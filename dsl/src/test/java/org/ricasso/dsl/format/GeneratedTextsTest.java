package org.ricasso.dsl.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.SyntaxTree;
import org.ricasso.dsl.syntax.TreeText;

/** Random trees, printed with random layout, comments and spellings. */
class GeneratedTextsTest {
    private static final long SEED = Long.getLong("ricasso.seed", 20260914);
    private static final int TEXTS = Integer.getInteger("ricasso.format.texts", 5000);

    @Test
    void whatIsPrintedIsReadAndLaidOut() {
        long characters = 0;
        int comments = 0;
        for (int i = 0; i < TEXTS; i++) {
            Random random = new Random(SEED + i);
            List<Declaration> declarations = new RandomTree(random).declarations();
            RandomWriter written = new RandomPrint(random).print(declarations);
            String text = written.text();
            try {
                assertThat(Layouts.tree(text)).isEqualTo(TreeText.of(new SyntaxTree(null, declarations)));
                assertThat(Layouts.comments(text)).isEqualTo(written.comments());
                Layouts.check(text);
            } catch (RuntimeException | Error e) {
                throw new AssertionError("seed " + (SEED + i) + ", text " + i + ":\n" + text, e);
            }
            characters += text.length();
            comments += written.comments().size();
        }
        System.out.println("formatter: " + TEXTS + " texts, " + characters + " characters, " + comments + " comments, seed "
                + SEED);
        assertThat(characters).isGreaterThan(TEXTS * 200L);
        assertThat(comments).isGreaterThan(TEXTS);
    }
}
