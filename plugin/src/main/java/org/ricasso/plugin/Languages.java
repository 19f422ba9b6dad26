package org.ricasso.plugin;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.apache.maven.plugin.MojoExecutionException;
import org.ricasso.dsl.words.Words;

/**
 * The languages of the pages.
 *
 * @param asked those that the pom or the command line names, in their order; none where it leaves them to the house
 */
record Languages(List<String> asked) {

    /** @throws MojoExecutionException if one of them is no language's tag */
    static Languages of(List<String> given) throws MojoExecutionException {
        Set<String> asked = new LinkedHashSet<>();
        if (given != null) {
            given.stream().filter(Objects::nonNull).map(String::strip).filter(tag -> !tag.isEmpty()).forEach(asked::add);
        }
        for (String tag : asked) {
            if (!Words.isTag(tag)) {
                throw new MojoExecutionException("ricasso.languages names " + tag + ", which is no language: write tags, as in en,de.");
            }
        }
        return new Languages(List.copyOf(asked));
    }

    /** Those in which each printed text must have words: what the works asks for is to be whole. */
    Set<String> whole() {
        Set<String> whole = new LinkedHashSet<>(asked);
        whole.remove(Words.SOURCE);
        return whole;
    }

    /** Those that pages are made in: where none is asked for, the texts' own and each in which the house has words. */
    List<String> ofPages(Words words) {
        return asked.isEmpty() ? words.languages() : asked;
    }
}
