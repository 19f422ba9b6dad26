package org.ricasso.dsl.syntax;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ricasso.dsl.source.SourceFile;

/** The texts that tests read. Tests run in the module's folder. */
final class Samples {
    static final Path RESOURCES = Path.of("src", "test", "resources", "org", "ricasso", "dsl", "syntax");

    private Samples() {}

    /** The sample texts of this package. */
    static List<SourceFile> samples() {
        return files(RESOURCES.resolve("samples"));
    }

    /** All texts of the repository that are meant to be good: the samples, the shipped ones, the demonstration house. */
    static List<SourceFile> repository() {
        List<SourceFile> result = new ArrayList<>(samples());
        for (String module : List.of("shared", "specs")) {
            result.addAll(files(Path.of("..", module, "src", "main")));
        }
        return result;
    }

    /** The demonstration house. */
    static List<SourceFile> house() {
        return files(Path.of("..", "specs", "src", "main", "ricasso"));
    }

    private static List<SourceFile> files(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(p -> p.toString().endsWith(".ricasso")).sorted().map(Samples::read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static SourceFile read(Path path) {
        try {
            String text = Files.readString(path);
            return new SourceFile(path.getFileName().toString(), text, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
