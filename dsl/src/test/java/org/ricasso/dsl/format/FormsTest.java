package org.ricasso.dsl.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.RouteItem;
import org.ricasso.dsl.syntax.SyntaxTree;

/**
 * The trees made by chance have every form of the language: each record of the syntax tree, each of its lists empty and not,
 * each of its parts that may be left out both there and not, each value of its choices. A new form that is not made fails here.
 */
class FormsTest {
    /** What the grammar always writes, or what only a text with faults lacks. */
    private static final Set<String> ALWAYS = Set.of("SyntaxTree.declarations none", "Path.names none", "Text.pieces none",
            "OneOf.words none", "ListOf.elements none", "Grid.head none", "Row.cells none");

    /** Which of the operators stand before one operand. */
    private static final Set<String> PREFIXES = Set.of("MINUS", "NOT");

    /** What may be left out. */
    private static final Set<String> OPTIONAL = Set.of("Head.title", "Head.like", "Head.replaces", "Literal.firstUnit",
            "Literal.unit", "Call.target", "Named.along", "TableDeclaration.rows", "WordsOf.title", "Argument.name",
            "Part.title", "Step.centre", "Route.like");

    private final Set<String> made = new TreeSet<>();

    @Test
    void everyFormIsMade() {
        for (int i = 0; i < 3000; i++) {
            List<Declaration> declarations = new RandomTree(new Random(20260914L + i)).declarations();
            if (!declarations.isEmpty()) {
                visit(new SyntaxTree(null, declarations));
            }
        }
        Set<String> forms = new TreeSet<>();
        Set<Class<?>> seen = new java.util.HashSet<>();
        form(SyntaxTree.class, forms, seen);
        forms.removeAll(ALWAYS);
        OPTIONAL.forEach(name -> forms.add(name + " left out"));
        assertThat(forms).hasSizeGreaterThan(150);
        Set<String> lacking = new TreeSet<>(forms);
        lacking.removeAll(made);
        assertThat(lacking).as("forms that no tree has").isEmpty();
    }

    /** All that a type of the tree can be, by its records' components. */
    private static void form(Class<?> type, Set<String> forms, Set<Class<?>> seen) {
        if (!seen.add(type)) {
            return;
        }
        if (type.isSealed()) {
            for (Class<?> each : type.getPermittedSubclasses()) {
                // a cell of a family's row becomes a route item of its own, which nobody writes
                if (each != RouteItem.Cell.class) {
                    form(each, forms, seen);
                }
            }
        }
        if (!type.isRecord()) {
            return;
        }
        for (RecordComponent component : type.getRecordComponents()) {
            Class<?> part = component.getType();
            String name = type.getSimpleName() + "." + component.getName();
            if (part == Span.class || part == SourceFile.class) {
                continue;
            }
            forms.add(name);
            if (part == List.class) {
                forms.add(name + " none");
                String element = component.getGenericType().getTypeName();
                try {
                    form(Class.forName(element.substring(element.indexOf('<') + 1, element.length() - 1)), forms, seen);
                } catch (ClassNotFoundException e) {
                    throw new AssertionError(e);
                }
            } else if (part.isEnum()) {
                for (Object constant : part.getEnumConstants()) {
                    boolean prefix = PREFIXES.contains(constant.toString());
                    if (type == Expression.Prefix.class ? prefix : type != Expression.Infix.class
                            || constant != Expression.Operator.NOT) {
                        forms.add(name + " " + constant);
                    }
                }
            } else if (part == boolean.class) {
                forms.addAll(List.of(name + " true", name + " false"));
            } else {
                form(part, forms, seen);
            }
        }
    }

    private void visit(Object node) {
        for (RecordComponent component : node.getClass().getRecordComponents()) {
            String name = node.getClass().getSimpleName() + "." + component.getName();
            Object part = value(component, node);
            if (part instanceof List<?> list) {
                made.add(list.isEmpty() ? name + " none" : name);
                new ArrayList<>(list).stream().filter(Record.class::isInstance).forEach(this::visit);
            } else if (part instanceof Enum<?> || part instanceof Boolean) {
                made.add(name);
                made.add(name + " " + part);
            } else if (part instanceof Record) {
                made.add(name);
                visit(part);
            } else {
                made.add(part == null ? name + " left out" : name);
            }
        }
    }

    private static Object value(RecordComponent component, Object node) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(node);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
