package org.ricasso.plugin;

import java.io.File;
import java.io.IOException;
import java.util.Set;
import java.util.SortedMap;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.house.Texts;
import org.ricasso.plugin.publish.PublishedSet;
import org.ricasso.templates.reference.ReferenceRenderer;

/**
 * Renders the reference: the language, all kinds, operations, rules, tables, calculations and units that the texts declare,
 * shipped ones and the works' own, and all findings with examples. A house that does not hold has none.
 *
 * @since 0.1.0
 */
@Mojo(name = "reference", defaultPhase = LifecyclePhase.PROCESS_CLASSES, threadSafe = true)
public final class ReferenceMojo extends HouseMojo {

    /**
     * The folder of the reference; open {@code index.html} in it. It holds nothing else.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.referenceDirectory", defaultValue = "${project.build.directory}/reference")
    private File referenceDirectory;

    /**
     * What the house is called on the pages.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.title", defaultValue = "${project.name}")
    private String title;

    /**
     * Do nothing.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.skip", defaultValue = "false")
    private boolean skip;

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        if (skip) {
            getLog().info("Skipped.");
            return;
        }
        SourceReader.Reading reading = read();
        if (!reading.diagnostics().isEmpty()) {
            throw new MojoFailureException("A text is not UTF-8, so there is no reference; mvn ricasso:check says where.");
        }
        Ricasso ricasso = load(reading.texts(), Set.of());
        if (!ricasso.checked().holds()) {
            throw new MojoFailureException("The house does not hold, so there is no reference; mvn ricasso:check says why.");
        }
        Texts texts = Ricasso.withShipped(reading.texts(), getClass().getClassLoader());
        SortedMap<String, byte[]> pages = ReferenceRenderer.render(ricasso.house(), texts, title).files();
        PublishedSet set = new PublishedSet(referenceDirectory.toPath());
        try {
            set.recover();
            PublishedSet.Change change = set.replace(pages);
            getLog().info(Counts.number(pages.size(), "file") + " in " + shown(referenceDirectory.toPath())
                    + (change == PublishedSet.Change.UNCHANGED ? ", unchanged" : "") + "; open index.html.");
        } catch (IOException e) {
            throw new MojoExecutionException("The reference cannot be published: " + e.getMessage(), e);
        }
    }
}
