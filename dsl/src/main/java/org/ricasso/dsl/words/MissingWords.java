package org.ricasso.dsl.words;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.source.Span;

/**
 * Finds texts and names without words in a language that is begun: each origin has words for its own, and one who begins a
 * language that an other has not is told once how much that is.
 */
final class MissingWords {
    private final Map<String, Printed> printed;
    private final SortedMap<String, Dictionary> dictionaries;
    private final Map<String, SortedMap<String, Span>> begun;
    private final Map<List<String>, Span> places;
    private final Findings findings;

    MissingWords(Map<String, Printed> printed, SortedMap<String, Dictionary> dictionaries,
            Map<String, SortedMap<String, Span>> begun, Map<List<String>, Span> places, Findings findings) {
        this.printed = printed;
        this.dictionaries = dictionaries;
        this.begun = begun;
        this.places = places;
        this.findings = findings;
    }

    void find() {
        begun.forEach((language, origins) -> {
            if (!language.equals(Words.SOURCE)) {
                find(dictionaries.get(language), origins);
            }
        });
    }

    private void find(Dictionary dictionary, SortedMap<String, Span> origins) {
        int others = 0;
        Map<String, Set<String>> names = new TreeMap<>();
        for (Printed declaration : printed.values()) {
            String origin = declaration.origin();
            List<String> paths = lines(dictionary, declaration).stream().map(Printed.Line::path).toList();
            if (!paths.isEmpty() && origins.containsKey(origin)) {
                Span place = places.getOrDefault(List.of(dictionary.language(), origin, declaration.key()), declaration.place());
                findings.add(WordsFindings.missing(place, dictionary.language(), declaration, paths));
            } else if (!paths.isEmpty()) {
                others++;
            }
            labels(dictionary, declaration).forEach(label ->
                    names.computeIfAbsent(Origin.of(label.place()), o -> new LinkedHashSet<>()).add(label.name()));
        }
        int otherNames = 0;
        for (Map.Entry<String, Set<String>> of : names.entrySet()) {
            Span place = origins.get(of.getKey());
            if (place == null) {
                otherNames += of.getValue().size();
            } else {
                findings.add(WordsFindings.missingLabels(place, dictionary.language(), List.copyOf(of.getValue())));
            }
        }
        Span works = origins.get(Origin.WORKS);
        if (works != null && others + otherNames > 0) {
            findings.add(WordsFindings.missingOfOthers(works, dictionary.language(), others, otherNames));
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
