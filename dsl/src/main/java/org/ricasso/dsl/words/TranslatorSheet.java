package org.ricasso.dsl.words;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.format.Formatter;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.SyntaxTree;
import org.ricasso.dsl.vocabulary.VocabularyLoader;

/**
 * What is still to be written in a language, as texts to fill in: each text that is printed stands as a comment above the
 * line for its words, with the fingerprint of each declaration. What the language has already stands filled in, so that a
 * block can replace the one that is out of date.
 */
public final class TranslatorSheet {
    private final String language;
    private final Dictionary dictionary;
    private final Map<String, String> given = new HashMap<>();
    private final SortedMap<String, Map<String, Printed>> declarations = new TreeMap<>();
    private final SortedMap<String, Map<String, String>> names = new TreeMap<>();

    private TranslatorSheet(String language, Words words) {
        this.language = language;
        this.dictionary = words.in(language);
    }

    /** The texts by file name, each laid out; empty where the language is whole. */
    public static SortedMap<String, String> of(List<SyntaxTree> trees, VocabularyLoader.Loaded loaded, String language) {
        WordsLoader.Joined joined = WordsLoader.join(trees, loaded, new Findings(), Set.of(), true);
        TranslatorSheet sheet = new TranslatorSheet(language, joined.words());
        trees.forEach(sheet::remember);
        joined.printed().values().forEach(sheet::add);
        SortedMap<String, String> texts = new TreeMap<>();
        Set<String> files = new LinkedHashSet<>(sheet.names.keySet());
        files.addAll(sheet.declarations.keySet());
        files.forEach(file -> texts.put(file, sheet.text(file)));
        return texts;
    }

    /** Words that are out of date are worth having before one: what was written stays, by declaration and path. */
    private void remember(SyntaxTree tree) {
        for (Declaration declaration : tree.declarations()) {
            if (declaration instanceof Declaration.WordsDeclaration words && words.language().text().equals(language)) {
                words.items().stream().filter(Declaration.WordsOf.class::isInstance)
                        .forEach(of -> remember((Declaration.WordsOf) of));
            }
        }
    }

    private void remember(Declaration.WordsOf words) {
        String before = Printed.key(words.what().text(), words.name().text()) + " ";
        Map<String, Integer> met = new HashMap<>();
        if (words.title() != null) {
            given.put(before + Printed.TITLE + " 0", words.title().span().text());
        }
        words.entries().forEach(entry -> given.put(before + entry.path().text() + " "
                + (met.merge(entry.path().text(), 1, Integer::sum) - 1), entry.text().span().text()));
        for (int i = 0; i < words.instruct().size(); i++) {
            given.put(before + Printed.INSTRUCT + " " + i, words.instruct().get(i).span().text());
        }
    }

    private void add(Printed declaration) {
        if (!MissingWords.lines(dictionary, declaration).isEmpty()) {
            declarations.computeIfAbsent(file(declaration.place()), f -> new LinkedHashMap<>())
                    .put(declaration.key(), declaration);
        }
        for (Printed.Label label : MissingWords.labels(dictionary, declaration)) {
            names.computeIfAbsent(file(label.place()), f -> new TreeMap<>()).putIfAbsent(label.name(),
                    declaration.key() + ", " + label.path());
        }
    }

    /** Shipped texts by their folder, those of the works together. */
    private static String file(Span place) {
        String[] path = place.file().name().split("/");
        String file = place.file().shipped() && path.length > 1 ? path[path.length - 2] : Origin.WORKS;
        return file + ".ricasso";
    }

    private String text(String file) {
        StringBuilder text = new StringBuilder("words " + language + " {\n");
        names.getOrDefault(file, Map.of()).forEach((name, where) ->
                text.append("// ").append(where).append('\n').append(name).append(": \"\"\n"));
        declarations.getOrDefault(file, Map.of()).values().forEach(declaration -> write(text, declaration));
        String written = text.append("}\n").toString();
        return Formatter.format(new SourceFile(file, written, false)).text();
    }

    private void write(StringBuilder text, Printed declaration) {
        Map<String, Integer> met = new HashMap<>();
        StringBuilder work = new StringBuilder();
        StringBuilder lines = new StringBuilder();
        String title = "";
        for (Printed.Line line : declaration.lines()) {
            String was = given.get(declaration.key() + " " + line.path() + " "
                    + (met.merge(line.path(), 1, Integer::sum) - 1));
            if (line.path().equals(Printed.TITLE)) {
                if (line.needed() || was != null) {
                    text.append("// ").append(line.written()).append('\n');
                    title = was == null ? " \"\"" : " " + was;
                }
            } else if (line.path().equals(Printed.INSTRUCT)) {
                work.append("// ").append(line.written()).append('\n').append(was == null ? "\"\"" : was).append('\n');
            } else if (line.needed() || was != null) {
                lines.append("// ").append(line.written()).append('\n').append(line.path()).append(": ")
                        .append(was == null ? "\"\"" : was).append('\n');
            }
        }
        boolean piece = declaration.what().equals(PrintedTexts.WORKPIECE);
        text.append(declaration.what()).append(piece ? " of " : " ").append(declaration.name()).append(title)
                .append(" {\n").append("of: \"").append(digest(declaration)).append("\"\n").append(lines);
        if (!work.isEmpty()) {
            text.append("instruct {\n").append(work).append("}\n");
        }
        text.append("}\n");
    }

    private String digest(Printed declaration) {
        Map<String, Integer> met = new HashMap<>();
        return TextDigest.of(declaration.lines().stream().filter(line -> {
            int index = met.merge(line.path(), 1, Integer::sum) - 1;
            return line.needed() || given.containsKey(declaration.key() + " " + line.path() + " " + index);
        }).map(Printed.Line::written).toList());
    }
}
