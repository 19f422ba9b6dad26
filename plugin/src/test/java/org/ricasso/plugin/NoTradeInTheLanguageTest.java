package org.ricasso.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ricasso.shared.Shipped;

/**
 * The trade stands in texts, so no class of the language holds a name of the shipped vocabulary: neither of a kind, an
 * operation, a part, a property, an entry, a setting, a word, a table, a rule nor of a thing such as a steel.
 */
class NoTradeInTheLanguageTest {
    /** Names that the language gives a meaning itself, or uses for something of its own; see {@code dsl/LANGUAGE.md}. */
    private static final Set<String> THE_LANGUAGES_OWN = Set.of(
            // sections and marks of declarations
            "at", "because", "disturbs", "expect", "for", "from", "is", "joins", "leaves", "level", "mark", "measures", "passes",
            "purpose", "require", "say", "sign", "source", "title", "to", "when", "works", "limit",
            // entries of a unit
            "also", "as", "decimals", "zero",
            // entries of an axis
            "end", "start",
            // kinds with a meaning
            "centre", "measurement", "operation",
            // built-in types
            "angle", "hardness", "length", "mass", "number", "temperature",
            // members and functions
            "abs", "scatter", "width",
            // the unit to write where `in`, an operator, was meant as one
            "inch",
            // components of records in Java
            "file", "pieces", "thing");

    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9]*(?:-[A-Za-z0-9]+)*|[0-9]\\.[0-9]{4}");
    private static final Pattern DECLARED = Pattern.compile(
            "(?m)^(?:kind|operation|table|rule|part|[a-z-]+) +([A-Za-z0-9.-]+) (?:\"|\\{)|^ +([a-z][a-z0-9-]*): +\\S|\\bone of \\(([^)]*)\\)|^ {4}part ([a-z-]+)");

    @Test
    void noClassHoldsANameOfTheTrade() throws IOException {
        Set<String> names = names();
        assertThat(names).contains("blade", "temper", "1.4116", "hardness", "as-quenched", "tempering-loss", "decarb",
                "keep-the-temper");
        SortedMap<String, Set<String>> found = new TreeMap<>();
        int classes = 0;
        try (Stream<Path> files = Files.walk(language())) {
            for (Path file : files.filter(f -> f.toString().endsWith(".class") && !f.toString().contains("grammar")).sorted().toList()) {
                classes++;
                for (String constant : constants(file)) {
                    if (names.contains(constant) && !THE_LANGUAGES_OWN.contains(constant)) {
                        found.computeIfAbsent(constant, c -> new TreeSet<>()).add(file.getFileName().toString());
                    }
                }
            }
        }
        assertThat(classes).isGreaterThan(150);
        assertThat(found).isEmpty();
    }

    private static Set<String> names() {
        Set<String> names = new TreeSet<>();
        for (Map.Entry<String, String> text : Shipped.texts().entrySet()) {
            // words declare nothing, they say again what others declare
            if (text.getKey().endsWith(".ricasso") && !text.getKey().contains("/words/")) {
                Matcher matcher = DECLARED.matcher(text.getValue());
                while (matcher.find()) {
                    for (int group = 1; group <= matcher.groupCount(); group++) {
                        if (matcher.group(group) != null) {
                            Stream.of(matcher.group(group).split(",\\s*")).filter(n -> NAME.matcher(n).matches())
                                    .forEach(names::add);
                        }
                    }
                }
            }
        }
        return names;
    }

    /** The classes as compiled: by the time this runs the class path may hold them in a jar. */
    private static Path language() {
        return Path.of("..", "dsl", "target", "classes");
    }

    /** The string constants of a class file (The Java Virtual Machine Specification, 4.4). */
    private static List<String> constants(Path file) throws IOException {
        try (DataInputStream in = new DataInputStream(Files.newInputStream(file))) {
            in.readInt();
            in.readInt();
            int count = in.readUnsignedShort();
            String[] texts = new String[count];
            List<Integer> strings = new ArrayList<>();
            for (int i = 1; i < count; i++) {
                int tag = in.readUnsignedByte();
                switch (tag) {
                    case 1 -> texts[i] = in.readUTF();
                    case 8 -> strings.add(in.readUnsignedShort());
                    case 7, 16, 19, 20 -> in.readUnsignedShort();
                    case 15 -> in.skipNBytes(3);
                    case 3, 4, 9, 10, 11, 12, 17, 18 -> in.readInt();
                    case 5, 6 -> {
                        in.readLong();
                        i++;
                    }
                    default -> throw new IOException("tag " + tag + " in " + file);
                }
            }
            return strings.stream().map(s -> texts[s]).toList();
        }
    }
}
