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
import org.ricasso.dsl.diagnostics.Unreadable;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/** Where texts could not be read: what is missing because of it is no finding of its own. */
public final class Damage implements Unreadable {
    private static final Pattern WORD = Pattern.compile("[\\p{L}_0-9][\\p{L}_0-9.-]*");
    private static final Pattern COMMENT = Pattern.compile("//.*");
    private final Map<SourceFile, TreeSet<Integer>> places = new HashMap<>();
    private final Set<String> words = new HashSet<>();
    private final Set<List<?>> lines = new HashSet<>();
    private boolean vocabulary;
    private boolean declaration;

    private Damage() {}

    public static Damage of(List<ParseResult> parsed) {
        Damage damage = new Damage();
        for (ParseResult result : parsed) {
            for (Diagnostic diagnostic : result.diagnostics()) {
                damage.add(diagnostic.primary().span());
            }
            damage.hurts(result.tree());
        }
        return damage;
    }

    private void add(Span span) {
        places.computeIfAbsent(span.file(), f -> new TreeSet<>()).add(span.start());
        lines.add(List.of(span.file(), span.line()));
        int last = Math.min(span.file().lineCount(), span.file().line(Math.max(span.start(), span.end() - 1)) + 1);
        for (int line = Math.max(1, span.line() - 1); line <= last; line++) {
            Matcher matcher = WORD.matcher(span.file().lineText(line));
            while (matcher.find()) {
                words.add(matcher.group());
            }
        }
    }

    private void hurts(SyntaxTree tree) {
        for (int offset : places.getOrDefault(tree.file(), new TreeSet<>())) {
            Declaration holder = null;
            for (Declaration declaration : tree.declarations()) {
                if (declaration.span().start() <= offset) {
                    holder = declaration;
                }
            }
            if (holder instanceof Declaration.ThingDeclaration thing) {
                Span block = thing.block().span();
                declaration |= offset < block.start() || offset >= block.end() || isMoreBehind(tree, block.end());
            } else if (holder instanceof Declaration.RouteDeclaration route) {
                // what is lost of its steps is the matter of those who take it over
                declaration |= route.items().isEmpty() || offset < route.items().get(0).span().start();
            } else {
                declaration |= holder == null;
                vocabulary |= holder != null;
            }
        }
    }

    /** Whether text that belongs to no declaration stands behind one. */
    private static boolean isMoreBehind(SyntaxTree tree, int end) {
        int next = tree.declarations().stream().mapToInt(d -> d.span().start()).filter(start -> start >= end).min()
                .orElse(tree.file().text().length());
        return COMMENT.matcher(tree.file().text().substring(end, next)).replaceAll("").chars()
                .anyMatch(c -> Character.isLetterOrDigit(c));
    }

    /** Whether something between two offsets of a file could not be read. */
    public boolean in(SourceFile file, int from, int to) {
        TreeSet<Integer> offsets = places.get(file);
        Integer first = offsets == null ? null : offsets.ceiling(from);
        return first != null && first < to;
    }

    @Override
    public boolean marks(Span span) {
        return lines.contains(List.of(span.file(), span.line()));
    }

    @Override
    public boolean declarationLost() {
        return declaration;
    }

    @Override
    public boolean speaksOf(String name) {
        return words.contains(name);
    }

    /** So that no route can be judged by it. */
    @Override
    public boolean ofVocabulary() {
        return vocabulary;
    }
}
