package org.ricasso.dsl.catalogue;

import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Severity;

/**
 * What is said of one finding.
 *
 * @param name the finding's name
 * @param theme the name of the theme that it stands under
 * @param severity how grave it is
 * @param title what is wrong, in a few words
 * @param meaning why it is a fault, paragraph by paragraph, names and signs in backquotes
 * @param remedy what to do in general, as a request
 * @param gives the smallest declarations that give it, put into the little house; empty for what no text can give
 * @param prints what is printed of them; empty where {@code gives} is
 * @param mended the same declarations, mended; empty where {@code gives} is, or where they would be as long as the limit
 * @param files other files that both need, by name
 */
public record CatalogueEntry(String name, String theme, Severity severity, String title, List<String> meaning, String remedy,
        String gives, String prints, String mended, Map<String, String> files) {
    public CatalogueEntry {
        meaning = List.copyOf(meaning);
        files = Map.copyOf(files);
    }

    public boolean hasExample() {
        return !gives.isEmpty();
    }
}
