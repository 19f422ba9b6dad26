package org.ricasso.plugin.report;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The directory that the addresses in a report are relative to: the root of the repository. */
public final class SourceRoot {
    private static final List<String> SIGNS = List.of(".git", ".mvn");

    private SourceRoot() {}

    /**
     * The nearest directory at or above the module that holds {@code .git}; else the nearest that holds {@code .mvn};
     * else the module itself. Nothing is asked of git: only the names are looked at.
     */
    public static Path of(Path module) {
        Path start = module.toAbsolutePath().normalize();
        for (String sign : SIGNS) {
            for (Path at = start; at != null; at = at.getParent()) {
                if (Files.exists(at.resolve(sign))) {
                    return at;
                }
            }
        }
        return start;
    }
}
