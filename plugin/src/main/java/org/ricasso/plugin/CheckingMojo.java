package org.ricasso.plugin;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Parameter;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.plugin.report.CaseReport;
import org.ricasso.plugin.report.HouseReport;
import org.ricasso.plugin.report.ReportFile;
import org.ricasso.plugin.report.ReportRule;
import org.ricasso.plugin.report.SarifReport;
import org.ricasso.plugin.report.SourceRoot;

/** A goal that checks the house first and goes on only if it holds. */
abstract class CheckingMojo extends HouseMojo {
    private static final String REPORT = "report.sarif";
    private static final String CHECKED = CheckedSources.class.getName();

    /**
     * Does nothing.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.skip", defaultValue = "false")
    private boolean skip;

    /**
     * Names or numbers of the products to check, such as {@code AB-2120}; all when empty. On the command line
     * separated by commas.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.products")
    private List<String> products;

    /**
     * Tags of the languages of the pages, such as {@code en,de}; the first one's pages lie at the top of the set. In each of
     * them every printed text must have words: one that has none is an error. When empty, the pages are in the language of
     * the texts and in each language in which the house has words of its own; what lacks words there is a warning.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.languages")
    private List<String> languages;

    /**
     * Fails the build on warnings, too.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.failOnWarning", defaultValue = "false")
    private boolean failOnWarning;

    /**
     * The most findings that are printed, a whole number from 0; the report holds all of them.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.maxProblems", defaultValue = "100")
    private int maxProblems;

    /**
     * The folder of the reports; {@code report.sarif} holds all findings as SARIF 2.1.0.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.reportDirectory", defaultValue = "${project.build.directory}/ricasso")
    private File reportDirectory;

    /**
     * The folder that addresses in the report are relative to, the root of the repository. When not given, the nearest
     * folder at or above the module that holds {@code .git}, else {@code .mvn}, else the module itself.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.sourceRoot")
    private File sourceRoot;

    @Parameter(defaultValue = "${plugin.version}", readonly = true)
    private String version;

    @Override
    public final void execute() throws MojoExecutionException, MojoFailureException {
        if (skip) {
            getLog().info("Skipped, as ricasso.skip says.");
            return;
        }
        if (maxProblems < 0) {
            throw new MojoExecutionException("ricasso.maxProblems is " + maxProblems + ", but must be 0 or more.");
        }
        prepare();
        SourceReader.Reading reading = read();
        if (reading.count() == 0) {
            getLog().warn("Nothing was " + done() + ": there is no text below " + shown(sources()) + ".");
            return;
        }
        if (!reading.diagnostics().isEmpty()) {
            // what stands in a text that cannot be read would only come back as things that are missing
            report(reading.diagnostics(), name -> DecodedFile.RULE);
            print(reading.diagnostics());
            getLog().info(Counts.number(reading.count(), "text") + " read, "
                    + Counts.of(reading.diagnostics()).words() + "; nothing was checked.");
            throw failure(reading.diagnostics(), name -> false);
        }
        Ricasso ricasso = check(reading);
        if (fails(ricasso.checked().diagnostics())) {
            throw failure(ricasso.checked().diagnostics(), name -> ricasso.explain(name).isPresent());
        }
        proceed(ricasso);
    }

    /** What is done before anything is read. */
    void prepare() throws MojoExecutionException {}

    /** What is done with a house that holds. */
    abstract void proceed(Ricasso ricasso) throws MojoExecutionException, MojoFailureException;

    /** The languages of the pages. */
    final Languages languages() throws MojoExecutionException {
        return Languages.of(languages);
    }

    /** What the goal does, as a participle. */
    abstract String done();

    /** What a refusal leaves as it was, for the sentence that says so; may be empty. */
    abstract String untouched();

    private Ricasso check(SourceReader.Reading reading) throws MojoExecutionException, MojoFailureException {
        Set<String> only = Chosen.of(products);
        Set<String> whole = languages().whole();
        @SuppressWarnings("unchecked")
        Map<Object, Object> context = getPluginContext();
        if (context.get(CHECKED) instanceof CheckedSources before && before.isOf(reading.texts(), only, whole)) {
            getLog().debug("The same texts were checked a moment ago.");
            return before.ricasso();
        }
        Ricasso ricasso = load(reading.texts(), only, whole);
        Chosen.require(ricasso, only);
        context.put(CHECKED, new CheckedSources(reading.texts(), only, whole, ricasso));
        List<Diagnostic> found = ricasso.checked().diagnostics();
        report(found, name -> rule(ricasso, name));
        write("report.xml", out -> out.write(new CaseReport().of(ricasso.checked())));
        write("house.schema.json", out -> out.write(HouseReport.schema()));
        write("house.json", new HouseReport(ricasso)::write);
        print(found);
        getLog().info(Counts.number(ricasso.checked().products().size(), "product") + " checked, "
                + Counts.number(reading.count(), "text") + " read: " + Counts.of(found).words() + ".");
        return ricasso;
    }

    private void print(List<Diagnostic> found) {
        Console console = new Console(getLog());
        found.stream().limit(maxProblems).forEach(console::print);
        if (found.size() > maxProblems) {
            getLog().info(Counts.number(found.size() - maxProblems, "further finding") + " in "
                    + shown(reportFile()) + ".");
        }
    }

    private void report(List<Diagnostic> found, java.util.function.Function<String, ReportRule> rules)
            throws MojoExecutionException {
        Path root = sourceRoot == null ? SourceRoot.of(module()) : sourceRoot.toPath();
        write(REPORT, out -> out.write(new SarifReport(root, module(), version, rules).of(found)));
    }

    private void write(String name, ReportFile.Content content) throws MojoExecutionException {
        Path file = reportDirectory.toPath().resolve(name);
        try {
            ReportFile.write(file, content);
        } catch (IOException e) {
            throw new MojoExecutionException("The report " + shown(file) + " cannot be written: " + e, e);
        }
    }

    private Path reportFile() {
        return reportDirectory.toPath().resolve(REPORT);
    }

    private static ReportRule rule(Ricasso ricasso, String name) {
        Rule rule = ricasso.house().vocabulary().rule(name);
        String title = rule == null ? ReportRule.named(name).title() : rule.title();
        return new ReportRule(title, ricasso.explain(name).map(lines -> String.join("\n", lines)).orElse(title));
    }

    private boolean fails(List<Diagnostic> found) {
        Counts counts = Counts.of(found);
        return counts.errors() > 0 || failOnWarning && counts.warnings() > 0;
    }

    /** One sentence with the counts and the next command; the findings themselves stand in the log. */
    private MojoFailureException failure(List<Diagnostic> found, java.util.function.Predicate<String> explained) {
        StringBuilder sentence = new StringBuilder("The house below ").append(shown(sources())).append(" has ")
                .append(Counts.of(found).words());
        if (Counts.of(found).errors() == 0) {
            sentence.append(", and ricasso.failOnWarning is set");
        }
        sentence.append(untouched()).append(found.size() == 1 ? "; mend it" : "; mend them").append(" and run the build again");
        found.stream().sorted(Comparator.comparing(Diagnostic::severity)).map(Diagnostic::name).filter(explained)
                .findFirst().ifPresent(name -> sentence
                .append(", or ask why with: mvn ricasso:explain -Dricasso.name=").append(name));
        return new MojoFailureException(sentence.toString());
    }
}
