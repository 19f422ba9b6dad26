package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.quantity.Measure;

/** Calls of the language's functions, of tables and of calculations. */
final class Calls {
    private static final Set<String> FUNCTIONS = new TreeSet<>(Set.of("min", "max", "abs", "overlaps", "inside", "scatter",
            "set-to", "known", "one-of"));
    private final Checker checker;

    Calls(Checker checker) {
        this.checker = checker;
    }

    Node call(Expression.Call call, Type expected) {
        String name = call.name().text();
        if (call.target() != null) {
            return alongAxis(call);
        }
        if (FUNCTIONS.contains(name)) {
            return function(call, expected);
        }
        Table table = checker.lexicon.table(name);
        if (table != null) {
            return table(call, table);
        }
        Calculation calculation = checker.lexicon.calculation(name);
        if (calculation != null) {
            return calculation(call, calculation);
        }
        if (name.equals(Expression.Call.SOLVE)) {
            checker.findings.error("solve-misplaced", call.span(),
                    "`solve(…)` stands only as the whole value of a step's setting");
            return Checker.fault(call.span());
        }
        Set<String> known = new TreeSet<>(FUNCTIONS);
        known.add(Expression.Call.SOLVE);
        known.addAll(checker.lexicon.tableNames());
        known.addAll(checker.lexicon.calculationNames());
        checker.findings.unknownName(call.name().span(), "function, table or calculation", name, known);
        return Checker.fault(call.span());
    }

    private Node alongAxis(Expression.Call call) {
        Node target = checker.node(call.target(), null, false);
        Measure measure = Members.measureOf(target.type());
        boolean between = call.name().text().equals("between");
        if (measure == null || !between && !call.name().text().equals("at")) {
            if (target.type() != Type.Plain.ANY) {
                checker.findings.error("no-such-member", call.name().span(),
                        Type.describe(target.type()) + " has no " + call.name() + "(…)");
            }
            return Checker.fault(call.span());
        }
        List<Node> arguments = arguments(call, between ? List.of("from", "to") : List.of("station"),
                List.of(checker.typeOf(Measure.LENGTH), checker.typeOf(Measure.LENGTH)).subList(0, between ? 2 : 1));
        if (arguments == null) {
            return Checker.fault(call.span());
        }
        Type element = target.type() instanceof Type.AlongAxis along ? along.element() : target.type();
        return new Functions.AlongAxis(call.span(), element, target, arguments, checker.lexicon.arithmetic());
    }

    private Node function(Expression.Call call, Type expected) {
        String name = call.name().text();
        Arithmetic arithmetic = checker.lexicon.arithmetic();
        switch (name) {
            case "known" -> {
                List<Node> one = arguments(call, List.of("x"), Arrays.asList((Type) null));
                return one == null ? Checker.fault(call.span()) : new Functions.Known(call.span(), one.get(0));
            }
            case "scatter", "set-to" -> {
                if (call.arguments().size() != 2) {
                    return wrongCount(call, "a value and by: its scatter");
                }
                Node value = checker.node(call.arguments().get(0).value(), expected, false);
                Measure measure = Members.measureOf(value.type());
                if (measure == null) {
                    return numbersOnly(call, value);
                }
                Node by = checker.required(call.arguments().get(1).value(), checker.typeOf(measure.difference()));
                return new Functions.Numeric(call.span(), value.type(), List.of(value, by),
                        name.equals("scatter") ? arithmetic::scatter : arithmetic::setTo);
            }
            case "abs" -> {
                List<Node> one = arguments(call, List.of("x"), Arrays.asList((Type) null));
                if (one == null) {
                    return Checker.fault(call.span());
                }
                return Members.measureOf(one.get(0).type()) == null ? numbersOnly(call, one.get(0))
                        : new Functions.Numeric(call.span(), one.get(0).type(), List.of(one.get(0), one.get(0)),
                                (a, b) -> arithmetic.absolute(a));
            }
            case "min", "max" -> {
                if (call.arguments().size() < 2) {
                    return wrongCount(call, "two values or more");
                }
                List<Node> nodes = new ArrayList<>();
                Type type = null;
                for (Expression.Argument argument : call.arguments()) {
                    Node node = nodes.isEmpty() ? checker.node(argument.value(), null, false)
                            : checker.required(argument.value(), type);
                    if (Members.measureOf(node.type()) == null) {
                        return numbersOnly(call, node);
                    }
                    type = node.type() instanceof Type.AlongAxis || type == null ? node.type() : type;
                    nodes.add(node);
                }
                return new Functions.Numeric(call.span(), type, nodes,
                        name.equals("min") ? arithmetic::min : arithmetic::max);
            }
            default -> {
                if (call.arguments().size() != 2) {
                    return wrongCount(call, "two values");
                }
                Node first = checker.node(call.arguments().get(0).value(), null, false);
                Type other = first.type() instanceof Type.ListOf list ? list.element() : first.type();
                Node second = checker.required(call.arguments().get(1).value(), name.equals("one-of") ? other : first.type());
                return new Functions.Relation(call.span(), name, first, second);
            }
        }
    }

