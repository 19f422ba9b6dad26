package org.ricasso.dsl.house;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.source.SourceFile;

/**
 * The texts of a house.
 *
 * @param files texts in the language, the shipped ones first
 * @param data other files that texts name (CSV), by their names
 */
public record Texts(List<SourceFile> files, Map<String, SourceFile> data) {
    public Texts {
        files = List.copyOf(files);
        data = Map.copyOf(data);
    }

    /** The shipped texts as they are given, then those of the works by name: in which order they came is not seen. */
    public List<SourceFile> inOrder() {
        return files.stream().sorted(Comparator.comparing((SourceFile file) -> file.shipped() ? "" : "/" + file.name()))
                .toList();
    }
}
