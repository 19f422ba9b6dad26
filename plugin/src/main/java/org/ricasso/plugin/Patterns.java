package org.ricasso.plugin;

import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ricasso.dsl.source.SourceFile;

/**
 * Patterns of files' names, as {@link java.nio.file.FileSystem#getPathMatcher} reads globs; a leading <code>**&#47;</code>
 * also stands for no folder at all.
 *
 * @param globs the patterns; none, or {@code null}, for all files
 */
record Patterns(List<String> globs) {
    private static final String ANY_FOLDER = "**/";

    /** The files that one of the patterns fits, in their order. */
    List<SourceFile> chosen(List<SourceFile> files, Function<SourceFile, Path> path) {
        if (globs == null || globs.isEmpty()) {
            return files;
        }
        List<PathMatcher> matchers = globs.stream().map(String::strip).flatMap(Patterns::written)
                .map(g -> FileSystems.getDefault().getPathMatcher("glob:" + g)).toList();
        return files.stream().filter(f -> matchers.stream().anyMatch(m -> m.matches(path.apply(f)))).toList();
    }

    private static Stream<String> written(String glob) {
        return glob.startsWith(ANY_FOLDER) ? Stream.of(glob, glob.substring(ANY_FOLDER.length())) : Stream.of(glob);
    }
}
