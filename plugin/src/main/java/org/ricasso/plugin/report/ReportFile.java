package org.ricasso.plugin.report;

import java.io.IOException;
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
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        Path written = Files.write(folder.resolve(file.getFileName() + ".next"), content);
        Files.move(written, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }
}
