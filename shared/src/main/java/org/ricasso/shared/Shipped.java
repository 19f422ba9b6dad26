package org.ricasso.shared;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
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
     * All texts that a class loader sees, by name such as {@code ricasso/vocabulary/units.ricasso}.
     *
     * @throws IllegalStateException if an index names a text that is missing, or two jars bring one name
     * @throws UncheckedIOException if a text cannot be read
     */
    public static SortedMap<String, String> texts(ClassLoader loader) {
        SortedMap<String, String> texts = new TreeMap<>();
        try {
            for (URL index : Collections.list(loader.getResources(INDEX))) {
                for (String path : paths(index)) {
                    // beside its own index, so that one jar cannot hide another's text
                    String text = read(new URL(index, path), path);
                    if (texts.putIfAbsent(FOLDER + path, text) != null) {
                        throw new IllegalStateException("two libraries bring " + FOLDER + path);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Collections.unmodifiableSortedMap(texts);
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
