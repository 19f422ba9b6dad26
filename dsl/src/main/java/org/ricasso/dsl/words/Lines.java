package org.ricasso.dsl.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Field;
import org.ricasso.dsl.syntax.Head;
import org.ricasso.dsl.syntax.Text;

/** Makes printed lines of texts as written. */
final class Lines {
    /** The type of a text that is for whoever reads the texts, and on no page. */
    private static final String NOTE = "note";
    private static final String TEXT = "text";
    /** A word: three letters, only the first of them large, and no digit beside them. Codes and designations have none. */
    private static final Pattern WORD =
            Pattern.compile("(?<![\\p{L}\\p{N}])(?:\\p{Lu}\\p{Ll}{2,}|\\p{Ll}{3,})(?![\\p{L}\\p{N}])");

    private static final Pattern PER = Pattern.compile("\\bper\\s+([\\p{L}_][\\p{L}\\p{N}_-]*)");
    private static final Pattern QUOTED = Pattern.compile("\"(?:\\\\.|[^\"\\\\])*\"");
    /** Units of time, which pages say of their own. */
    private static final java.util.Set<String> CLOCK = java.util.Set.of("h", "min", "s");

    private Lines() {}

    static boolean holdsWord(String text) {
        return WORD.matcher(text).find();
    }

    static Printed.Line line(String path, Text text, boolean printed) {
        List<String> holes = new ArrayList<>();
        StringBuilder plain = new StringBuilder();
        for (Text.Piece piece : text.pieces()) {
            if (piece instanceof Text.Plain letters) {
                plain.append(letters.text());
            } else if (piece instanceof Text.Hole hole) {
                holes.add(written(hole));
                // what stands on both sides of a hole is no word
                plain.append('0');
            }
        }
        return new Printed.Line(path, text.written(), holes, printed && holdsWord(plain.toString()));
    }

    /** What a page says of its own: needed even where it is but a sign, since that is how a language writes numbers. */
    static Printed.Line ofPage(String path, Text text) {
        Printed.Line line = line(path, text, true);
        return new Printed.Line(path, line.written(), line.holes(), true);
    }

    static String written(Text.Hole hole) {
        return hole.expression().span().text();
    }

    /** The title, or the name where none is written: that is what is printed then. */
    static Printed.Line title(Head head, boolean printed) {
        return head.title() != null ? line(Printed.TITLE, head.title(), printed) : plain(Printed.TITLE, head.name().text(), printed);
    }

    private static Printed.Line plain(String path, String text, boolean printed) {
        return new Printed.Line(path, text, List.of(), printed && holdsWord(text));
    }

    /**
     * The texts in a value.
     *
     * @param type its type as declared, or null where nothing says; there only what stands in quotes is a text
     */
    static List<Printed.Line> of(String path, Expression value, Field.TypeName type) {
        List<Printed.Line> lines = new ArrayList<>();
        if (type != null && isNote(type)) {
            return lines;
        }
        for (Expression one : value instanceof Expression.ListOf list ? list.elements() : List.of(value)) {
            if (one instanceof Expression.TextLiteral text) {
                lines.add(line(path, text.text(), true));
            } else if (one instanceof Expression.NameUse name && type != null && isText(type)) {
                lines.add(plain(path, name.name().text(), true));
            }
        }
        return lines;
    }

    static boolean isNote(Field.TypeName type) {
        return is(type, NOTE);
    }

    private static boolean isText(Field.TypeName type) {
        return is(type, TEXT);
    }

    private static boolean is(Field.TypeName type, String name) {
        return type instanceof Field.TypeName.ListOf list ? is(list.element(), name)
                : type instanceof Field.TypeName.Named named && named.name().text().equals(name);
    }

    /** What the rates in a value count by: {@code rate.load} of {@code 5 per load}. */
    static List<Printed.Label> rates(Expression value) {
        List<Printed.Label> labels = new ArrayList<>();
        PER.matcher(QUOTED.matcher(value.span().text()).replaceAll("")).results().map(found -> found.group(1))
                .filter(unit -> !CLOCK.contains(unit))
                .forEach(unit -> labels.add(new Printed.Label(WordsLoader.RATE + unit, WordsLoader.RATE + unit, value.span())));
        return labels;
    }

    static Map<String, Field> byName(Declaration.KindDeclaration kind) {
        return kind == null ? Map.of() : byName(kind.fields());
    }

    static Map<String, Field> byName(List<Field> fields) {
        Map<String, Field> result = new LinkedHashMap<>();
        fields.forEach(field -> result.put(field.name().text(), field));
        return result;
    }
}
