package org.ricasso.shared;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The texts that come on the class path: vocabulary, operations, materials, rules and their tables. Each jar that
 * brings texts lists them in its resource {@code ricasso/index.txt}, one path below {@code ricasso/} a line.
 */
public final class Shipped {
    private static final String FOLDER = "ricasso/";
    private static final String INDEX = FOLDER + "index.txt";

    private Shipped() {}

    /** The texts on the class path of this class. */
    public static SortedMap<String, String> texts() {
        return texts(Shipped.class.getClassLoader());
    }

    /**
     * All texts that a class loader sees: ours by name such as {@code ricasso/vocabulary/units.ricasso}, those of another
     * library with its name before, such as {@code our-vocabulary-1.2/ricasso/steels.ricasso}. Ours come first.
     *
     * @throws IllegalStateException if an index names a text that is missing, or two libraries of one name bring it
     * @throws UncheckedIOException if a text cannot be read
     */
    public static SortedMap<String, String> texts(ClassLoader loader) {
        URL ours = Shipped.class.getClassLoader().getResource(INDEX);
        // ours sort before a library's, whatever its name
        SortedMap<String, String> texts = new TreeMap<>(Comparator.comparing((String n) -> !n.startsWith(FOLDER))
                .thenComparing(Comparator.naturalOrder()));
        try {
            for (URL index : Collections.list(loader.getResources(INDEX))) {
                String before = index.equals(ours) ? "" : library(index) + "/";
                for (String path : paths(index)) {
                    // beside its own index, so that one jar cannot hide another's text
                    String text = read(new URL(index, path), path);
                    if (texts.putIfAbsent(before + FOLDER + path, text) != null) {
                        throw new IllegalStateException("two libraries bring " + before + FOLDER + path);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Collections.unmodifiableSortedMap(texts);
    }

    /** The library's name from the address of its index: its jar without the ending, or the folder it was built in. */
    private static String library(URL index) {
        String address = index.toString();
        String holder = address.substring(0, address.length() - INDEX.length() - 1);
        if (holder.endsWith("!")) {
            holder = holder.substring(0, holder.length() - 1);
        }
        String name = holder.substring(holder.lastIndexOf('/') + 1);
        return name.endsWith(".jar") ? name.substring(0, name.length() - 4) : "library";
    }

    private static List<String> paths(URL index) throws IOException {
        return read(index, INDEX).lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    private static String read(URL url, String path) throws IOException {
        try (InputStream in = url.openStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (java.io.FileNotFoundException e) {
            throw new IllegalStateException("the index names " + path + ", which is not there", e);
        }
    }
}
