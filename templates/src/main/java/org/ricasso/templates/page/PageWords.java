package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.words.Phrase;
import org.ricasso.dsl.words.Words;
import org.ricasso.shared.Shipped;

/** What pages say of their own in one language: headings, labels and sentences, by group and name. */
final class PageWords {
    private final String tag;
    private final Map<String, Entry> entries = new LinkedHashMap<>();

    /**
     * What stands under a name.
     *
     * @param pieces its pieces
     * @param whole the text where it has no hole, else null
     * @param borrowed whether the language has no words for it
     */
    record Entry(List<Phrase.Piece> pieces, String whole, boolean borrowed) {
        static Entry of(Phrase phrase, boolean borrowed) {
            return new Entry(phrase.pieces(), phrase.pieces().stream().anyMatch(Phrase.Piece::isHole) ? null : phrase.written(),
                    borrowed);
        }
    }

    private PageWords(String tag, Map<String, Phrase> source, Map<String, Phrase> own) {
        this.tag = tag;
        boolean english = tag.equals(Words.SOURCE);
        source.forEach((key, phrase) -> {
            Phrase found = english ? phrase : own.get(key);
            entries.put(key, Entry.of(found == null ? phrase : found, found == null));
        });
    }

    /** The words of a language; those that the house's texts lack are taken from the texts that are shipped. */
    static PageWords of(Words words, String tag) {
        return new PageWords(tag, ofPages(words, Words.SOURCE), ofPages(words, tag));
    }

    private static Map<String, Phrase> ofPages(Words words, String tag) {
        Map<String, Phrase> result = new LinkedHashMap<>(OnTheirOwn.WORDS.in(tag).ofPages());
        result.putAll(words.in(tag).ofPages());
        return result;
    }

    /** The shipped words of pages without anything of the trade, for a house with a vocabulary of its own. */
    private static final class OnTheirOwn {
        static final Words WORDS = Ricasso.check(new Texts(Shipped.texts().entrySet().stream()
                .filter(text -> text.getKey().matches("ricasso/words/[^/]+/pages\\.ricasso"))
                .map(text -> new SourceFile(text.getKey(), text.getValue(), true)).toList(), Map.of()), List.of(), Set.of())
                .words();
    }

    String tag() {
        return tag;
    }

    Set<String> keys() {
        return entries.keySet();
    }

    /** Whether the language lacks words that pages say of their own. */
    boolean borrows() {
        return entries.values().stream().anyMatch(Entry::borrowed);
    }

    Entry entry(String key) {
        Entry entry = entries.get(key);
        if (entry == null) {
            throw new IllegalStateException("no text says what pages say for " + key);
        }
        return entry;
    }

    boolean has(String key) {
        return entries.containsKey(key);
    }

    /**
     * What pages say, marked where it is borrowed.
     *
     * @param filled names of holes, each with what stands there
     */
    String say(String key, String... filled) {
        Entry entry = entry(key);
        return entry.borrowed() ? Marks.borrowed(fill(entry, filled)) : fill(entry, filled);
    }

    /** The same without marks, for places that hold nothing but text. */
    String plain(String key, String... filled) {
        return Marks.plain(fill(entry(key), filled));
    }

    /** What stands between two holes. */
    String between(String key) {
        return entry(key).pieces().stream().filter(piece -> !piece.isHole()).map(Phrase.Piece::text)
                .collect(Collectors.joining());
    }

    private static String fill(Entry entry, String... filled) {
        if (entry.whole() != null) {
            return entry.whole();
        }
        Map<String, String> values = new HashMap<>();
        for (int i = 0; i < filled.length; i += 2) {
            values.put(filled[i], filled[i + 1]);
        }
        StringBuilder result = new StringBuilder();
        for (Phrase.Piece piece : entry.pieces()) {
            if (!piece.isHole()) {
                result.append(piece.text());
            } else if (values.containsKey(piece.text())) {
                result.append(values.get(piece.text()));
            } else {
                throw new IllegalStateException("nothing is given for {" + piece.text() + "}");
            }
        }
        return result.toString();
    }

    /** Several said one after another: {@code a or b or c}. */
    String join(String key, List<String> texts) {
        String result = "";
        for (String text : new ArrayList<>(texts)) {
            result = result.isEmpty() ? text : say(key, "first", result, "next", text);
        }
        return result;
    }
}
