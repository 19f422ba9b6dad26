package org.ricasso.dsl.words;

import java.util.List;
import java.util.stream.Collectors;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration.Translation;
import org.ricasso.dsl.syntax.Declaration.WordsOf;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.syntax.Text;

/** What is said of words that do not go with their texts. */
final class WordsFindings {
    private static final int SHOWN = 5;
    private static final int GONE = 3;
    private static final String NOT_PRINTED = "words that are out of date are not printed: pages show the text itself";

    private WordsFindings() {}

    static Diagnostic noLanguage(Name language) {
        return Diagnostic.error("words-language", new Mark(language.span(),
                "`" + language + "` is no language: write its tag, as in de, fr or pt-BR"));
    }

    static Diagnostic twice(Span place, String key, Span earlier) {
        return Diagnostic.error("declared-twice", new Mark(place, "words for " + key + " stand twice"))
                .and(new Mark(earlier, "first here"));
    }

    /**
     * No edit: whether the words are right again only a person can say.
     *
     * @param strange words for texts that are there no more
     */
    static Diagnostic stale(Span signed, String digest, Printed declaration, List<Translation> strange, boolean error) {
        Diagnostic found = Diagnostic.warning("words-stale", new Mark(signed, "these words are for another text: the fingerprint of "
                + declaration.key() + " is " + digest)).and(new Mark(declaration.place(), "its texts have changed"));
        for (Translation entry : strange.subList(0, Math.min(GONE, strange.size()))) {
            found = found.and(new Mark(entry.path().span(), "no text is named so now"));
        }
        return raised(error, found.because(NOT_PRINTED).remedy(sign(digest)));
    }

    static Diagnostic unsigned(WordsOf words, String digest, Printed declaration, boolean error) {
        return raised(error, Diagnostic.warning("words-unsigned", new Mark(words.span(), "nothing says which text these words are for"))
                .and(new Mark(declaration.place(), "its texts stand here")).because(NOT_PRINTED).remedy(sign(digest)));
    }

    private static Remedy sign(String digest) {
        return new Remedy("read the words beside the text, mend them, then write of: \"" + digest + "\"", List.of());
    }

    static Diagnostic otherHoles(Text given, List<Text.Hole> strange, List<String> missing) {
        StringBuilder text = new StringBuilder();
        for (Text.Hole hole : strange) {
            text.append(text.isEmpty() ? "" : ", ").append('{').append(Lines.written(hole)).append("} is no hole of the text");
        }
        for (String hole : missing) {
            text.append(text.isEmpty() ? "" : ", ").append('{').append(hole).append("} is missing");
        }
        Diagnostic found = Diagnostic.error("words-holes", new Mark(
                strange.isEmpty() ? given.span() : strange.get(0).expression().span(), text.toString()))
                .because("what a page fills in must be the same in each language");
        if (strange.size() == 1 && missing.size() == 1) {
            return found.remedy(new Remedy("write {" + missing.get(0) + "}",
                    List.of(new Edit(strange.get(0).expression().span(), missing.get(0)))));
        }
        return found;
    }

    static Diagnostic otherLines(WordsOf words, Printed declaration) {
        int lines = declaration.at(Printed.INSTRUCT).size();
        Span first = words.instruct().get(0).span();
        return Diagnostic.error("words-lines", new Mark(first, "the work of " + declaration.key() + " has "
                + lines + (lines == 1 ? " line" : " lines") + ", here are " + words.instruct().size()))
                .and(new Mark(declaration.place(), "declared here"))
                .because("each line stands for the line at its place");
    }

    static Diagnostic missing(Span place, String language, Printed declaration, List<String> paths, boolean error) {
        return raised(error, Diagnostic.warning("words-missing", new Mark(place, language + " has no words for " + shown(paths)
                + " of " + declaration.key())).because("pages show the text itself").remedy(list(language)));
    }

    static Diagnostic missingLabels(Span place, String language, List<String> names, boolean error) {
        return raised(error, Diagnostic.warning("words-missing", new Mark(place, language + " has no words for the names " + shown(names)))
                .because("pages show the name itself").remedy(list(language)));
    }

    static Diagnostic missingOfOthers(Span place, String language, int declarations, int names, boolean error) {
        return raised(error, Diagnostic.warning("words-missing", new Mark(place, language + " has no words for " + declarations
                + " declarations and " + names + " names that are not the works' own"))
                .because("pages show the texts themselves").remedy(list(language)));
    }

    /** An error in a language that the works wants whole, else a warning. */
    private static Diagnostic raised(boolean error, Diagnostic found) {
        return error ? found.as(Severity.ERROR) : found;
    }

    private static Remedy list(String language) {
        return new Remedy("list them with their fingerprints: mvn ricasso:words -Dricasso.language=" + language, List.of());
    }

    private static String shown(List<String> all) {
        List<String> distinct = all.stream().distinct().toList();
        int more = distinct.size() - SHOWN;
        return distinct.stream().limit(SHOWN).collect(Collectors.joining(", ")) + (more > 0 ? " and " + more + " more" : "");
    }
}
