package org.ricasso.dsl.house;

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
}
