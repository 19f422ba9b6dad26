package org.ricasso.dsl.words;

import java.util.List;
import org.ricasso.dsl.source.Span;

/**
 * A declaration with all of its texts that may be printed.
 *
 * @param what the kind of declaration: {@code operation}, {@code rule}, {@code kind}, {@code workpiece}, {@code route},
 *     {@code axis}, {@code page}, or a thing's kind
 * @param name its name
 * @param place where it is declared
 * @param lines its texts in the order in which they stand
 * @param labels the names in it that are printed
 */
record Printed(String what, String name, Span place, List<Line> lines, List<Label> labels) {
    static final String TITLE = "title";
    static final String INSTRUCT = "instruct";

    Printed {
        lines = List.copyOf(lines);
        labels = List.copyOf(labels);
    }

    /**
     * A text.
     *
     * @param path how words speak of it; several lines may have one path
     * @param written the text with its holes as written
     * @param holes the expressions of its holes as written
     * @param needed whether it cannot be understood without words of the language
     */
    record Line(String path, String written, List<String> holes, boolean needed) {
        Line {
            holes = List.copyOf(holes);
        }
    }

    /**
     * A name that a page shows as a label, or a word that it shows as a value.
     *
     * @param path how words speak of it inside the declaration
     * @param name the name or word itself, as words speak of it anywhere
     * @param place where it is declared
     */
    record Label(String path, String name, Span place) {}

    String key() {
        return key(what, name);
    }

    static String key(String what, String name) {
        return what + " " + name;
    }

    String origin() {
        return Origin.of(place);
    }

    List<Line> at(String path) {
        return lines.stream().filter(line -> line.path().equals(path)).toList();
    }
}
