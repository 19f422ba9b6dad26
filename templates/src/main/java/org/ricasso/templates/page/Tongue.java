package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Filled;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.dsl.walk.CheckedStep;
import org.ricasso.dsl.words.Dictionary;
import org.ricasso.dsl.words.Phrase;
import org.ricasso.dsl.words.Words;

/**
 * One language of the pages: what texts, names, words and numbers are in it. What it has no words for comes back in the
 * texts' own language, marked as {@linkplain Marks#borrowed borrowed}.
 */
final class Tongue {
    private static final String KIND = "kind";
    private final Dictionary dictionary;
    private final PageWords page;
    private final NumberForm numbers;
    private final Vocabulary vocabulary;
    private final Tongue source;
    private final ValueText values;

    private Tongue(Words words, Vocabulary vocabulary, String tag) {
        this.dictionary = words.in(tag);
        this.page = PageWords.of(words, tag);
        this.numbers = new NumberForm(page);
        this.vocabulary = vocabulary;
        this.source = tag.equals(Words.SOURCE) ? this : new Tongue(words, vocabulary, Words.SOURCE);
        this.values = new ValueText(this);
    }

    /** @param vocabulary what the kinds of blocks are looked up in, or null */
    static Tongue of(Words words, Vocabulary vocabulary, String tag) {
        return new Tongue(words, vocabulary, tag);
    }

    String tag() {
        return page.tag();
    }

    PageWords page() {
        return page;
    }

    NumberForm numbers() {
        return numbers;
    }

    ValueText values() {
        return values;
    }

    Tongue source() {
        return source;
    }

    boolean isSource() {
        return source == this;
    }

    String say(String key, String... filled) {
        return page.say(key, filled);
    }

    /** A text of a declaration, as it is: numbers in it are not set. */
    String text(Where.Owner owner, String written) {
        if (written == null || written.isEmpty()) {
            return "";
        }
        Phrase phrase = owner == null ? dictionary.phrase(written) : dictionary.phrase(owner.what(), owner.name(), written);
        return phrase != null ? Marks.clean(phrase.written()) : borrowed(Marks.clean(written));
    }

    /** A text of a declaration with its numbers set. */
    String typeset(Where.Owner owner, String written) {
        return typeset(text(owner, written));
    }

    /** Sets the numbers of a text that has been through here. */
    String typeset(String text) {
        return (Marks.has(text) ? source.numbers : numbers).typeset(text);
    }

    private String borrowed(String written) {
        return isSource() || !Words.needsWords(written) ? written : Marks.borrowed(written);
    }

    /** What is in the texts' own language in every set. */
    String quoted(String written) {
        String clean = Marks.clean(written);
        return isSource() || !Words.needsWords(clean) ? clean : Marks.quoted(clean);
    }

    /** A text with what stands in its holes; {@code where} says where a hole is declared. */
    String filled(Where.Owner owner, Filled text, Where where) {
        Phrase phrase = dictionary.phrase(owner.what(), owner.name(), text.written());
        if (phrase == null) {
            return source.typeset(borrowed(Marks.clean(text.text())));
        }
        List<Value> holes = text.values();
        StringBuilder result = new StringBuilder();
        for (Phrase.Piece piece : phrase.pieces()) {
            result.append(piece.isHole() ? values.line(holes.get(piece.hole()), where.in(piece.text()))
                    : Marks.clean(piece.text()));
        }
        return numbers.typeset(result.toString());
    }

    String title(Thing thing) {
        return text(ownerOf(thing), thing.title());
    }

    /** What things of a kind are called. */
    String kind(String kind) {
        Declaration.KindDeclaration declared = vocabulary == null ? null : vocabulary.kind(kind);
        boolean titled = declared != null && declared.head().title() != null;
        return titled ? text(new Where.Owner(KIND, kind), declared.head().title().written()) : Names.label(kind);
    }

    static Where.Owner ownerOf(Thing thing) {
        return new Where.Owner(thing.kind(), thing.name());
    }

