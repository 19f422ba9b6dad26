package org.ricasso.dsl.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** What the texts say of an operation, as lines with a column of names. */
final class OperationLines {
    private static final int LEAST = 9;
    private final Vocabulary vocabulary;
    private final Operation operation;
    private final List<String[]> entries = new ArrayList<>();

    OperationLines(Vocabulary vocabulary, Operation operation) {
        this.vocabulary = vocabulary;
        this.operation = operation;
    }

    /** @param from where it is declared */
    List<String> lines(String from) {
        Declaration.OperationDeclaration text = vocabulary.operationText(operation.name());
        entry(Explainer.FROM, from);
        entry("purpose", operation.purpose());
        entry("runs at", operation.at().stream().map(Thing::title).collect(Collectors.joining(", ")));
        entry("works", operation.works() == null ? "the whole " + vocabulary.productKind() : vocabulary.partTitle(operation.works()));
        entry("joins", operation.joins().stream().map(vocabulary::partTitle).collect(Collectors.joining(", ")));
        operation.takes().forEach(s -> entry("takes", Explainer.entryType(s)));
        operation.needs().forEach(n -> entry("needs", n.property().path() + ": "
                + Explainer.oneLine(n.condition().span()) + " (else " + n.complaint() + ")"));
        for (Declaration.Effect effect : text.leaves()) {
            if (effect instanceof Declaration.Effect.Let let) {
                entry("let", let.name() + ": " + Explainer.oneLine(let.value().span()));
            } else if (effect instanceof Declaration.Effect.Leave leave) {
                entry("leaves", leave.path().text() + ": " + Explainer.oneLine(leave.value().span()));
            }
        }
        entry("disturbs", paths(operation.disturbs()));
        entry("measures", paths(operation.measures()));
        attributes(text.entries().stream().map(Declaration.ValueEntry::name).map(Name::text).collect(Collectors.toSet()));
        text.time().forEach(t -> entry("time", t.name() + ": " + Explainer.oneLine(t.value().span())));
        text.instruct().forEach(line -> entry("work", line.written()));
        // rules for all steps are many, and speak of none of them
        List<String> rules = Stream.concat(vocabulary.rules().stream().filter(r -> r.subjectName().equals(operation.name())),
                vocabulary.settingRulesAt(operation).stream()).map(Rule::name).sorted().toList();
        entry("rules", String.join(", ", rules));
        int width = entries.stream().mapToInt(e -> e[0].length()).max().orElse(0);
        return entries.stream().map(e -> "  " + e[0] + " ".repeat(Math.max(LEAST, width) - e[0].length() + 1) + e[1]).toList();
    }

    /** Attributes that the text writes: those that are true on one line, things by what they are called. */
    private void attributes(Set<String> written) {
        entry("is", operation.attributes().entrySet().stream().filter(e -> e.getValue().equals(Value.Words.of("yes"))
                && Type.YES_NO.equals(vocabulary.entries("operation").get(e.getKey()).type())).map(e -> e.getKey()).collect(Collectors.joining(", ")));
        operation.attributes().forEach((name, value) -> {
            if (written.contains(name) && !Type.YES_NO.equals(vocabulary.entries("operation").get(name).type())) {
                entry(name, called(value));
            }
        });
    }

    private static String called(Value value) {
        return value instanceof Value.Several several ? several.values().stream().map(OperationLines::called).collect(Collectors.joining("; "))
                : value instanceof Value.Ref ref ? ref.thing().title() : Shows.show(value);
    }

    private String paths(Set<Integer> slots) {
        return slots.stream().map(s -> vocabulary.properties().get(s).path()).collect(Collectors.joining(", "));
    }

    private void entry(String name, String text) {
        if (!text.isEmpty()) {
            entries.add(new String[] {name, text});
        }
    }
}
