package org.ricasso.dsl.words;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.source.Span;

/**
 * Finds texts and names of the works without words in a language that it has begun or wants whole; how much is missing of
 * what is not its own is told once.
 */
final class MissingWords {
    private final Map<String, Printed> printed;
    private final Dictionary dictionary;
    private final boolean error;
    private final SortedMap<String, Span> origins;
    private final Map<List<String>, Span> places;
    private final Set<List<String>> told;
    private final Findings findings;

    /**
     * @param error whether the language must be whole
     * @param origins where each origin begins the language
     * @param places where words for declarations stand, by language, origin and declaration
     * @param told declarations whose words are a finding already, so that nothing more need be said
     */
    MissingWords(Map<String, Printed> printed, Dictionary dictionary, boolean error, SortedMap<String, Span> origins,
            Map<List<String>, Span> places, Set<List<String>> told, Findings findings) {
        this.printed = printed;
        this.dictionary = dictionary;
        this.error = error;
        this.origins = origins;
        this.places = places;
        this.told = told;
        this.findings = findings;
    }

    void find() {
        String language = dictionary.language();
        int others = 0;
        Map<String, Printed.Label> names = new LinkedHashMap<>();
        Set<String> otherNames = new HashSet<>();
        Span own = null;
        for (Printed declaration : printed.values()) {
            boolean works = declaration.origin().equals(Origin.WORKS);
            own = own == null && works ? declaration.place() : own;
            List<String> paths = lines(dictionary, declaration).stream().map(Printed.Line::path).toList();
            List<String> key = List.of(language, Origin.WORKS, declaration.key());
            if (!paths.isEmpty() && !works) {
                others++;
            } else if (!paths.isEmpty() && !told.contains(key)) {
                findings.add(WordsFindings.missing(places.getOrDefault(key, declaration.place()), language, declaration, paths,
                        error));
            }
            labels(dictionary, declaration).forEach(label -> {
                if (Origin.of(label.place()).equals(Origin.WORKS)) {
                    names.putIfAbsent(label.name(), label);
                } else {
                    otherNames.add(label.name());
                }
            });
        }
        Span begun = origins.get(Origin.WORKS);
        if (!names.isEmpty()) {
            Span place = begun == null ? names.values().iterator().next().place() : begun;
            findings.add(WordsFindings.missingLabels(place, language, List.copyOf(names.keySet()), error));
        }
        Span place = begun == null ? own : begun;
        if (place != null && others + otherNames.size() > 0) {
            findings.add(WordsFindings.missingOfOthers(place, language, others, otherNames.size(), error));
        }
    }

    static List<Printed.Line> lines(Dictionary dictionary, Printed declaration) {
        return declaration.lines().stream().filter(line -> line.needed() && !dictionary.has(declaration, line)).toList();
    }

    static List<Printed.Label> labels(Dictionary dictionary, Printed declaration) {
        List<Printed.Label> result = new ArrayList<>(declaration.labels());
        result.removeIf(label -> dictionary.has(declaration, label));
        return result;
    }
}
