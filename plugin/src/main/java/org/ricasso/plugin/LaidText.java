package org.ricasso.plugin;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;
import java.util.Optional;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.format.Formatted;
import org.ricasso.dsl.format.LayoutFinding;
import org.ricasso.dsl.source.SourceFile;

/**
 * A text and its layout.
 *
 * @param path where it stands
 * @param file the text
 * @param bytes the file's bytes, which may have a byte order mark before the text
 * @param result the layout
 */
record LaidText(Path path, SourceFile file, byte[] bytes, Formatted result) {

    private byte[] laidBytes() {
        return result.text().getBytes(StandardCharsets.UTF_8);
    }

    boolean differs() {
        return !Arrays.equals(bytes, laidBytes());
    }

    /** Where it first differs. */
    Optional<Diagnostic> finding(String remedy) {
        return differs() ? LayoutFinding.of(file, result, remedy).or(() -> Optional.of(LayoutFinding.byteOrderMark(file, remedy)))
                : Optional.empty();
    }

    /**
     * Puts the layout in the file's place. A reader finds the old text or the new one; who may read it stays as it was.
     *
     * @throws IOException if it cannot be written; the file is as it was
     */
    void write() throws IOException {
        Path real = path.toRealPath();
        if (!Files.isWritable(real)) {
            throw new java.nio.file.AccessDeniedException(real.toString(), null, "it is write-protected");
        }
        Path next = real.resolveSibling(real.getFileName() + ".next");
        try {
            Files.write(next, laidBytes());
            PosixFileAttributeView old = Files.getFileAttributeView(real, PosixFileAttributeView.class);
            if (old != null) {
                Files.setPosixFilePermissions(next, old.readAttributes().permissions());
            }
            Files.move(next, real, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(next);
        }
    }
}
