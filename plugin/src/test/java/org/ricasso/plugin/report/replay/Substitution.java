package org.ricasso.plugin.report.replay;

import java.util.List;
import java.util.TreeMap;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.ExpressionResult;
import org.ricasso.dsl.syntax.Parser;

/** An expression in which the places that it reads are written as names. */
final class Substitution {
    private final List<String> places;
    private final TreeMap<Integer, Found> found = new TreeMap<>();

    private record Found(int end, int place) {}

    private Substitution(List<String> places) {
        this.places = places;
    }

    static Expression parsed(String text) {
        ExpressionResult result = Parser.parseExpression(new SourceFile("house.json", text, false));
        if (result.expression() == null || !result.diagnostics().isEmpty()) {
            throw new AssertionError("cannot be read: " + text + " " + result.diagnostics());
        }
        return result.expression();
    }

    /** The name for the place of this index. */
    static String name(int place) {
        return "given-" + place;
    }

    /** The expression with each stretch that is one of the places, the longest first, written as its name. */
    static Expression of(String text, List<String> places) {
        Substitution substitution = new Substitution(places);
        substitution.look(parsed(text));
        StringBuilder result = new StringBuilder();
        int done = 0;
        for (var entry : substitution.found.entrySet()) {
            result.append(text, done, entry.getKey()).append(name(entry.getValue().place()));
            done = entry.getValue().end();
        }
        return parsed(result.append(text, done, text.length()).toString());
    }

    private void look(Expression at) {
        Span span = at.span();
        int place = places.indexOf(span.text().strip());
        if (place >= 0) {
            int start = span.start() + span.text().indexOf(span.text().strip());
            found.put(start, new Found(start + span.text().strip().length(), place));
        } else if (at instanceof Expression.Member member) {
            look(member.target());
        } else if (at instanceof Expression.Call call) {
            if (call.target() != null) {
                look(call.target());
            }
            call.arguments().forEach(a -> look(a.value()));
        } else if (at instanceof Expression.Infix infix) {
            look(infix.left());
            look(infix.right());
        } else if (at instanceof Expression.Prefix prefix) {
            look(prefix.operand());
        } else if (at instanceof Expression.Limit limit) {
            look(limit.bound());
        } else if (at instanceof Expression.Choice choice) {
            look(choice.condition());
            look(choice.then());
            look(choice.otherwise());
        } else if (at instanceof Expression.ListOf list) {
            list.elements().forEach(this::look);
        } else if (at instanceof Expression.Per per) {
            look(per.amount());
        }
    }
}
