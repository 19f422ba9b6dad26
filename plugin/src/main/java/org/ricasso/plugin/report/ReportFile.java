package org.ricasso.plugin.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;

/** Writes a report so that a reader finds the old one or the new one, and the time changes only with the content. */
public final class ReportFile {
    private ReportFile() {}

    /** @throws IOException if it cannot be written */
    public static void write(Path file, byte[] content) throws IOException {
        if (Files.isRegularFile(file) && Arrays.equals(Files.readAllBytes(file), content)) {
            return;
        }
        write(file, out -> out.write(content));
    }

    /** Writes what a report is made of, piece by piece. */
    @FunctionalInterface
    public interface Content {
        /** @throws IOException if it cannot be written */
        void write(OutputStream out) throws IOException;
    }

    /**
     * Writes a report that is too large to be held as a whole.
     *
     * @throws IOException if it cannot be written; the old report then stands as before
     */
    public static void write(Path file, Content content) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        Path next = folder.resolve(file.getFileName() + ".next");
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(next), 1 << 16)) {
                content.write(out);
            }
            if (!Files.isRegularFile(file) || Files.mismatch(next, file) >= 0) {
                Files.move(next, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            Files.deleteIfExists(next);
        }
    }
}
