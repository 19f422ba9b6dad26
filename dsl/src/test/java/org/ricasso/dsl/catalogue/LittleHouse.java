package org.ricasso.dsl.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.source.SourceFile;

/** The little house with an example in it: what the example declares stands in place of what the house declares. */
public final class LittleHouse {
    private static final Pattern HEAD = Pattern.compile("(?m)^(\\w[\\w-]*) ([\\w.-]+)( [\\w.-]+)?");
    private static final Pattern AGAIN = Pattern.compile("(?m)^~~ (\\d+) from (\\d+): (.*)$");
    private static final String WITHOUT = "// without ";
    private static final String LOCK = "// " + Lock.NAME + ": ";
    private static final String ALL = "the little house";

    private LittleHouse() {}

    /** The house's declarations but those that are named. */
    static String without(Set<String> names) {
        StringBuilder result = new StringBuilder();
        for (String declaration : Catalogue.littleHouse().split("(?m)\\R(?=[\\p{L}])")) {
            if (!names.contains(ALL) && !names.contains(key(declaration))) {
                result.append(declaration.strip()).append("\n\n");
            }
        }
        return result.toString();
    }

    private static String key(String declaration) {
        if (declaration.startsWith("workpiece")) {
            return "workpiece";
        }
        Matcher matcher = HEAD.matcher(declaration);
        return matcher.find() ? matcher.group(1) + " " + matcher.group(2) : "";
    }

    /** What an example declares, or says in a comment that it does without. */
    static Set<String> declared(String example) {
        Set<String> result = new TreeSet<>();
        example.lines().filter(l -> l.startsWith(WITHOUT)).forEach(l -> result.add(l.substring(WITHOUT.length()).strip()));
        for (String line : example.lines().filter(l -> !l.isEmpty() && !Character.isWhitespace(l.charAt(0))).toList()) {
            if (!line.contains(" replaces ")) {
                result.add(key(line));
            }
        }
        return result;
    }

    /** An example with its lines {@code ~~ 20 from 1: add {i} wipe} written out; {@code {i+1}} is the next number. */
    static String writtenOut(String example) {
        return AGAIN.matcher(example).replaceAll(again -> {
            int from = Integer.parseInt(again.group(2));
            return Matcher.quoteReplacement(IntStream.range(from, from + Integer.parseInt(again.group(1)))
                    .mapToObj(i -> again.group(3).replace("{i}", Integer.toString(i)).replace("{i+1}", Integer.toString(i + 1)))
                    .collect(Collectors.joining("\n")));
        });
    }

    /** What is found in the house with an example and files beside it. */
    public static List<Diagnostic> findings(String example, Map<String, String> files) {
        return check(example, files).checked().diagnostics();
    }

    /** @param files texts and tables beside the example, by name */
    public static Ricasso check(String example, Map<String, String> files) {
        String whole = writtenOut(example);
        Set<String> declared = new TreeSet<>(declared(whole));
        List<SourceFile> texts = new ArrayList<>();
        Map<String, SourceFile> data = new LinkedHashMap<>();
        files.forEach((name, text) -> {
            if (name.endsWith(".ricasso")) {
                declared.addAll(declared(text));
                texts.add(new SourceFile(name, text, false));
            } else {
                data.put(name, new SourceFile(name, text, false));
            }
        });
        String lock = whole.lines().filter(l -> l.startsWith(LOCK)).map(l -> l.substring(LOCK.length()) + "\n")
                .collect(Collectors.joining());
        texts.add(new SourceFile("little-house.ricasso", without(declared), false));
        texts.add(new SourceFile("example.ricasso", whole, false));
        return Ricasso.check(new Texts(texts, data, lock.isEmpty() ? null : new SourceFile(Lock.NAME, lock, false)), List.of(), Set.of());
    }
}
