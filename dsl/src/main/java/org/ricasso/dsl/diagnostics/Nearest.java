package org.ricasso.dsl.diagnostics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** Names near a name that is not known. */
public final class Nearest {
    private Nearest() {}

    /**
     * The names that may have been meant, best first: the same but for case, then by the number of letters to change
     * (a swap counts once), at most a third of them; none for names of less than three letters.
     */
    public static List<String> to(String name, Collection<String> known) {
        return candidates(name, known).stream().map(Candidate::name).distinct().limit(3).toList();
    }

    /** The name that is nearer than all others, or an empty text. */
    public static String only(String name, Collection<String> known) {
        List<Candidate> candidates = candidates(name, known);
        return candidates.isEmpty() || candidates.size() > 1
                && candidates.get(0).distance() == candidates.get(1).distance() ? "" : candidates.get(0).name();
    }

    private record Candidate(String name, int distance) {}

    private static List<Candidate> candidates(String name, Collection<String> known) {
        String lower = name.toLowerCase(Locale.ROOT);
        List<Candidate> candidates = new ArrayList<>();
        int limit = Math.max(1, name.length() / 3);
        for (String one : new TreeSet<>(known)) {
            String other = one.toLowerCase(Locale.ROOT);
            int distance = other.equals(lower) ? 0 : name.length() < 3 ? limit + 1 : distance(lower, other, limit);
            if (distance <= limit) {
                candidates.add(new Candidate(one, distance));
            }
        }
        candidates.sort(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::name));
        return candidates;
    }

    private static int distance(String a, String b, int limit) {
        if (Math.abs(a.length() - b.length()) > limit) {
            return limit + 1;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
