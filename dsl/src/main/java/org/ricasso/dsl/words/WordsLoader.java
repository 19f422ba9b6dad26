package org.ricasso.dsl.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Declaration.Translation;
import org.ricasso.dsl.syntax.Declaration.WordsDeclaration;
import org.ricasso.dsl.syntax.Declaration.WordsOf;
import org.ricasso.dsl.syntax.SyntaxTree;
import org.ricasso.dsl.vocabulary.VocabularyLoader;

/**
 * Joins words to the texts that they stand for, and finds words that are out of date, that are missing, whose holes are
 * others than the text's, or that stand for nothing. Words of the works stand before those that came with the tool.
 */
public final class WordsLoader {
    /** What rates count by is free, so any name may be called something. */
    static final String RATE = "rate.";
    private final VocabularyLoader.Loaded loaded;
    private final Findings findings;
    private final Map<String, Printed> printed;
    private final Set<String> names = new TreeSet<>();
    private final SortedMap<String, Dictionary> dictionaries = new TreeMap<>();
    /** Languages with the place where each origin begins them. */
    private final Map<String, SortedMap<String, Span>> begun = new TreeMap<>();
    /** Where words for a declaration stand, by language, origin and declaration; the first place. */
    private final Map<List<String>, Span> places = new HashMap<>();
    /** Words that are not used, so that what they leave without words is told already; as places. */
    private final Set<List<String>> told = new HashSet<>();
    private final Set<String> whole;

    private WordsLoader(VocabularyLoader.Loaded loaded, Map<String, Printed> printed, Findings findings, Set<String> whole) {
        this.whole = whole;
        this.loaded = loaded;
        this.findings = findings;
        this.printed = printed;
        printed.values().forEach(one -> one.labels().forEach(label -> names.add(label.name())));
        names.addAll(loaded.vocabulary().parts());
    }

    /** Words and the texts that they stand for. */
    record Joined(Words words, Map<String, Printed> printed) {}

    /**
     * All words in the trees for what was loaded from them.
     *
     * @param whole tags of the languages in which a text without words is an error
     */
    public static Words load(List<SyntaxTree> trees, VocabularyLoader.Loaded loaded, Findings findings, Set<String> whole) {
        return join(trees, loaded, findings, whole, false).words();
    }

    /** @param all whether all things are looked through, also where the works has no words yet */
    static Joined join(List<SyntaxTree> trees, VocabularyLoader.Loaded loaded, Findings findings, Set<String> whole,
            boolean all) {
        List<Declaration> declarations = trees.stream().flatMap(tree -> tree.declarations().stream()).toList();
        List<WordsDeclaration> words = declarations.stream().filter(WordsDeclaration.class::isInstance)
                .map(WordsDeclaration.class::cast).toList();
        boolean works = words.stream().anyMatch(w -> Origin.of(w.span()).equals(Origin.WORKS));
        Map<String, Printed> printed = PrintedTexts.of(declarations, loaded, all || works || !whole.isEmpty());
        if (words.isEmpty() && whole.isEmpty()) {
            return new Joined(Words.NONE, printed);
        }
        WordsLoader loader = new WordsLoader(loaded, printed, findings, whole);
        words.forEach(loader::read);
        List<String> own = loader.begun.entrySet().stream().filter(e -> e.getValue().containsKey(Origin.WORKS))
                .map(Map.Entry::getKey).toList();
        Set<String> wanted = new TreeSet<>(whole);
        wanted.addAll(own);
        wanted.remove(Words.SOURCE);
        wanted.forEach(language -> new MissingWords(printed, loader.dictionary(language), whole.contains(language),
                loader.begun.getOrDefault(language, new TreeMap<>()), loader.places, loader.told, findings).find());
        return new Joined(new Words(loader.dictionaries, own), printed);
    }

    private void read(WordsDeclaration words) {
        String language = words.language().text();
        if (!Words.isTag(language)) {
            findings.add(WordsFindings.noLanguage(words.language()));
            return;
        }
        String origin = Origin.of(words.span());
        begun.computeIfAbsent(language, l -> new TreeMap<>()).putIfAbsent(origin, words.language().span());
        Dictionary dictionary = dictionary(language);
        for (Declaration.WordsItem item : words.items()) {
            if (item instanceof Translation label) {
                label(dictionary, origin, label);
            } else {
                declaration(dictionary, origin, (WordsOf) item);
            }
        }
    }

    private Dictionary dictionary(String language) {
        return dictionaries.computeIfAbsent(language, Dictionary::new);
    }

    private boolean isFirst(Dictionary dictionary, String origin, String key, Span place) {
        Span earlier = places.putIfAbsent(List.of(dictionary.language(), origin, key), place);
        if (earlier != null) {
            findings.add(WordsFindings.twice(place, key, earlier));
        }
        return earlier == null;
    }

    private void label(Dictionary dictionary, String origin, Translation label) {
        String name = label.path().text();
        if (!names.contains(name) && !name.startsWith(RATE)) {
            if (!origin.equals(Origin.WORKS) && loaded.vocabulary().replacesSomething()) {
                // the name may have gone with a declaration that another one replaces
                return;
            }
            findings.unknownName(label.path().span(), "name or word", name, names);
        } else if (isFirst(dictionary, origin, name, label.path().span()) && !label.text().written().isEmpty()) {
            dictionary.label(name, label.text().written());
        }
    }

