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

    /** The languages that the house's pages are made in when nobody says: the texts' own, then those that the works began. */
    public List<String> languages() {
        List<String> result = new java.util.ArrayList<>(List.of(SOURCE));
        begun.stream().filter(language -> !language.equals(SOURCE)).forEach(result::add);
        return List.copyOf(result);
    }
}
