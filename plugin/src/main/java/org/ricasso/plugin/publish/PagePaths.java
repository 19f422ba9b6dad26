package org.ricasso.plugin.publish;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Where a page goes: below the set's directory and nowhere else. */
final class PagePaths {
    private PagePaths() {}

    /** @throws IOException if two names differ in capitals alone: some file systems would keep only one of them */
    static void requireApart(Collection<String> names) throws IOException {
        Map<String, String> seen = new HashMap<>();
        for (String name : names) {
            String other = seen.put(name.toLowerCase(Locale.ROOT), name);
            if (other != null) {
                throw new IOException("the pages " + other + " and " + name + " differ in capitals alone");
            }
        }
    }

    /** @throws IOException if the name leads out of the directory or is none */
    static Path below(Path directory, String name) throws IOException {
        try {
            Path path = directory.resolve(name).normalize();
            if (!path.startsWith(directory) || path.equals(directory)) {
                throw new IOException("a page may not be written to " + name + ", outside its set");
            }
            return path;
        } catch (InvalidPathException e) {
            throw new IOException("this file system cannot hold a page named " + name, e);
        }
    }
}
