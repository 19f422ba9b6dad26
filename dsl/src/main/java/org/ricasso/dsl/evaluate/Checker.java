package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.syntax.Text;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;

/**
 * Checks expressions against the vocabulary and makes them ready to be evaluated.
 *
 * <p>Names get their meaning, words and numbers their type from what is expected of them. A fault is reported once; the
 * node that stands for it is worth an unknown that has been reported and goes with every type.
 */
public final class Checker {
    final Lexicon lexicon;
    final Scope scope;
    final Findings findings;
    final Literals literals;
    Reads reads = new Reads();
    private boolean applies = true;

    public Checker(Lexicon lexicon, Scope scope, Findings findings) {
        this.lexicon = lexicon;
        this.scope = scope;
        this.findings = findings;
        this.literals = new Literals(lexicon.units());
    }

    /**
     * A checked expression.
     *
     * @param node the node
     * @param reads what it reads
     * @param applies false if it reads a setting that the step's operation does not have
     */
    public record Checked(Node node, Reads reads, boolean applies) {}

    /** Checks an expression of which a value of type {@code expected} is wanted; {@code null} for any. */
    public Checked check(Expression expression, Type expected) {
        reads = new Reads();
        applies = true;
        Node node = required(expression, expected);
        return new Checked(node, reads, applies);
    }

    /** A node of the expected type, or a reported fault. */
    Node required(Expression expression, Type expected) {
        Type made = made(expression, expected);
        if (made != null && expected != null && !Type.fits(expected, made)) {
            mismatch(expression, expected, made);
            return fault(expression.span());
        }
        Node node = node(expression, expected, false);
        if (expected != null && !Type.fits(expected, node.type())) {
            mismatch(expression, expected, node.type());
            return fault(expression.span());
        }
        return node;
    }

    /** What an expression makes, whatever stands in it; null where that has to be looked at. */
    private static Type made(Expression expression, Type expected) {
        if (expression instanceof Expression.ListOf) {
            return new Type.ListOf(expected instanceof Type.ListOf of ? of.element() : expected);
        }
        return expression instanceof Expression.Infix infix && switch (infix.operator()) {
            case PLUS, MINUS, TIMES, OVER -> false;
            default -> true;
        } ? Type.Plain.LOGIC : null;
    }

    private void mismatch(Expression expression, Type expected, Type found) {
        Span span = expression.span();
        if (expected instanceof Type.Measured asked && found instanceof Type.Measured number) {
            Diagnostic diagnostic = Diagnostic.error("wrong-dimension", new Mark(span,
                    "this is " + Type.describe(found) + ", " + Type.describe(expected) + " is asked for"));
            if (number.measure().equals(Measure.NUMBER) && expression instanceof Expression.Literal literal
                    && literal.unit() == null && literal.firstUnit() == null) {
                String sign = lexicon.units().shownFor(asked.measure().dimension()).sign();
                String text = span.text().strip() + " " + sign;
                diagnostic = Diagnostic.error("unit-missing", new Mark(span, "the unit is missing; "
                        + Type.describe(expected) + " is asked for"))
                        .remedy(new Remedy("write " + text, List.of(new Edit(span, text))));
            }
            findings.add(diagnostic);
            return;
        }
        findings.error("wrong-type", span,
                "this is " + Type.describe(found) + ", " + Type.describe(expected) + " is asked for");
    }

    static Node fault(Span span) {
        return new Node.Constant(span, Type.Plain.ANY, new Value.Unknown("a fault reported elsewhere", true));
    }

    /** @param limits whether a characteristic's limits may be read here, since only its nominal is taken */
    Node node(Expression expression, Type expected, boolean limits) {
        if (expression instanceof Expression.Literal literal) {
            return literal(literal, null, expected);
        }
        if (expression instanceof Expression.NameUse use) {
            return name(use.name(), expected, limits);
        }
        if (expression instanceof Expression.Member member) {
            return new Members(this).member(member, expected, limits);
        }
        if (expression instanceof Expression.Call call) {
            return new Calls(this).call(call, expected);
        }
        if (expression instanceof Expression.Infix infix) {
            return new Operators(this).infix(infix, expected);
        }
        if (expression instanceof Expression.Prefix prefix) {
            return new Operators(this).prefix(prefix);
        }
        if (expression instanceof Expression.Limit limit) {
            return new Operators(this).limit(limit, expected);
        }
        if (expression instanceof Expression.Choice choice) {
            return new Operators(this).choice(choice, expected);
        }
        if (expression instanceof Expression.ListOf list) {
            return list(list, expected);
        }
        if (expression instanceof Expression.Per per) {
            return rate(per);
        }
        if (expression instanceof Expression.TextLiteral text) {
            return new Node.Constant(text.span(), Type.Plain.TEXT, new Value.Txt(text.text().written()));
        }
        Expression.DateLiteral date = (Expression.DateLiteral) expression;
        return new Node.Constant(date.span(), Type.Plain.DATE, new Value.Date(date.date()));
    }

