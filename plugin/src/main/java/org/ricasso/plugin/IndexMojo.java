package org.ricasso.plugin;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.ricasso.plugin.report.ReportFile;

/**
 * Lists the texts of a library in its {@code ricasso/index.txt}, so that they are found when the jar is given to the
 * plugin: a jar cannot be listed by itself.
 *
 * @since 0.1.0
 */
@Mojo(name = "index", defaultPhase = LifecyclePhase.PROCESS_CLASSES, threadSafe = true)
public final class IndexMojo extends AbstractMojo {
    private static final String INDEX = "index.txt";

    /**
     * The folder of the texts in what is packed into the jar. All files below it that end in {@code .ricasso} or
     * {@code .csv} are listed; files and folders whose names begin with a dot are not.
     *
     * @since 0.1.0
     */
    @Parameter(defaultValue = "${project.build.outputDirectory}/ricasso", readonly = true)
    private File texts;

    @Override
    public void execute() throws MojoExecutionException {
        Path folder = texts.toPath();
        try {
            List<String> names = Files.isDirectory(folder) ? names(folder) : List.of();
            if (names.isEmpty()) {
                getLog().warn("The library has no texts: they stand below src/main/resources/ricasso.");
                return;
            }
            ReportFile.write(folder.resolve(INDEX), (String.join("\n", names) + "\n").getBytes(StandardCharsets.UTF_8));
            getLog().info(Counts.number(names.size(), "text") + " in the index of the library.");
        } catch (IOException e) {
            throw new MojoExecutionException("The index of the library cannot be written: " + e, e);
        }
    }

    /** By name, in one order on every machine. */
    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace(File.separatorChar, '/'))
                    .filter(name -> name.endsWith(".ricasso") || name.endsWith(".csv"))
                    .filter(name -> Stream.of(name.split("/")).noneMatch(part -> part.startsWith(".")))
                    .sorted().toList();
        }
    }
}
