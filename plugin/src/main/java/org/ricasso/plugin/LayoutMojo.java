package org.ricasso.plugin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.PatternSyntaxException;
import java.util.stream.Collectors;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Parameter;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.format.Formatter;
import org.ricasso.dsl.source.SourceFile;

/** A goal that lays texts out. It reads them as they are, without any vocabulary. */
abstract class LayoutMojo extends HouseMojo {
    /**
     * Does nothing.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.skip", defaultValue = "false")
    private boolean skip;

    /**
     * Does nothing about the layout, while other goals go on.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.skipLayout", defaultValue = "false")
    private boolean skipLayout;

    /**
     * Patterns of the texts that are meant, such as {@code knives/*.ricasso} or <code>**&#47;cooks-*.ricasso</code>,
     * relative to {@code sourceDirectory}; all when empty. On the command line separated by commas.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.files")
    private List<String> files;

    /**
     * The most findings that are printed, a whole number from 0.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.maxProblems", defaultValue = "100")
    private int maxProblems;

    @Override
    public final void execute() throws MojoExecutionException, MojoFailureException {
        if (skip || skipLayout) {
            getLog().info("Skipped, as " + (skip ? "ricasso.skip" : "ricasso.skipLayout") + " says.");
            return;
        }
        if (maxProblems < 0) {
            throw new MojoExecutionException("ricasso.maxProblems is " + maxProblems + ", but must be 0 or more.");
        }
        SourceReader.Reading reading = read();
        List<SourceFile> meant = meant(reading.texts().files());
        if (meant.isEmpty()) {
            nothing(reading.count());
            return;
        }
        Set<String> notUtf8 = reading.diagnostics().stream().map(d -> d.primary().span().file().name())
                .collect(Collectors.toSet());
        List<LaidText> laid = new ArrayList<>();
        List<Diagnostic> unreadable = new ArrayList<>();
        for (SourceFile file : meant) {
            if (notUtf8.contains(file.name())) {
                reading.diagnostics().stream().filter(d -> d.primary().span().file().name().equals(file.name()))
                        .forEach(unreadable::add);
                continue;
            }
            LaidText text = lay(file);
            unreadable.addAll(text.result().diagnostics());
            if (text.result().diagnostics().isEmpty()) {
                laid.add(text);
            }
        }
        proceed(laid, unreadable);
    }

    private void nothing(int texts) throws MojoExecutionException {
        if (texts > 0) {
            throw new MojoExecutionException("No text below " + shown(sources()) + " has a name like " + String.join(", ", files)
                    + ", as ricasso.files says.");
        }
        getLog().warn("Nothing was laid out: there is no text below " + shown(sources()) + ".");
    }

    private List<SourceFile> meant(List<SourceFile> texts) throws MojoExecutionException {
        try {
            return new Patterns(files).chosen(texts, this::pathInSources);
        } catch (PatternSyntaxException e) {
            throw new MojoExecutionException("ricasso.files holds " + e.getPattern() + ", which is no pattern: "
                    + e.getDescription() + ".", e);
        }
    }

    private Path path(SourceFile file) {
        return module().resolve(file.name());
    }

    private Path pathInSources(SourceFile file) {
        return sources().toAbsolutePath().normalize().relativize(path(file).toAbsolutePath().normalize());
    }

    private LaidText lay(SourceFile file) throws MojoExecutionException {
        try {
            return new LaidText(path(file), file, Files.readAllBytes(path(file)), Formatter.format(file));
        } catch (IOException e) {
            throw new MojoExecutionException("The text " + file.name() + " cannot be read: " + e, e);
        } catch (IllegalStateException e) {
            throw new MojoExecutionException("The text " + file.name() + " stays as it is, by a fault of the formatter: "
                    + e.getMessage() + ".", e);
        }
    }

    /**
     * What is done.
     *
     * @param laid the texts that can be read, laid out or not
     * @param unreadable what stands against the others
     */
    abstract void proceed(List<LaidText> laid, List<Diagnostic> unreadable)
            throws MojoExecutionException, MojoFailureException;

    final void print(List<Diagnostic> findings) {
        Console console = new Console(getLog());
        findings.stream().limit(maxProblems).forEach(console::print);
        if (findings.size() > maxProblems) {
            getLog().info(Counts.number(findings.size() - maxProblems, "further finding") + " not shown, as ricasso.maxProblems says.");
        }
    }

    /** How many texts findings speak of. */
    static long texts(List<Diagnostic> findings) {
        return findings.stream().map(d -> d.primary().span().file().name()).distinct().count();
    }
}
