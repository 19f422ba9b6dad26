package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Texts that are compared with files; with {@code -Dricasso.golden=write} the files are written anew and the test fails. */
public final class Golden {
    private static final Path FOLDER = Path.of("src", "test", "resources", "org", "ricasso", "dsl", "trial");

    private Golden() {}

    public static void check(String name, String text) {
        Path file = FOLDER.resolve(name);
        try {
            if ("write".equals(System.getProperty("ricasso.golden"))) {
                Files.createDirectories(file.getParent());
                Files.writeString(file, text, StandardCharsets.UTF_8);
                fail("written anew, look at what changed: " + file);
            }
            assertThat(text).as("as in %s; if the change is meant, write it anew with -Dricasso.golden=write", file)
                    .isEqualTo(Files.readString(file, StandardCharsets.UTF_8).replace("\r\n", "\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
