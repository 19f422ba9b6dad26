package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.List;

/**
 * The languages of a set: the first one's pages lie at the top, those of each other in a folder that its tag names. Inside,
 * all lie alike, so that one page leads to the same in another language.
 *
 * @param tongues the languages in their order
 */
record SetLanguages(List<Tongue> tongues) {
    SetLanguages {
        tongues = List.copyOf(tongues);
    }

    String folder(Tongue tongue) {
        return tongue == tongues.get(0) ? "" : tongue.tag() + "/";
    }

    /** Names that no product's folder may have. */
    List<String> folders() {
        return tongues.stream().skip(1).map(Tongue::tag).toList();
    }

    /** The way from a page to the top of the set. */
    String top(Tongue tongue, String path) {
        return "../".repeat((int) (folder(tongue) + path).chars().filter(c -> c == '/').count());
    }

    /** The page in all languages; none where there is but one. */
    List<LanguageLink> links(Tongue tongue, String path) {
        List<LanguageLink> links = new ArrayList<>();
        if (tongues.size() > 1) {
            String top = top(tongue, path);
            tongues.forEach(other -> links.add(new LanguageLink(other.tag(), other.page().plain("language.name"),
                    top + folder(other) + path, other == tongue)));
        }
        return links;
    }
}