    /** The entries of a thing. */
    static Where entriesOf(Thing thing) {
        return new Where(KIND, thing.kind(), "", ownerOf(thing));
    }

    /** The settings of a step's operation. */
    static Where settingsOf(Thing product, CheckedStep step) {
        return new Where("operation", step.operation(), "takes", ownerOf(product));
    }

    /** Entries that a kind declares for an owner that is no thing. */
    static Where entriesOf(String kind, Where.Owner owner) {
        return new Where(KIND, kind, "", owner);
    }

    /** What a name is called, at the beginning of a line. */
    String label(Where where) {
        return Names.capital(name(where));
    }

    /** What a name is called, inside a line. */
    String name(Where where) {
        return called(dictionary.label(where.what(), where.declaration(), where.path(), where.name()), where.name());
    }

    private String called(String label, String name) {
        return label != null ? Marks.clean(label) : borrowed(Names.words(name));
    }

    /** What a word is called that is the value of an entry, a setting or a property. */
    String word(Where where, String word) {
        if (word.equals("yes") || word.equals("no")) {
            return say("values." + word);
        }
        String label = dictionary.label(where.what(), where.declaration(), where.path() + "." + word, word);
        return label != null ? Marks.clean(label) : borrowed(word);
    }

    /** What a rate counts by. */
    String each(String each) {
        return switch (each) {
            case "h" -> say("values.hour");
            case "min" -> say("values.minute");
            case "s" -> say("values.second");
            case "each" -> say("values.each");
            default -> {
                String own = dictionary.label("rate." + each);
                String label = own != null ? own : dictionary.label(each);
                yield label != null ? Marks.clean(label) : borrowed(each);
            }
        };
    }

    /** A station along an axis: {@code heel}, {@code 100 mm}, {@code tip - 10 mm}, {@code middle (100 mm)}. */
    String station(String label) {
        int name = Math.max(label.indexOf(" - "), label.indexOf(" ("));
        String end = name < 0 ? label : label.substring(0, name);
        String rest = name < 0 ? "" : numbers.decimals(label.substring(name));
        return numbers.typeset((Words.needsWords(end) ? place(end) : numbers.number(end)) + rest);
    }

    private String place(String name) {
        String label = dictionary.label(name);
        return label != null ? Marks.clean(label) : text(null, name);
    }

    /** What stands in a block: the entries of its kind. */
    Where block(Where where) {
        Map<String, EntryType> entries = vocabulary == null || !where.what().equals(KIND) ? null
                : vocabulary.entries(where.declaration());
        EntryType entry = entries == null ? null : entries.get(where.path());
        return entry != null && entry.type() instanceof Type.ThingOf of ? new Where(KIND, of.kind(), "", where.owner()) : where;
    }

    /** An entry's path as words: {@code Blade, edge, each side}. */
    String path(Where top, String path) {
        List<String> names = new ArrayList<>();
        Where where = top;
        for (String name : path.split("\\.")) {
            Where entry = where.in(name);
            names.add(name(entry));
            where = block(entry);
        }
        return Names.capital(String.join(", ", names));
    }

    /** Where a property of the workpiece is declared. */
    static Where property(Thing product, String path) {
        return new Where("workpiece", product.kind(), path, ownerOf(product));
    }

    /** A property's label: without its part where that is the one that is worked, or where it has none. */
    String property(Thing product, String path, String works) {
        Where where = property(product, path);
        int dot = path.indexOf('.');
        if (dot < 0 || Names.label(path.substring(0, dot)).equals(works)) {
            return label(where);
        }
        return Names.capital(part(product, path.substring(0, dot)) + ", " + name(where));
    }

    private String part(Thing product, String part) {
        String label = dictionary.label(part);
        String title = vocabulary == null || isSource() || label != null ? null : vocabulary.partTitle(part);
        Phrase phrase = title == null ? null : dictionary.phrase("workpiece", product.kind(), title);
        return phrase != null ? Marks.clean(phrase.written()) : called(label, part);
    }
}