    private void declaration(Dictionary dictionary, String origin, WordsOf words) {
        String what = words.what().text();
        Printed declaration = printed.get(Printed.key(what, words.name().text()));
        if (declaration == null) {
            unknown(what, words);
            return;
        }
        if (!isFirst(dictionary, origin, declaration.key(), words.span())) {
            return;
        }
        Block block = new Block(declaration, words);
        boolean declares = what.equals(PrintedTexts.PAGE) && declaration.place().equals(words.span());
        boolean stale = !declares && !block.pairs.isEmpty() && !block.digest().equals(block.of());
        boolean foreign = !origin.equals(declaration.origin());
        boolean ofAnother = foreign && loaded.vocabulary().replaced(what, declaration.name()) != null;
        if (stale && ofAnother) {
            // words for the declaration that this one replaces say nothing of this one
            block.labels(dictionary);
            return;
        }
        // a text that has changed since may have lost what words were for: that is one finding, not two
        if (!ofAnother && !(stale && block.of() != null)) {
            block.strangers();
        }
        block.labels(dictionary);
        if (stale) {
            boolean error = whole.contains(dictionary.language());
            told.add(List.of(dictionary.language(), origin, declaration.key()));
            findings.add(block.of() == null ? WordsFindings.unsigned(words, block.digest(), declaration, error)
                    : WordsFindings.stale(block.signed(), block.digest(), declaration, block.strange, error));
            return;
        }
        block.pairs.forEach(pair -> {
            Phrase phrase = Pairing.phrase(pair, findings);
            if (phrase != null) {
                dictionary.put(declaration, pair.line(), phrase);
            }
        });
    }

    private void unknown(String what, WordsOf words) {
        Set<String> kinds = new LinkedHashSet<>();
        Set<String> known = new TreeSet<>();
        printed.values().forEach(one -> {
            kinds.add(one.what());
            if (one.what().equals(what)) {
                known.add(one.name());
            }
        });
        if (kinds.contains(what)) {
            findings.unknownThing(words.name().span(), what, words.name().text(), known);
        } else if (loaded.vocabulary().kind(what) != null || what.equals(PrintedTexts.PAGE)) {
            findings.unknownThing(words.name().span(), what, words.name().text(), Set.of());
        } else {
            findings.unknownName(words.what().span(), "kind of declaration", what, kinds);
        }
    }

    /** The words for one declaration, line by line. */
    private final class Block {
        private final Printed declaration;
        private final WordsOf words;
        private final List<Pairing> pairs = new ArrayList<>();
        private final List<Translation> labels = new ArrayList<>();
        private final List<Translation> strange = new ArrayList<>();
        private Translation of;
        private boolean linesDiffer;

        Block(Printed declaration, WordsOf words) {
            this.declaration = declaration;
            this.words = words;
            Map<String, Integer> met = new HashMap<>();
            if (words.title() != null) {
                pair(Printed.TITLE, 0, new Translation(null, words.title(), words.span()));
            }
            for (Translation entry : words.entries()) {
                String path = entry.path().text();
                if (path.equals("of") && of == null) {
                    of = entry;
                } else if (!pair(path, met.merge(path, 1, Integer::sum) - 1, entry)) {
                    (isLabel(path) ? labels : strange).add(entry);
                }
            }
            List<Printed.Line> work = declaration.at(Printed.INSTRUCT);
            linesDiffer = !words.instruct().isEmpty() && words.instruct().size() != work.size();
            for (int i = 0; i < words.instruct().size() && !linesDiffer; i++) {
                pair(Printed.INSTRUCT, i, new Translation(null, words.instruct().get(i), words.instruct().get(i).span()));
            }
        }

        private boolean pair(String path, int index, Translation given) {
            List<Printed.Line> at = declaration.at(path);
            if (index >= at.size()) {
                return false;
            }
            if (!given.text().pieces().isEmpty()) {
                pairs.add(new Pairing(at.get(index), given.text()));
            }
            return true;
        }

        private boolean isLabel(String path) {
            return declaration.labels().stream().anyMatch(label -> label.path().equals(path));
        }

        /** The fingerprint as written, or null. */
        String of() {
            return of == null ? null : of.text().written();
        }

        Span signed() {
            return of.text().span();
        }

        /** Of all texts that need words, and of those that have some though they need none. */
        String digest() {
            Set<Printed.Line> given = new HashSet<>();
            pairs.forEach(pair -> given.add(pair.line()));
            return TextDigest.of(declaration.lines().stream().filter(line -> line.needed() || given.contains(line))
                    .map(Printed.Line::written).toList());
        }

        void labels(Dictionary dictionary) {
            for (Translation label : labels) {
                if (!label.text().written().isEmpty()) {
                    dictionary.label(declaration, label.path().text(), label.text().written());
                }
            }
        }

        void strangers() {
            Set<String> known = new TreeSet<>();
            declaration.lines().forEach(line -> known.add(line.path()));
            declaration.labels().forEach(label -> known.add(label.path()));
            known.removeAll(Set.of(Printed.TITLE, Printed.INSTRUCT));
            strange.forEach(entry -> findings.unknownName(entry.path().span(), "text of " + declaration.key(),
                    entry.path().text(), known));
            if (linesDiffer) {
                findings.add(WordsFindings.otherLines(words, declaration));
            }
        }
    }
}
