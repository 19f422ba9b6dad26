package org.ricasso.templates.reference;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Where each name has its place in the reference. Addresses are from the top of the set and depend on the name alone. */
final class Index {
    private static final Pattern SAFE = Pattern.compile("[a-z][a-z0-9-]*");
    /** Names that some file systems keep for devices, and the name of the first page of a folder. */
    private static final Pattern KEPT = Pattern.compile("index|con|prn|aux|nul|com[0-9]|lpt[0-9]");
    private final Map<String, String> places = new HashMap<>();
    private final List<Entry> entries = new ArrayList<>();

    /** A name in the index. */
    record Entry(String name, String what, String title, String href) {}

    void add(String what, String name, String title, String href) {
        if (places.putIfAbsent(what + " " + name, href) == null) {
            entries.add(new Entry(name, what, title == null || title.equals(name) ? "" : title, href));
        }
    }

    /** The place of a name, from the top of the set; empty where it has none. */
    String place(String what, String name) {
        return places.getOrDefault(what + " " + name, "");
    }

    /** All names, in their order. */
    List<Entry> entries() {
        return entries.stream().sorted(java.util.Comparator.comparing(Entry::name).thenComparing(Entry::what)).toList();
    }

    /** A file's name made of a name of the language. */
    static String file(String name) {
        boolean plain = SAFE.matcher(name).matches() && !KEPT.matcher(name).matches() && name.length() <= 80;
        return plain ? name : "n-" + HexFormat.of().formatHex(name.getBytes(StandardCharsets.UTF_8));
    }

    /** An address inside a page made of a name of the language. */
    static String id(String name) {
        StringBuilder result = new StringBuilder("n-");
        name.codePoints().forEach(c -> {
            if (c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '-' || c == '.') {
                result.appendCodePoint(c);
            } else {
                result.append('_').append(Integer.toHexString(c)).append('_');
            }
        });
        return result.toString();
    }
}
