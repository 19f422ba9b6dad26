package org.ricasso.plugin;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.words.Words;
import org.ricasso.plugin.report.ReportFile;

/**
 * Writes what has no words yet in a language as sheets for translators: each text stands above the line for its words,
 * with the fingerprint that says which text they are for. Words that are out of date stand there as they were.
 *
 * <p>A sheet that is filled in is a text of the house: put it below the folder of the texts. Nothing is written there by
 * this goal.
 *
 * @since 0.1.0
 */
@Mojo(name = "words", threadSafe = true)
public final class WordsMojo extends HouseMojo {

    /**
     * Tag of the language to write sheets for, such as {@code fr}. When empty, those of {@code languages}, and when that is
     * empty, too, each language in which the house has words.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.language")
    private String language;

    /**
     * Tags of the languages of the pages, as for goal render.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.languages")
    private List<String> languages;

    /**
     * The folder of the sheets, with a folder for each language in it. It may not lie among the texts of the house.
     *
     * @since 0.1.0
     */
    @Parameter(property = "ricasso.wordsDirectory", defaultValue = "${project.build.directory}/words")
    private File wordsDirectory;

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        Path folder = wordsDirectory.toPath().toAbsolutePath().normalize();
        if (folder.startsWith(sources().toAbsolutePath().normalize())) {
            throw new MojoExecutionException("ricasso.wordsDirectory is " + shown(folder)
                    + ", among the texts of the house: sheets are not written there, since half of them is empty.");
        }
        SourceReader.Reading reading = read();
        if (!reading.diagnostics().isEmpty()) {
            Console console = new Console(getLog());
            reading.diagnostics().forEach(console::print);
            throw new MojoFailureException("A text below " + shown(sources()) + " cannot be read; mend it and run the goal again");
        }
        for (String tag : wanted(reading)) {
            SortedMap<String, String> sheets = sheets(reading.texts(), tag);
            try {
                write(folder.resolve(tag), sheets);
            } catch (IOException e) {
                throw new MojoExecutionException("The sheets in " + shown(folder) + " cannot be written: " + e, e);
            }
            getLog().info(sheets.isEmpty() ? tag + " is whole: nothing is left to write."
                    : Counts.number(sheets.size(), "sheet") + " in " + shown(folder.resolve(tag))
                            + "; fill them in and put them below " + shown(sources()) + ".");
        }
    }

    private Set<String> wanted(SourceReader.Reading reading) throws MojoExecutionException, MojoFailureException {
        boolean one = language != null && !language.isBlank();
        Languages given = Languages.of(one ? List.of(language) : languages);
        Set<String> wanted = new LinkedHashSet<>(given.asked().isEmpty()
                ? load(reading.texts(), Set.of()).words().languages() : given.asked());
        wanted.remove(Words.SOURCE);
        if (wanted.isEmpty()) {
            throw new MojoFailureException("The house has words in no other language; say which one to write sheets for: "
                    + "mvn ricasso:words -Dricasso.language=fr");
        }
        return wanted;
    }

    private static void write(Path folder, Map<String, String> sheets) throws IOException {
        if (Files.isDirectory(folder)) {
            // a sheet of an earlier run says what was missing then
            try (DirectoryStream<Path> old = Files.newDirectoryStream(folder, "*.ricasso")) {
                for (Path sheet : old) {
                    if (!sheets.containsKey(sheet.getFileName().toString())) {
                        Files.delete(sheet);
                    }
                }
            }
        }
        for (Map.Entry<String, String> sheet : sheets.entrySet()) {
            ReportFile.write(folder.resolve(sheet.getKey()), sheet.getValue().getBytes(StandardCharsets.UTF_8));
        }
    }
}
