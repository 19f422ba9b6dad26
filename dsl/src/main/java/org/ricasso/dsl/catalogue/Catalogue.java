package org.ricasso.dsl.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ricasso.dsl.diagnostics.Severity;

/** The catalogue of findings. Read once; immutable. */
public final class Catalogue {
    /** The themes, each a text of its own, in the order in which they are read. */
    public static final List<String> THEMES = List.of("lines", "values", "names", "tables", "rules", "routes", "families",
            "rework", "solve", "words", "limits");
    private static final Pattern NAME = Pattern.compile("([a-z0-9-]+)(?: \\((warning|note)\\))?");
    private static final String REMEDY = "Remedy: ";
    private static final Catalogue READ = read();
    private final List<Theme> themes;
    private final Map<String, CatalogueEntry> entries;

    /**
     * Findings that belong together.
     *
     * @param name its short name
     * @param title its title
     * @param meaning what it is about, paragraph by paragraph
     * @param entries its findings, in the order of their names
     */
    public record Theme(String name, String title, List<String> meaning, List<CatalogueEntry> entries) {
        public Theme {
            meaning = List.copyOf(meaning);
            entries = List.copyOf(entries);
        }
    }

    /**
     * @param texts the themes' texts by the themes' names
     * @throws IllegalStateException if a text has not the form that the guideline tells
     */
    Catalogue(Map<String, String> texts) {
        Map<String, CatalogueEntry> all = new TreeMap<>();
        List<Theme> read = new ArrayList<>();
        texts.forEach((name, text) -> {
            CaseText cases = CaseText.of(text);
            Map<String, CatalogueEntry> found = new TreeMap<>();
            for (CaseText.Section section : cases.sections()) {
                CatalogueEntry entry = entry(name, section);
                if (all.put(entry.name(), entry) != null) {
                    throw new IllegalStateException(entry.name() + " stands twice");
                }
                found.put(entry.name(), entry);
            }
            read.add(new Theme(name, cases.title(), cases.head(), List.copyOf(found.values())));
        });
        this.themes = List.copyOf(read);
        this.entries = Collections.unmodifiableMap(all);
    }

    /** The catalogue that comes with the tool. */
    public static Catalogue shipped() {
        return READ;
    }

    /** The text of the little house that the examples stand in. */
    public static String littleHouse() {
        return resource("little-house.ricasso");
    }

    /** How messages and entries are written, in Markdown. */
    public static String guideline() {
        return resource("guideline.md");
    }

    /** The entry of a finding's name, or null. */
    public CatalogueEntry entry(String name) {
        return entries.get(name);
    }

    /** All entries in the order of their names. */
    public Collection<CatalogueEntry> entries() {
        return entries.values();
    }

    /** All themes in the order in which they are read. */
    public List<Theme> themes() {
        return themes;
    }

    private static Catalogue read() {
        Map<String, String> texts = new LinkedHashMap<>();
        THEMES.forEach(theme -> texts.put(theme, resource(theme + ".md")));
        return new Catalogue(texts);
    }

    private static CatalogueEntry entry(String theme, CaseText.Section section) {
        Matcher name = NAME.matcher(section.name());
        if (!name.matches()) {
            throw new IllegalStateException("no name of a finding: " + section.name());
        }
        Severity severity = name.group(2) == null ? Severity.ERROR : Severity.valueOf(name.group(2).toUpperCase(Locale.ROOT));
        List<String> lines = section.lines();
        String remedy = lines.isEmpty() ? "" : lines.get(lines.size() - 1);
        if (lines.size() < 3 || !remedy.startsWith(REMEDY)) {
            throw new IllegalStateException(section.name() + " wants a title, its meaning, and a remedy");
        }
        Map<String, String> files = new LinkedHashMap<>(section.fences());
        String gives = taken(files, "gives");
        String prints = taken(files, "prints");
        String mended = taken(files, "mended");
        if (gives.isEmpty() && !section.fences().isEmpty()) {
            throw new IllegalStateException(section.name() + " has fences, but none that gives it");
        }
        return new CatalogueEntry(name.group(1), theme, severity, lines.get(0), lines.subList(1, lines.size() - 1),
                remedy.substring(REMEDY.length()), gives, prints, mended, files);
    }

    private static String taken(Map<String, String> fences, String word) {
        String text = fences.remove(word);
        return text == null ? "" : text;
    }

    private static String resource(String name) {
        try (InputStream in = Catalogue.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