    private Node numbersOnly(Expression.Call call, Node found) {
        if (found.type() != Type.Plain.ANY) {
            checker.findings.error("wrong-type", found.span(),
                    call.name() + " takes numbers; this is " + Type.describe(found.type()));
        }
        return Checker.fault(call.span());
    }

    private Node wrongCount(Expression.Call call, String takes) {
        checker.findings.error("wrong-arguments", call.span(), call.name() + " takes " + takes);
        return Checker.fault(call.span());
    }

    private Node table(Expression.Call call, Table table) {
        List<String> names = new ArrayList<>();
        List<Type> types = new ArrayList<>();
        for (int key : table.keys()) {
            names.add(table.columns().get(key).name());
            types.add(table.columns().get(key).type());
        }
        checker.reads.calls.add(table.name());
        List<Reads> each = new ArrayList<>();
        List<Node> arguments = arguments(call, names, types, each);
        return arguments == null ? Checker.fault(call.span())
                : new Functions.LookUp(call.span(), table, arguments, each, checker.lexicon.arithmetic());
    }

    private Node calculation(Expression.Call call, Calculation calculation) {
        List<String> names = calculation.arguments().stream().map(Calculation.Argument::name).toList();
        List<Type> types = calculation.arguments().stream().map(a -> checker.typeOf(a.measure())).toList();
        checker.reads.calls.add(calculation.name());
        List<Reads> each = new ArrayList<>();
        List<Node> arguments = arguments(call, names, types, each);
        return arguments == null ? Checker.fault(call.span())
                : new Functions.Engineering(call.span(), checker.typeOf(calculation.result()), calculation, arguments, each,
                        checker.lexicon);
    }

    private List<Node> arguments(Expression.Call call, List<String> names, List<Type> types) {
        return arguments(call, names, types, new ArrayList<>());
    }

    /** The arguments in the order of {@code names}, or null after a finding; {@code each} gets what each one reads. */
    private List<Node> arguments(Expression.Call call, List<String> names, List<Type> types, List<Reads> each) {
        Node[] found = new Node[names.size()];
        Reads[] reads = new Reads[names.size()];
        Reads outer = checker.reads;
        int place = 0;
        for (Expression.Argument argument : call.arguments()) {
            Name name = argument.name();
            int index = name == null ? place++ : names.indexOf(name.text());
            if (index < 0) {
                checker.findings.unknownName(name.span(), "argument of " + call.name(), name.text(), names);
                return null;
            }
            if (index >= found.length || found[index] != null) {
                wrongCount(call, String.join(", ", names));
                return null;
            }
            checker.reads = new Reads();
            found[index] = checker.required(argument.value(), types.get(index));
            reads[index] = checker.reads;
            outer.addAll(checker.reads);
        }
        checker.reads = outer;
        for (int i = 0; i < found.length; i++) {
            if (found[i] == null) {
                wrongCount(call, String.join(", ", names) + "; " + names.get(i) + " is missing");
                return null;
            }
        }
        each.addAll(Arrays.asList(reads));
        return Arrays.asList(found);
    }
}
