package org.ricasso.shared;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLConnection;
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
     * @throws LibraryException if an index names a text that is missing, or two libraries of one name bring it
     * @throws UncheckedIOException if a text cannot be read
     */
    public static SortedMap<String, String> texts(ClassLoader loader) {
        // ours sort before a library's, whatever its name
        SortedMap<String, String> texts = new TreeMap<>(Comparator.comparing((String n) -> !n.startsWith(FOLDER))
                .thenComparing(Comparator.naturalOrder()));
        try {
            for (URL index : Collections.list(loader.getResources(INDEX))) {
                String before = Library.isOurs(index, INDEX) ? "" : Library.holding(index, INDEX) + "/";
                for (String path : paths(index)) {
                    // beside its own index, so that one jar cannot hide another's text
                    String text = text(index, path);
                    if (texts.putIfAbsent(before + FOLDER + path, text) != null) {
                        throw new LibraryException("two libraries are named " + before.substring(0, before.length() - 1)
                                + ", and both bring " + FOLDER + path + ": give one of them another name, or list it once");
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Collections.unmodifiableSortedMap(texts);
    }

    private static List<String> paths(URL index) throws IOException {
        return read(index).lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    private static String text(URL index, String path) throws IOException {
        try {
            return read(new URL(index, path));
        } catch (java.io.FileNotFoundException e) {
            throw new LibraryException("the index of " + Library.holding(index, INDEX) + " names " + path
                    + ", which is not there: build the library anew, or take the line out of " + INDEX, e);
        }
    }

    private static String read(URL url) throws IOException {
        URLConnection connection = url.openConnection();
        // a jar may be built anew while the process lives
        connection.setUseCaches(false);
        try (InputStream in = connection.getInputStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