    Node literal(Expression.Literal literal, Name unitBy, Type expected) {
        if (expected instanceof Type.ThingOf of && literal.form() == Expression.Form.SINGLE && literal.unit() == null) {
            return thing(of.kind(), literal.first().digits(), literal.span());
        }
        boolean difference = expected instanceof Type.Measured measured && !measured.measure().point()
                && measured.measure().dimension().isHardness();
        Quantity quantity = literals.read(literal, unitBy, difference, findings);
        if (quantity == null) {
            return fault(literal.span());
        }
        Type type = typeOf(quantity.measure());
        if (expected instanceof Type.Measured asked && asked.measure().equals(Measure.TEMPERATURE_DIFFERENCE)
                && quantity.measure().equals(Measure.TEMPERATURE)) {
            writeKelvin(literal, quantity);
            return fault(literal.span());
        }
        return new Node.Constant(literal.span(), type, new Value.Num(quantity));
    }

    void writeKelvin(Expression.Literal literal, Quantity quantity) {
        String kelvin = literal.first().digits() + " K";
        Diagnostic diagnostic = Diagnostic.error("point-for-difference", new Mark(literal.span(),
                "a temperature stands where a difference of temperatures is meant"));
        findings.add(literal.form() == Expression.Form.SINGLE && quantity.shown().unit().factor() == 1
                ? diagnostic.remedy(new Remedy("write " + kelvin, List.of(new Edit(literal.span(), kelvin))))
                : diagnostic);
    }

    Type typeOf(Measure measure) {
        return new Type.Measured(measure, lexicon.nameOf(measure));
    }

    private Node list(Expression.ListOf list, Type expected) {
        Type element = expected instanceof Type.ListOf of ? of.element() : expected;
        Name lastUnit = list.elements().get(list.elements().size() - 1) instanceof Expression.Literal last
                ? last.unit() : null;
        if (list.elements().get(list.elements().size() - 1) instanceof Expression.NameUse use
                && element instanceof Type.Measured && lexicon.units().find(use.name().text()).isPresent()) {
            findings.error("number-missing", use.span(), "a number is missing before " + use.name());
            return fault(list.span());
        }
        List<Node> nodes = new ArrayList<>();
        for (Expression one : list.elements()) {
            Node node = one instanceof Expression.Literal literal ? literal(literal, lastUnit, element)
                    : node(one, element, false);
            if (element != null && !Type.fits(element, node.type())) {
                if (lastUnit == null && one instanceof Expression.Literal literal && literal.unit() == null) {
                    // one unit at the end is what all of them lack
                    Expression last = list.elements().get(list.elements().size() - 1);
                    mismatch(last, element, node.type());
                    return fault(list.span());
                }
                mismatch(one, element, node.type());
                node = fault(one.span());
            }
            nodes.add(node);
        }
        return new Nodes.Listed(list.span(), new Type.ListOf(element == null ? nodes.get(0).type() : element), nodes);
    }

    private Node rate(Expression.Per per) {
        Node amount = node(per.amount(), null, false);
        return new Nodes.Rated(per.span(), amount, per.each().text());
    }

    /** A bare name. */
    private Node name(Name name, Type expected, boolean limits) {
        String text = name.text();
        Node symbol = symbol(name, limits);
        if (symbol != null && (expected == null || Type.fits(expected, symbol.type()))) {
            return symbol;
        }
        Type wanted = expected instanceof Type.ListOf list ? list.element() : expected;
        if (wanted instanceof Type.WordsOf words && words.words().contains(text)) {
            return new Node.Constant(name.span(), wanted, Value.Words.of(text));
        }
        if (wanted == Type.Plain.LOGIC && (text.equals("yes") || text.equals("no"))) {
            return new Node.Constant(name.span(), Type.Plain.LOGIC, new Value.Logic(Truth.of(text.equals("yes"))));
        }
        if (wanted instanceof Type.ThingOf of && symbol == null) {
            return thing(of.kind(), text, name.span());
        }
        if (wanted == Type.Plain.TEXT && symbol == null) {
            // a number of a model or a revision needs no quotes
            return new Node.Constant(name.span(), Type.Plain.TEXT, new Value.Txt(text));
        }
        if (wanted == Type.Plain.RATE && symbol == null) {
            return new Node.Constant(name.span(), Type.Plain.RATE, new Value.Rate(null, text));
        }
        if (symbol != null) {
            return symbol;
        }
        TreeSet<String> known = new TreeSet<>(names());
        if (wanted instanceof Type.WordsOf words) {
            known.addAll(words.words());
            findings.add(Findings.near(Diagnostic.error("unknown-word",
                    new Mark(name.span(), text + " is not " + Type.describe(wanted))), text, known));
        } else {
            findings.unknownName(name.span(), "setting, property or root", text, known);
        }
        return fault(name.span());
    }

