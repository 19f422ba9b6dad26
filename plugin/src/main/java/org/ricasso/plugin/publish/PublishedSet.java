package org.ricasso.plugin.publish;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A directory of pages that is replaced as a whole or not at all.
 *
 * <p>The new set is written beside the old one. Only when it is complete is the old set renamed to
 * {@code <name>.previous}, the new one renamed to {@code <name>}, and the old one deleted. Whoever stops the program
 * leaves the old set or the new one, whole; between the two renames, for a moment, there is none under its name, and
 * the next run puts the old one back ({@link #recover()}). Against a loss of power the order of writing is left to the
 * file system.
 *
 * <p>A set carries the list of its files with their digests ({@value Checksums#NAME}). A directory without that list
 * was made by somebody else and is not touched.
 */
public final class PublishedSet {
    private final Path directory;
    private final Path next;
    private final Path previous;
    private final Rename rename;

    /** Renames a directory; a test puts in one that stops half-way. */
    @FunctionalInterface
    interface Rename {
        void move(Path from, Path to) throws IOException;
    }

    /** What became of the old set. */
    public enum Change {
        /** The set was already there, byte by byte; nothing was written. */
        UNCHANGED,
        /** The new set stands where the old one, or nothing, stood. */
        REPLACED
    }

    public PublishedSet(Path directory) {
        this(directory, (from, to) -> Files.move(from, to, StandardCopyOption.ATOMIC_MOVE));
    }

    PublishedSet(Path directory, Rename rename) {
        this.directory = directory.toAbsolutePath().normalize();
        this.next = this.directory.resolveSibling(this.directory.getFileName() + ".next");
        this.previous = this.directory.resolveSibling(this.directory.getFileName() + ".previous");
        this.rename = rename;
    }

    /** Mends what an interrupted run left: puts the old set back if none stands, and clears away the rest. */
    public void recover() throws IOException {
        if (exists(previous) && !exists(directory)) {
            rename.move(previous, directory);
        }
        delete(previous);
        delete(next);
    }

    /**
     * Replaces the set.
     *
     * @param pages the files by their path below the directory, with forward slashes
     * @throws ForeignDirectoryException if something else stands there
     * @throws IOException if the set cannot be written; the old one then stands as before
     */
    public Change replace(SortedMap<String, byte[]> pages) throws IOException {
        PagePaths.requireApart(pages.keySet());
        recover();
        refuseForeign();
        SortedMap<String, byte[]> files = new TreeMap<>(pages);
        files.put(Checksums.NAME, Checksums.of(pages));
        if (stands(files)) {
            return Change.UNCHANGED;
        }
        try {
            write(files);
        } catch (IOException e) {
            delete(next);
            throw e;
        }
        swap();
        clear(previous);
        return Change.REPLACED;
    }

    /** The new set stands already: what cannot be cleared away now, because a reader has it open, the next run clears. */
    private static void clear(Path old) {
        try {
            delete(old);
        } catch (IOException e) {
            return;
        }
    }

    private void refuseForeign() throws IOException {
        if (!exists(directory)) {
            return;
        }
        if (!Files.isDirectory(directory)) {
            throw new ForeignDirectoryException(directory);
        }
        try (Stream<Path> entries = Files.list(directory)) {
            if (entries.findAny().isPresent() && !Files.isRegularFile(directory.resolve(Checksums.NAME))) {
                throw new ForeignDirectoryException(directory);
            }
        }
    }

    private boolean stands(SortedMap<String, byte[]> files) throws IOException {
        if (!Files.isDirectory(directory)) {
            return false;
        }
        try (Stream<Path> walk = Files.walk(directory)) {
            if (walk.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)).count() != files.size()) {
                return false;
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = directory.resolve(file.getKey());
            if (!Files.isRegularFile(path) || Files.size(path) != file.getValue().length
                    || !Arrays.equals(Files.readAllBytes(path), file.getValue())) {
                return false;
            }
        }
        return true;
    }

    private void write(SortedMap<String, byte[]> files) throws IOException {
        Files.createDirectories(next);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = PagePaths.below(next, file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
        }
    }

    private void swap() throws IOException {
        if (!exists(directory)) {
            rename.move(next, directory);
            return;
        }
        rename.move(directory, previous);
        try {
            rename.move(next, directory);
        } catch (IOException e) {
            rename.move(previous, directory);
            delete(next);
            throw e;
        }
    }

    private static boolean exists(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }

    private static void delete(Path tree) throws IOException {
        if (!exists(tree)) {
            return;
        }
        Files.walkFileTree(tree, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path folder, IOException failure) throws IOException {
                if (failure != null) {
                    throw failure;
                }
                try {
                    Files.delete(folder);
                } catch (DirectoryNotEmptyException e) {
                    throw new IOException(folder + " was written to while it was being cleared", e);
                }
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
