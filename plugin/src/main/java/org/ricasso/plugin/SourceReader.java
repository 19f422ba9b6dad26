package org.ricasso.plugin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.source.SourceFile;

/**
 * The texts and tables below a directory.
 *
 * <p>Everything that ends in {@code .ricasso} or {@code .csv} is read, in the order of its name, whatever order the
 * file system has; beside them the lock, if the directory itself holds one. Files and folders whose names begin with a dot are passed over: editors and version control keep
 * their own things there.
 */
final class SourceReader {
    private static final String TEXT = ".ricasso";
    private static final String TABLE = ".csv";

    private final Path base;

    /** @param base the directory that names are relative to */
    SourceReader(Path base) {
        this.base = base.toAbsolutePath().normalize();
    }

    /**
     * What was read.
     *
     * @param texts the texts; those with bytes that are not UTF-8 hold U+FFFD in their place
     * @param diagnostics one for each text that is not UTF-8
     */
    record Reading(Texts texts, List<Diagnostic> diagnostics) {
        /** The number of texts in the language, tables not counted. */
        int count() {
            return texts.files().size();
        }
    }

    /**
     * Reads the texts below a directory; none if it does not exist.
     *
     * @throws IOException if a file cannot be read; its message names the file
     */
    Reading read(Path directory) throws IOException {
        List<SourceFile> texts = new ArrayList<>();
        Map<String, SourceFile> tables = new TreeMap<>();
        List<Diagnostic> diagnostics = new ArrayList<>();
        SourceFile lock = null;
        for (Path path : paths(directory.toAbsolutePath().normalize())) {
            DecodedFile decoded = DecodedFile.of(name(path), Files.readAllBytes(path));
            decoded.diagnostic().ifPresent(diagnostics::add);
            SourceFile file = decoded.file();
            if (file.name().endsWith(TEXT)) {
                texts.add(file);
            } else if (path.getFileName().toString().equals(Lock.NAME)) {
                lock = file;
            } else {
                tables.put(file.name(), file);
            }
        }
        return new Reading(new Texts(texts, tables, lock), List.copyOf(diagnostics));
    }

    private List<Path> paths(Path directory) throws IOException {
        if (!Files.isDirectory(directory)) {
            return List.of();
        }
        try (Stream<Path> walk = Files.walk(directory)) {
            return walk.filter(path -> !hidden(directory.relativize(path)))
                    .filter(path -> path.toString().endsWith(TEXT) || path.toString().endsWith(TABLE)
                            || path.equals(directory.resolve(Lock.NAME)))
                    .filter(Files::isRegularFile)
                    .sorted(Comparator.comparing(this::name))
                    .toList();
        } catch (java.io.UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static boolean hidden(Path relative) {
        for (Path part : relative) {
            if (part.toString().startsWith(".")) {
                return true;
            }
        }
        return false;
    }

    /** The name shown to people and put into reports: relative, with forward slashes on every machine. */
    private String name(Path path) {
        Path shown = path.getRoot() != null && path.getRoot().equals(base.getRoot()) ? base.relativize(path) : path;
        return shown.toString().replace(path.getFileSystem().getSeparator(), "/");
    }
}
