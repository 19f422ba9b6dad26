package org.ricasso.plugin;

import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.ricasso.dsl.Ricasso;

/**
 * Checks that every knife can be made as its route says, prints what stands against it, and fails the build on errors.
 *
 * <p>All findings go to {@code report.sarif} as well. Nothing else is written, and no text is changed.
 *
 * @since 0.1.0
 */
@Mojo(name = "check", defaultPhase = LifecyclePhase.PROCESS_CLASSES, threadSafe = true)
public final class CheckMojo extends CheckingMojo {
    @Override
    void proceed(Ricasso ricasso) {
        getLog().debug("The house holds.");
    }

    @Override
    String done() {
        return "checked";
    }

    @Override
    String untouched() {
        return "";
    }
}
