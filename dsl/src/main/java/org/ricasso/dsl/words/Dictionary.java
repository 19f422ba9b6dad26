package org.ricasso.dsl.words;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** The words of one language. Filled by the {@link WordsLoader} and never changed after. */
public final class Dictionary {
    private final String language;
    private final Map<String, Map<String, Phrase>> byDeclaration = new HashMap<>();
    private final Map<String, Phrase> anywhere = new HashMap<>();
    private final Map<String, String> labels = new HashMap<>();
    private final Map<String, Phrase> ofPages = new LinkedHashMap<>();

    Dictionary(String language) {
        this.language = language;
    }

    /** The language's tag, such as {@code de}. */
    public String language() {
        return language;
    }

    /**
     * What stands for a text: in words for its declaration, else in words for any other that has the same text.
     *
     * @param what the kind of the declaration that holds it, such as {@code operation}
     * @param name the declaration's name
     * @param written the text with its holes as written
     * @return the phrase, or null where the language has none, or none that is up to date
     */
    public Phrase phrase(String what, String name, String written) {
        Phrase own = byDeclaration.getOrDefault(Printed.key(what, name), Map.of()).get(written);
        return own != null ? own : anywhere.get(written);
    }

    /** What stands for a text in whatever declaration, or null. */
    public Phrase phrase(String written) {
        return anywhere.get(written);
    }

    /**
     * What a name or word is called.
     *
     * @param what the kind of the declaration that holds it
     * @param declaration that declaration's name
     * @param path its path in there, such as {@code takes.hold} or {@code blade.structure.annealed}
     * @param name the name itself
     * @return the label, or null
     */
    public String label(String what, String declaration, String path, String name) {
        String own = labels.get(Printed.key(what, declaration) + " " + path);
        return own != null ? own : labels.get(name);
    }

    /** What a name or word is called anywhere, or null. */
    public String label(String name) {
        return labels.get(name);
    }

    /** What pages say of their own, by group and name such as {@code instruction.set}; in the order in which it is read. */
    public Map<String, Phrase> ofPages() {
        return java.util.Collections.unmodifiableMap(ofPages);
    }

    void put(Printed declaration, Printed.Line line, Phrase phrase) {
        byDeclaration.computeIfAbsent(declaration.key(), k -> new HashMap<>()).put(line.written(), phrase);
        if (declaration.what().equals(PrintedTexts.PAGE)) {
            ofPages.put(declaration.name() + "." + line.path(), phrase);
        } else {
            anywhere.putIfAbsent(line.written(), phrase);
        }
    }

    void label(String name, String label) {
        labels.put(name, label);
    }

    void label(Printed declaration, String path, String label) {
        labels.put(declaration.key() + " " + path, label);
    }

    boolean has(Printed declaration, Printed.Line line) {
        return phrase(declaration.what(), declaration.name(), line.written()) != null;
    }

    boolean has(Printed declaration, Printed.Label label) {
        return label(declaration.what(), declaration.name(), label.path(), label.name()) != null;
    }
}
