package org.ricasso.plugin;

import java.io.IOException;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.ricasso.dsl.diagnostics.Diagnostic;

/**
 * Lays the house's texts out, in the only way there is, and writes those that were laid out otherwise.
 *
 * <p>What a text says never changes, comments stay. A text that cannot be read stays as it is, and the build fails.
 *
 * @since 0.1.0
 */
@Mojo(name = "format", threadSafe = true)
public final class FormatMojo extends LayoutMojo {
    @Override
    void proceed(List<LaidText> laid, List<Diagnostic> unreadable) throws MojoExecutionException, MojoFailureException {
        int written = 0;
        for (LaidText text : laid) {
            if (text.differs()) {
                try {
                    text.write();
                } catch (IOException e) {
                    throw new MojoExecutionException("The text " + text.file().name() + " cannot be written: " + e, e);
                }
                getLog().info("Laid out " + text.file().name() + ".");
                written++;
            }
        }
        print(unreadable);
        long refused = texts(unreadable);
        getLog().info(Counts.number(laid.size() + refused, "text") + " read, " + written + " laid out anew.");
        if (refused > 0) {
            throw new MojoFailureException(Counts.number(refused, "text") + " below " + shown(sources())
                    + " cannot be read and " + (refused == 1 ? "stays as it is" : "stay as they are") + ", with "
                    + Counts.of(unreadable).words() + "; mend " + (unreadable.size() == 1 ? "it" : "them")
                    + " and run again: mvn ricasso:format");
        }
    }
}
