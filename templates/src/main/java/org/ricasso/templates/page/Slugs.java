package org.ricasso.templates.page;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Names of folders made from names of products: safe on any file system, the same in every build. */
final class Slugs {
    private static final int LONGEST = 48;
    /** Names that some file systems keep for devices. */
    private static final Set<String> RESERVED = Set.of("con", "prn", "aux", "nul", "com0", "com1", "com2", "com3",
            "com4", "com5", "com6", "com7", "com8", "com9", "lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6",
            "lpt7", "lpt8", "lpt9");

    private Slugs() {}

    /**
     * One name for each text, all different, also where upper and lower case are one. A text that is already a safe
     * name keeps it; one that loses something gets a part of its digest, so that its name does not depend on others.
     */
    static List<String> of(List<String> texts) {
        return of(texts, List.of());
    }

    /** @param others names that are not to be had */
    static List<String> of(List<String> texts, List<String> others) {
        Map<String, Integer> wanted = new HashMap<>();
        for (String text : texts) {
            wanted.merge(slug(text), 1, Integer::sum);
        }
        Set<String> taken = new HashSet<>();
        others.forEach(other -> taken.add(other.toLowerCase(Locale.ROOT)));
        List<String> result = new ArrayList<>();
        for (String text : texts) {
            String slug = slug(text);
            if (wanted.get(slug) > 1) {
                slug = withDigest(slug, text);
            }
            String free = slug;
            for (int i = 2; !taken.add(free); i++) {
                free = slug + "-" + i;
            }
            result.add(free);
        }
        return List.copyOf(result);
    }

    static String slug(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        String plain = Normalizer.normalize(lower, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        if (plain.equals(lower) && plain.length() <= LONGEST && !plain.isEmpty() && !RESERVED.contains(plain)) {
            return plain;
        }
        return withDigest(plain, text);
    }

    private static String withDigest(String slug, String text) {
        String digest = Fingerprint.ofText(text).substring(0, 6);
        String kept = slug.length() > LONGEST ? slug.substring(0, LONGEST) : slug;
        return kept.isEmpty() ? "product-" + digest : kept + "-" + digest;
    }
}
