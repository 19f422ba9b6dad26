package org.ricasso.dsl.syntax;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/** Where texts could not be read: what is missing because of it is no finding of its own. */
public final class Damage {
    private static final Pattern WORD = Pattern.compile("[\\p{L}_0-9][\\p{L}_0-9.-]*");
    private final Map<SourceFile, TreeSet<Integer>> places = new HashMap<>();
    private final Set<String> words = new HashSet<>();
    private boolean vocabulary;

    private Damage() {}

    public static Damage of(List<ParseResult> parsed) {
        Damage damage = new Damage();
        for (ParseResult result : parsed) {
            for (Diagnostic diagnostic : result.diagnostics()) {
                damage.add(diagnostic.primary().span());
            }
            damage.vocabulary |= damage.hurtsVocabulary(result.tree());
        }
        return damage;
    }

    private void add(Span span) {
        places.computeIfAbsent(span.file(), f -> new TreeSet<>()).add(span.start());
        int last = Math.min(span.file().lineCount(), span.file().line(Math.max(span.start(), span.end() - 1)) + 1);
        for (int line = Math.max(1, span.line() - 1); line <= last; line++) {
            Matcher matcher = WORD.matcher(span.file().lineText(line));
            while (matcher.find()) {
                words.add(matcher.group());
            }
        }
    }

    private boolean hurtsVocabulary(SyntaxTree tree) {
        TreeSet<Integer> offsets = places.get(tree.file());
        if (offsets == null) {
            return false;
        }
        for (int offset : offsets) {
            Declaration holder = null;
            for (Declaration declaration : tree.declarations()) {
                if (declaration.span().start() <= offset) {
                    holder = declaration;
                }
            }
            if (holder != null && !(holder instanceof Declaration.ThingDeclaration)) {
                return true;
            }
        }
        return false;
    }

    /** Whether something between two offsets of a file could not be read. */
    public boolean in(SourceFile file, int from, int to) {
        TreeSet<Integer> offsets = places.get(file);
        Integer first = offsets == null ? null : offsets.ceiling(from);
        return first != null && first < to;
    }

    /** Whether a name stands where the text could not be read, so that its declaration may be what was lost. */
    public boolean speaksOf(String name) {
        return words.contains(name);
    }

    /** Whether a declaration of the vocabulary could not be read, so that no route can be judged by it. */
    public boolean ofVocabulary() {
        return vocabulary;
    }
}
