package org.ricasso.plugin.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFileTest {
    @TempDir
    private Path target;

    @Test
    void replacesTheOldReportAndLeavesNothingBesideIt() throws IOException {
        Path file = target.resolve("ricasso/report.sarif");
        ReportFile.write(file, new byte[] {1});
        ReportFile.write(file, new byte[] {2});
        assertThat(file).hasBinaryContent(new byte[] {2});
        assertThat(file.getParent().toFile().list()).containsExactly("report.sarif");
    }

    @Test
    void equalContentKeepsItsTime() throws IOException {
        Path file = target.resolve("report.sarif");
        ReportFile.write(file, new byte[] {1});
        FileTime before = FileTime.fromMillis(1_000_000_000_000L);
        Files.setLastModifiedTime(file, before);
        ReportFile.write(file, new byte[] {1});
        assertThat(Files.getLastModifiedTime(file)).isEqualTo(before);
    }
}
