package org.ricasso.plugin;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.answer.Calculator;
import org.ricasso.dsl.answer.Calculator;

/**
 * Evaluates one expression of the language against the house and prints its value, its aim and reach where they
 * differ, and how it came about. Outside a project it knows the tables and calculations that come with the plugin.
 *
 * @since 0.1.0
 */
@Mojo(name = "calculate", requiresProject = false, threadSafe = true)
public final class CalculateMojo extends HouseMojo {

    /**
     * The expression, such as {@code 2.2 mm - 2 * 0.3 mm}.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.expression", required = true)
    private String expression;

    /**
     * Name or number of a product whose entries the expression may read, such as {@code AB-2120}.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.product")
    private String product;

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        Ricasso ricasso = load(read().texts(), Set.of());
        String of = product == null || product.isBlank() ? null : product.strip();
        Calculator.Answer answer = ricasso.calculate(expression, of);
        Console console = new Console(getLog());
        if (!answer.diagnostics().isEmpty()) {
            answer.diagnostics().forEach(console::print);
            throw new MojoFailureException("The expression has no value: " + Counts.of(answer.diagnostics()).words()
                    + "; mend it and run the goal again");
        }
        console.print(lines(answer));
    }

    private static List<String> lines(Calculator.Answer answer) {
        List<String> result = new ArrayList<>();
        result.add("value  " + answer.value());
        if (!answer.aim().isEmpty()) {
            result.add("aim    " + answer.aim());
        }
        if (!answer.reach().isEmpty()) {
            result.add("reach  " + answer.reach());
        }
        if (!answer.derivation().isEmpty()) {
            result.add("because");
            answer.derivation().forEach(line -> result.add("  " + line));
        }
        return result;
    }
}
