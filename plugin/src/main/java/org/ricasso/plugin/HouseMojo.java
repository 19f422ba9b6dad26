package org.ricasso.plugin;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Function;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.project.MavenProject;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.house.Texts;
import org.ricasso.shared.LibraryException;

/** What all goals share: where the house's texts stand, and how they are read. */
abstract class HouseMojo extends AbstractMojo {
    @Parameter(defaultValue = "${project}", readonly = true, required = true)
    private MavenProject project;

    /**
     * The folder of the house's texts. All files below it that end in {@code .ricasso} or {@code .csv} are read, as
     * UTF-8; files and folders whose names begin with a dot are not.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.sourceDirectory", defaultValue = "${project.basedir}/src/main/ricasso")
    private File sourceDirectory;

    /** Whether there is a project here, so that its own texts are meant. */
    final boolean hasProject() {
        return project.getFile() != null;
    }

    /** The module's directory; source files are named relative to it. */
    final MavenProject project() {
        return project;
    }

    final Path module() {
        return project.getBasedir().toPath();
    }

    final Path sources() {
        return sourceDirectory.toPath();
    }

    /** A path as people read it: relative to the module where it lies inside. */
    final String shown(Path path) {
        Path absolute = path.toAbsolutePath().normalize();
        Path base = module().toAbsolutePath().normalize();
        Path shown = absolute.startsWith(base) ? base.relativize(absolute) : absolute;
        return shown.toString().replace(File.separatorChar, '/');
    }

    /** Reads the project's texts; outside a project there are none. */
    final SourceReader.Reading read() throws MojoExecutionException {
        if (!hasProject()) {
            return new SourceReader.Reading(new Texts(List.of(), Map.of()), List.of());
        }
        try {
            return new SourceReader(module()).read(sources());
        } catch (IOException e) {
            throw new MojoExecutionException("A text below " + shown(sources()) + " cannot be read: " + e, e);
        }
    }

    /** Loads the house; vocabulary and calculations come from the plugin and from its dependencies in the project's pom. */
    final Ricasso load(Texts texts, Set<String> only) throws MojoExecutionException {
        return load(texts, only, Set.of());
    }

    /** @param whole languages in which each printed text must have words */
    final Ricasso load(Texts texts, Set<String> only, Set<String> whole) throws MojoExecutionException {
        return withLibraries(loader ->
                Ricasso.check(Ricasso.withShipped(texts, loader), Ricasso.calculations(loader), only, whole));
    }

    /** What has no words in a language, as texts to fill in. */
    final SortedMap<String, String> sheets(Texts texts, String language) throws MojoExecutionException {
        return withLibraries(loader ->
                Ricasso.wordsToWrite(Ricasso.withShipped(texts, loader), Ricasso.calculations(loader), language));
    }

    private <T> T withLibraries(Function<ClassLoader, T> reading) throws MojoExecutionException {
        try {
            return reading.apply(getClass().getClassLoader());
        } catch (LibraryException e) {
            throw new MojoExecutionException("The libraries that the plugin is given cannot be used: " + e.getMessage());
        }
    }
}
