package org.ricasso.dsl.words;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Words made by hand. */
public final class TestWords {
    private TestWords() {}

    /**
     * Words of one language.
     *
     * @param phrases what stands for a text, wherever it stands
     * @param labels what a name or word is called
     */
    public static Words of(String language, Map<String, String> phrases, Map<String, String> labels) {
        Dictionary dictionary = new Dictionary(language);
        Printed anywhere = new Printed("test", "test", null, List.of(), List.of());
        phrases.forEach((text, phrase) -> dictionary.put(anywhere, new Printed.Line("test", text, List.of(), true),
                new Phrase(List.of(new Phrase.Piece(phrase, -1)))));
        labels.forEach(dictionary::label);
        return new Words(new TreeMap<>(Map.of(language, dictionary)), List.of(language));
    }
}
