package org.ricasso.plugin.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceRootTest {
    @TempDir
    private Path repository;

    @Test
    void isWhereVersionControlIs() throws IOException {
        Files.createDirectories(repository.resolve(".git"));
        Files.createDirectories(repository.resolve("a/.mvn"));
        Path module = Files.createDirectories(repository.resolve("a/b"));
        assertThat(SourceRoot.of(module)).isEqualTo(repository.toAbsolutePath().normalize());
    }

    @Test
    void inALinkedWorkingTreeTheSignIsAFile() throws IOException {
        Files.createDirectories(repository.resolve(".git"));
        Path module = Files.createDirectories(repository.resolve("tree/specs"));
        Files.writeString(repository.resolve("tree/.git"), "gitdir: elsewhere");
        assertThat(SourceRoot.of(module)).isEqualTo(repository.resolve("tree").toAbsolutePath().normalize());
    }

    @Test
    void withoutVersionControlItIsTheRootOfTheBuild() throws IOException {
        Files.createDirectories(repository.resolve(".mvn"));
        Path module = Files.createDirectories(repository.resolve("specs"));
        assertThat(SourceRoot.of(module)).isEqualTo(repository.toAbsolutePath().normalize());
    }
}
