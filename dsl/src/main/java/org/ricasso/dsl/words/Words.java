package org.ricasso.dsl.words;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All words of a house by language.
 *
 * @param dictionaries the languages that have words, by their tags
 * @param begun the languages in which the works itself has words, in the order of their tags
 */
public record Words(SortedMap<String, Dictionary> dictionaries, List<String> begun) {
    /** The language in which texts stand inline. */
    public static final String SOURCE = "en";

    /** No words at all. */
    public static final Words NONE = new Words(new TreeMap<>(), List.of());

    public Words {
        dictionaries = Collections.unmodifiableSortedMap(new TreeMap<>(dictionaries));
        begun = List.copyOf(begun);
    }

    /** The words of a language; an empty dictionary where there are none. */
    public Dictionary in(String language) {
        Dictionary found = dictionaries.get(language);
        return found == null ? new Dictionary(language) : found;
    }

    private static final java.util.regex.Pattern TAG = java.util.regex.Pattern.compile("[a-z]{2,3}(-[A-Za-z0-9]{2,8})*");

    /** Whether a text is a language's tag, such as {@code de} or {@code pt-BR}. */
    public static boolean isTag(String text) {
        return TAG.matcher(text).matches();
    }

    /** Whether a text holds a word, so that it cannot be understood without words of the reader's language. */
    public static boolean needsWords(String text) {
        return Lines.holdsWord(text);
    }

    /** The languages that the house's pages are made in when nobody says: the texts' own, then those that the works began. */
    public List<String> languages() {
        List<String> result = new java.util.ArrayList<>(List.of(SOURCE));
        begun.stream().filter(language -> !language.equals(SOURCE)).forEach(result::add);
        return List.copyOf(result);
    }
}