    /** What a bare name stands for in this scope, or null. */
    private Node symbol(Name name, boolean limits) {
        String text = name.text();
        for (int i = 0; i < scope.lets().size(); i++) {
            if (scope.lets().get(i).name().equals(text)) {
                return new Nodes.LetUse(name.span(), scope.lets().get(i).type(), i);
            }
        }
        Type given = scope.given().get(text);
        if (given != null) {
            reads.self.add(text);
            return new Nodes.Given(name.span(), given, text);
        }
        if (scope.properties()) {
            Node setting = setting(name, name.span(), text);
            if (setting != null) {
                return setting;
            }
            Property property = scope.part() == null ? null : lexicon.property(scope.part(), text);
            if (property == null) {
                property = lexicon.property(null, text);
            }
            if (property != null) {
                reads.properties.add(property.slot());
                return new Nodes.PropertyUse(name.span(), property, false, text);
            }
            if (lexicon.parts().contains(text)) {
                return new Nodes.Root(name.span(), new Type.StateOf(false, text), text);
            }
        }
        EntryType entry = scope.self() == null ? null : lexicon.entries(scope.self()).get(text);
        if (entry != null) {
            return new Members(this).entry(new Nodes.Self(name.span(), scope.self()), entry, name.span(), limits);
        }
        if (scope.roots().contains(text)) {
            return root(name);
        }
        for (Axis axis : lexicon.axes()) {
            if (axis.hasStation(text)) {
                return new Nodes.StationName(name.span(), typeOf(Measure.LENGTH), axis, text, lexicon);
            }
        }
        return null;
    }

    /** The setting of the step by this name, or null. */
    Node setting(Name name, Span written, String key) {
        for (int i = 0; i < scope.settings().size(); i++) {
            EntryType setting = scope.settings().get(i);
            if (setting.name().equals(name.text())) {
                reads.settings.add(i);
                return new Nodes.SettingUse(written, setting.type(), i, key);
            }
        }
        return null;
    }

    private Node root(Name name) {
        Type type = switch (name.text()) {
            case "before" -> new Type.StateOf(false, null);
            case "after" -> new Type.StateOf(true, null);
            case "step" -> Type.Plain.STEP;
            case "operation" -> Type.Plain.OPERATION;
            default -> new Type.ThingOf(name.text());
        };
        return new Nodes.Root(name.span(), type, name.text());
    }

    /** A reference to a thing, reported where there is none. */
    Node thing(String kind, String name, Span span) {
        Thing thing = lexicon.thing(kind, name);
        if (thing == null) {
            findings.unknownThing(span, kind, name, lexicon.thingNames(kind));
            return fault(span);
        }
        return new Node.Constant(span, new Type.ThingOf(kind), new Value.Ref(thing));
    }

    void doesNotApply() {
        applies = false;
    }

    private List<String> names() {
        List<String> names = new ArrayList<>(scope.roots());
        scope.lets().forEach(l -> names.add(l.name()));
        names.addAll(scope.given().keySet());
        if (scope.properties()) {
            scope.settings().forEach(s -> names.add(s.name()));
            for (Property property : lexicon.properties()) {
                if (property.part() == null || property.part().equals(scope.part())) {
                    names.add(property.name());
                }
            }
        }
        if (scope.self() != null) {
            names.addAll(lexicon.entries(scope.self()).keySet());
        }
        return names;
    }

    /** A text with its holes checked. */
    public TextNode text(Text text) {
        List<Object> pieces = new ArrayList<>();
        for (Text.Piece piece : text.pieces()) {
            if (piece instanceof Text.Plain plain) {
                pieces.add(plain.text());
            } else if (piece instanceof Text.Hole hole) {
                pieces.add(node(hole.expression(), null, false));
            }
        }
        return new TextNode(pieces, text.written());
    }
}
