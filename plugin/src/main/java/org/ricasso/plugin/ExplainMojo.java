package org.ricasso.plugin;

import java.util.List;
import java.util.Set;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.ricasso.dsl.Ricasso;

/**
 * Prints what the texts say of a name: a rule, operation, kind, table, calculation or thing such as a steel, with its
 * reason, source and examples. Outside a project it knows the texts that come with the plugin.
 *
 * @since 0.1.0
 */
@Mojo(name = "explain", requiresProject = false, threadSafe = true)
public final class ExplainMojo extends HouseMojo {

    /**
     * The name, such as {@code cool-after-temper} or {@code 1.4116}.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.name", required = true)
    private String name;

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        Ricasso ricasso = load(read().texts(), Set.of());
        String asked = name.strip();
        List<String> lines = ricasso.explain(asked).orElse(List.of());
        if (lines.isEmpty()) {
            throw new MojoFailureException(unknown(asked, ricasso.near(asked)));
        }
        new Console(getLog()).print(lines);
    }

    private static String unknown(String asked, List<String> near) {
        String sentence = "Nothing is named " + asked;
        return near.isEmpty() ? sentence + "."
                : sentence + "; the nearest is " + near.get(0) + ": mvn ricasso:explain -Dricasso.name=" + near.get(0)
                        + (near.size() == 1 ? "" : " (then " + String.join(", ", near.subList(1, near.size())) + ")");
    }
}
