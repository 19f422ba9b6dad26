package org.ricasso.plugin.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.source.SourceFile;

/** The demonstration house, its texts changed, with the shipped texts. */
public final class TestHouse {
    private static final Path HOUSE = Path.of("..", "specs", "src", "main", "ricasso");

    private TestHouse() {}

    /** The house's own texts, named as below its folder. */
    public static List<SourceFile> files() throws IOException {
        List<SourceFile> files = new ArrayList<>();
        try (Stream<Path> walk = Files.walk(HOUSE)) {
            for (Path path : walk.filter(p -> p.toString().endsWith(".ricasso")).sorted().toList()) {
                files.add(new SourceFile(HOUSE.relativize(path).toString().replace('\\', '/'), Files.readString(path), false));
            }
        }
        return files;
    }

    /** All texts, those of the house changed. */
    public static Texts texts(UnaryOperator<String> change) throws IOException {
        return texts(files().stream().map(f -> new SourceFile(f.name(), change.apply(f.text()), false)).toList());
    }

    static Texts texts(List<SourceFile> files) {
        return Ricasso.withShipped(new Texts(files, Map.of(), lock()));
    }

    /** What the house's settings were solved to. */
    static SourceFile lock() {
        try {
            return new SourceFile(Lock.NAME, Files.readString(HOUSE.resolve(Lock.NAME)), false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The house, checked. */
    public static Ricasso checked(Texts texts) {
        return Ricasso.check(texts, Ricasso.calculations(TestHouse.class.getClassLoader()), Set.of());
    }
}
