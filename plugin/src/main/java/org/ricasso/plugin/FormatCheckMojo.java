package org.ricasso.plugin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.ricasso.dsl.diagnostics.Diagnostic;

/**
 * Fails the build if a text of the house is not laid out as {@code format} lays it out. Writes nothing.
 *
 * @since 0.1.0
 */
@Mojo(name = "format-check", defaultPhase = LifecyclePhase.VERIFY, threadSafe = true)
public final class FormatCheckMojo extends LayoutMojo {
    private static final String COMMAND = "mvn ricasso:format";

    @Override
    void proceed(List<LaidText> laid, List<Diagnostic> unreadable) throws MojoFailureException {
        List<Diagnostic> findings = new ArrayList<>(unreadable);
        laid.stream().map(text -> text.finding("lay it out with: " + COMMAND)).flatMap(Optional::stream).forEach(findings::add);
        findings.sort(Diagnostic.ORDER);
        print(findings);
        long refused = texts(unreadable);
        long otherwise = texts(findings) - refused;
        long read = laid.size() + refused;
        if (findings.isEmpty()) {
            getLog().info(Counts.number(read, "text") + " read, all laid out.");
        } else if (refused > 0) {
            throw new MojoFailureException(refused + " of " + Counts.number(read, "text") + " below " + shown(sources())
                    + " cannot be read" + (otherwise == 0 ? "" : " and " + otherwise + " not laid out")
                    + "; mend what cannot be read, then run: " + COMMAND);
        } else {
            throw new MojoFailureException(otherwise + " of " + Counts.number(read, "text") + " below " + shown(sources())
                    + (otherwise == 1 ? " is" : " are") + " not laid out; do it with: " + COMMAND);
        }
    }
}
