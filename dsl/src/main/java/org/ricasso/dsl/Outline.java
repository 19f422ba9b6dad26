package org.ricasso.dsl;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ricasso.dsl.source.SourceFile;

/**
 * What a text declares, as far as a glance at its braces tells: which products, and what they are like. Nothing is read; a
 * text that is not plain products through and through is taken for one that others may rest on.
 */
final class Outline {
    private static final String FAMILY = "family";
    private static final String LIKE = "like";
    private final String productKind;
    private final Set<String> products = new TreeSet<>();
    private final Set<String> likes = new TreeSet<>();
    private boolean plain;
    private int column = -1;

    private Outline(String productKind) {
        this.productKind = productKind;
    }

    static Outline of(SourceFile file, String productKind) {
        Outline outline = new Outline(productKind);
        outline.read(file.text());
        if (!outline.isPlain()) {
            outline.guess(file.text());
        }
        return outline;
    }

    /** Whether the text holds products and families and nothing else, with braces that match. */
    boolean isPlain() {
        return plain && !products.isEmpty();
    }

    /** Names of the products, rows of families too. */
    Set<String> products() {
        return products;
    }

    /** Names of what they take over. */
    Set<String> likes() {
        return likes;
    }

    /** How many products it may hold. */
    int weight() {
        return Math.max(1, products.size());
    }

    /** Of a text whose braces say little: every name that may be a product's or be taken over. */
    private void guess(String text) {
        Matcher matcher = Pattern.compile("(?<![\\p{L}\\d-])(" + LIKE + "|" + Pattern.quote(productKind)
                + ")[ \\t]+([\\p{L}\\d_.-]+)").matcher(text);
        while (matcher.find()) {
            (matcher.group(1).equals(LIKE) ? likes : products).add(matcher.group(2));
        }
    }

    private void read(String text) {
        plain = true;
        int depth = 0;
        boolean family = false;
        List<String> head = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '/' && text.startsWith("//", at)) {
                at = end(text, at);
            } else if (c == '"') {
                at = quoted(text, at);
            } else if (c == '{') {
                if (depth++ == 0) {
                    family = head(head);
                    head.clear();
                }
                at++;
            } else if (c == '}') {
                plain &= --depth >= 0;
                at++;
            } else if (c == '|' && family && depth == 1) {
                int end = end(text, at);
                row(text.substring(at, end));
                at = end;
            } else if (depth == 0 && isWord(c)) {
                int from = at;
                while (at < text.length() && isWord(text.charAt(at))) {
                    at++;
                }
                head.add(text.substring(from, at));
            } else {
                plain &= depth > 0 || c <= ' ' || c == '\uFEFF';
                at++;
            }
        }
        plain &= depth == 0 && head.isEmpty();
    }

    /** @return whether it is a family's */
    private boolean head(List<String> words) {
        String what = words.isEmpty() ? "" : words.get(0);
        boolean family = what.equals(FAMILY);
        plain &= words.size() > 1 && (family || what.equals(productKind));
        if (words.size() > 1 && !family) {
            products.add(words.get(1));
        }
        for (int i = 2; i + 1 < words.size(); i++) {
            if (words.get(i).equals(LIKE)) {
                likes.add(words.get(i + 1));
            }
        }
        column = -1;
        return family;
    }

    private void row(String line) {
        String[] cells = line.split("\\|", -1);
        for (int i = 0; i < cells.length; i++) {
            if (cells[i].strip().equals(productKind)) {
                // a grid's head; a family may have several grids
                column = i;
                return;
            }
        }
        if (column >= 0 && column < cells.length) {
            products.add(cells[column].strip());
        }
    }

    private static boolean isWord(char c) {
        return Character.isLetterOrDigit(c) || c == '-' || c == '_' || c == '.';
    }

    private static int end(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
            at++;
        }
        return at;
    }

    /** Behind a text in quotes, which ends with its line at the latest. */
    private static int quoted(String text, int from) {
        int at = from + 1;
        while (at < text.length() && text.charAt(at) != '"' && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
            at += text.charAt(at) == '\\' && at + 1 < text.length() && text.charAt(at + 1) != '\n' ? 2 : 1;
        }
        return Math.min(text.length(), at + 1);
    }
}
