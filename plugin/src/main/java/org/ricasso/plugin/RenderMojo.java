package org.ricasso.plugin;

import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.SortedMap;
import javax.inject.Inject;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.project.MavenProjectHelper;
import org.ricasso.dsl.Ricasso;
import org.ricasso.plugin.publish.PublishedSet;
import org.ricasso.plugin.publish.ZippedSet;
import org.ricasso.plugin.report.ReportFile;
import org.ricasso.templates.page.PageException;
import org.ricasso.templates.page.PageRenderer;

/**
 * Checks the house as goal check does and, if it holds, renders the pages that the floor works from.
 *
 * <p>A new set of pages replaces the last one as a whole. If the house does not hold, the last set stays as it is.
 *
 * @since 0.1.0
 */
@Mojo(name = "render", defaultPhase = LifecyclePhase.PROCESS_CLASSES, threadSafe = true)
public final class RenderMojo extends CheckingMojo {

    /**
     * The folder of the pages; open {@code index.html} in it. It holds nothing but the set: a folder with other files
     * in it is refused. When only some products are chosen, the set holds only these.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.outputDirectory", defaultValue = "${project.build.directory}/instructions")
    private File outputDirectory;

    /**
     * What the house is called on its pages.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.title", defaultValue = "${project.name}")
    private String title;

    /**
     * Attaches the set to the project as a zip with the classifier {@code instructions}, so that it is installed and
     * deployed with it.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.attach", defaultValue = "true")
    private boolean attach;

    @Parameter(defaultValue = "${project.build.directory}/${project.build.finalName}-instructions.zip", readonly = true)
    private File zip;

    private final MavenProjectHelper projects;

    @Inject
    RenderMojo(MavenProjectHelper projects) {
        this.projects = projects;
    }

    @Override
    void prepare() throws MojoExecutionException {
        try {
            set().recover();
        } catch (IOException e) {
            throw new MojoExecutionException("What an interrupted run left beside " + shown(outputDirectory.toPath())
                    + " cannot be mended: " + e, e);
        }
    }

    @Override
    void proceed(Ricasso ricasso) throws MojoExecutionException {
        if (ricasso.checked().products().isEmpty()) {
            getLog().warn("Nothing was rendered: the house holds no product.");
            return;
        }
        SortedMap<String, byte[]> pages = render(ricasso);
        try {
            PublishedSet.Change change = set().replace(pages);
            getLog().info(Counts.number(pages.size(), "file") + " in " + shown(outputDirectory.toPath())
                    + (change == PublishedSet.Change.UNCHANGED ? ", unchanged" : "") + "; open index.html.");
            if (attach) {
                ReportFile.write(zip.toPath(), ZippedSet.of(pages));
                projects.attachArtifact(project(), "zip", "instructions", zip);
            }
        } catch (IOException e) {
            throw new MojoExecutionException("The pages cannot be published: " + e.getMessage(), e);
        }
    }

    private SortedMap<String, byte[]> render(Ricasso ricasso) throws MojoExecutionException {
        try {
            List<String> tags = languages().ofPages(ricasso.words());
            return new PageRenderer().render(ricasso.checked(), title, ricasso.words(), ricasso.house().vocabulary(), tags).files();
        } catch (PageException e) {
            throw new MojoExecutionException("A page cannot be rendered: " + e.getMessage(), e);
        }
    }

    @Override
    String done() {
        return "rendered";
    }

    @Override
    String untouched() {
        return ", so " + shown(outputDirectory.toPath()) + " was left as it was";
    }

    private PublishedSet set() {
        return new PublishedSet(outputDirectory.toPath());
    }
}
