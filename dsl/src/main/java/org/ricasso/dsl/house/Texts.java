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
 * @param lock what settings were solved to, or null where nothing is kept
 */
public record Texts(List<SourceFile> files, Map<String, SourceFile> data, SourceFile lock) {
    public Texts {
        files = List.copyOf(files);
        data = Map.copyOf(data);
    }

    /** Texts without a lock. */
    public Texts(List<SourceFile> files, Map<String, SourceFile> data) {
        this(files, data, null);
    }

    /** The same texts with another lock. */
    public Texts with(SourceFile other) {
        return new Texts(files, data, other);
    }

    /** The shipped texts as they are given, then those of the works by name: in which order they came is not seen. */
    public List<SourceFile> inOrder() {
        return files.stream().sorted(Comparator.comparing((SourceFile file) -> file.shipped() ? "" : "/" + file.name()))
                .toList();
    }
}
