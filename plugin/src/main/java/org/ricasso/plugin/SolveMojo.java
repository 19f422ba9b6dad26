package org.ricasso.plugin;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.solve.LockEntry;
import org.ricasso.dsl.walk.Solved;
import org.ricasso.plugin.report.ReportFile;

/**
 * Solves for the settings that the texts leave open with {@code solve(…)}, and writes what it finds into the lock
 * {@code solved.lock} in the folder of the texts, which belongs into version control.
 *
 * <p>Nothing else is written. A setting that cannot be solved for keeps its line in the lock, and the build fails.
 *
 * @since 0.1.0
 */
@Mojo(name = "solve", threadSafe = true)
public final class SolveMojo extends HouseMojo {
    /**
     * Does nothing.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.skip", defaultValue = "false")
    private boolean skip;

    /**
     * Names or numbers of the products to solve for, such as {@code AB-2120}; all when empty. On the command line separated
     * by commas. The lines of the others stay as they are.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.products")
    private List<String> products;

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        if (skip) {
            getLog().info("Skipped, as ricasso.skip says.");
            return;
        }
        SourceReader.Reading reading = read();
        if (reading.count() == 0) {
            getLog().warn("Nothing was solved: there is no text below " + shown(sources()) + ".");
            return;
        }
        Console console = new Console(getLog());
        if (!reading.diagnostics().isEmpty()) {
            reading.diagnostics().forEach(console::print);
            throw new MojoFailureException("Nothing was solved, and " + shown(lock()) + " stays as it is: the texts below "
                    + shown(sources()) + " have " + Counts.of(reading.diagnostics()).words() + "; mend and solve again");
        }
        Set<String> only = Chosen.of(products);
        ClassLoader loader = getClass().getClassLoader();
        Solved solved = Ricasso.solve(Ricasso.withShipped(reading.texts(), loader), Ricasso.calculations(loader), only);
        if (!solved.unknown().isEmpty()) {
            throw new MojoFailureException("No product of the house has the name or number "
                    + String.join(" or ", solved.unknown()));
        }
        if (solved.isWritable()) {
            write(solved);
            say(solved);
        }
        solved.findings().forEach(console::print);
        if (!solved.isWritable()) {
            solved.lost().forEach(console::print);
            throw new MojoFailureException(shown(lock()) + " has " + Counts.number(solved.lost().size(), "line")
                    + " that cannot be read and may be what cannot be solved now, so it stays as it is. Mend either and solve again");
        }
        if (!solved.findings().isEmpty() || !solved.open().isEmpty()) {
            throw new MojoFailureException(refusal(solved));
        }
    }

    private Path lock() {
        return sources().resolve(Lock.NAME);
    }

    private void write(Solved solved) throws MojoExecutionException {
        try {
            if (!solved.text().isEmpty()) {
                ReportFile.write(lock(), solved.text().getBytes(StandardCharsets.UTF_8));
            } else {
                Files.deleteIfExists(lock());
            }
        } catch (IOException e) {
            throw new MojoExecutionException("The lock " + shown(lock()) + " cannot be written: " + e, e);
        }
    }

    private void say(Solved solved) {
        for (Diagnostic line : solved.lost()) {
            getLog().warn("Left out line " + line.primary().span().line() + ": " + line.primary().text() + ".");
        }
        for (Solved.Change change : solved.changes()) {
            getLog().info(text(change));
        }
        for (LockEntry.Key key : solved.open()) {
            getLog().warn("Not solved: " + key + "; what the lock says of it stays.");
        }
        getLog().info(shown(lock()) + ": " + Counts.number(solved.changes().size(), "line") + " written, " + solved.same()
                + " solved as before.");
    }

    private static String text(Solved.Change change) {
        LockEntry is = change.is();
        if (is == null) {
            return "Left out " + change.was().key() + ": nothing solves for it any more.";
        }
        String was = change.was() == null || change.was().value().equals(is.value()) ? "" : ", was " + change.was().value();
        return "Solved " + is.key() + ": " + is.value() + was + " (leaves " + is.property() + " " + is.leaves() + ", asked "
                + is.asked() + ").";
    }

    private String refusal(Solved solved) {
        String open = solved.open().isEmpty() ? "" : Counts.number(solved.open().size(), "setting") + " could not be solved for";
        String errors = solved.findings().isEmpty() ? "" : "the house below " + shown(sources()) + " has "
                + Counts.of(solved.findings()).words();
        String both = open.isEmpty() || errors.isEmpty() ? open + errors : open + ", and " + errors;
        return Character.toUpperCase(both.charAt(0)) + both.substring(1) + "; what the lock says of them stays. Mend and solve again"
                + (solved.findings().isEmpty() ? ", mvn ricasso:check says what stands in the way" : "");
    }
}
