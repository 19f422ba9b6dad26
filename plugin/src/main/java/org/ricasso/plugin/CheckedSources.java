package org.ricasso.plugin;

import java.util.List;
import java.util.Set;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;

/**
 * A house that was checked, kept for the next goal on the same project in the same build.
 *
 * @param texts the works' own texts
 * @param only the products that were asked for
 * @param whole the languages that must be whole
 * @param ricasso the loaded house
 */
record CheckedSources(Texts texts, Set<String> only, Set<String> whole, Ricasso ricasso) {

    /** Whether another check would read exactly the same. */
    boolean isOf(Texts others, Set<String> products, Set<String> languages) {
        return only.equals(products) && whole.equals(languages) && same(texts.files(), others.files())
                && same(texts.lock(), others.lock())
                && texts.data().keySet().equals(others.data().keySet())
                && texts.data().keySet().stream().allMatch(n -> same(texts.data().get(n), others.data().get(n)));
    }

    private static boolean same(List<SourceFile> one, List<SourceFile> other) {
        if (one.size() != other.size()) {
            return false;
        }
        for (int i = 0; i < one.size(); i++) {
            if (!same(one.get(i), other.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean same(SourceFile one, SourceFile other) {
        return one == null || other == null ? one == other : one.name().equals(other.name()) && one.text().equals(other.text());
    }
}
