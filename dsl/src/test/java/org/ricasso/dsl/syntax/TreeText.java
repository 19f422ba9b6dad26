package org.ricasso.dsl.syntax;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/** Trees as text, without places: what a text says, not where. */
public final class TreeText {
    private TreeText() {}

    /** One line for each declaration and each line in it. */
    public static String of(SyntaxTree tree) {
        StringBuilder out = new StringBuilder();
        tree.declarations().forEach(d -> out.append(of(d)).append('\n'));
        return out.toString();
    }

    static String of(Object node) {
        if (node == null) {
            return "-";
        }
        if (node instanceof Name name) {
            return name.text();
        }
        if (node instanceof Expression.Number number) {
            return number.digits();
        }
        if (node instanceof String text) {
            return '"' + text + '"';
        }
        if (node instanceof List<?> list) {
            boolean lines = list.stream().anyMatch(e -> !(e instanceof Expression) && !(e instanceof Name)
                    && !(e instanceof Text.Piece) && !(e instanceof Expression.Argument));
            List<String> elements = list.stream().map(TreeText::of).toList();
            return lines ? "[\n  " + String.join("\n", elements).replace("\n", "\n  ") + "]"
                    : "[" + String.join(" ", elements) + "]";
        }
        if (node instanceof Record record) {
            List<String> parts = new ArrayList<>();
            for (Object component : components(record)) {
                parts.add(of(component));
            }
            return "(" + record.getClass().getSimpleName() + " " + String.join(" ", parts) + ")";
        }
        return node.toString();
    }

    /** Calls back for each expression in a node, itself included. */
    static void expressions(Object node, Consumer<Expression> consumer) {
        if (node instanceof List<?> list) {
            list.forEach(e -> expressions(e, consumer));
        } else if (node instanceof Record record) {
            if (node instanceof Expression expression) {
                consumer.accept(expression);
            }
            components(record).forEach(c -> expressions(c, consumer));
        }
    }

    private static List<Object> components(Record record) {
        List<Object> result = new ArrayList<>();
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            if (component.getType() == Span.class || component.getType() == SourceFile.class) {
                continue;
            }
            try {
                component.getAccessor().setAccessible(true);
                result.add(component.getAccessor().invoke(record));
            } catch (ReflectiveOperationException e) {
                throw new AssertionError(e);
            }
        }
        return result;
    }
}
