package org.ricasso.dsl.syntax;

import java.util.List;
import org.ricasso.dsl.source.Span;

/** An expression or value as written. */
public sealed interface Expression extends EntryValue {
    @Override
    Span span();

    /** How the numbers of a literal are meant. */
    enum Form {
        /** {@code 5 mm} */
        SINGLE,
        /** {@code 200 ± 1 mm}: second is the deviation either way */
        PLUS_MINUS,
        /** {@code 55..58 HRC}: second is the upper end */
        RANGE,
        /** {@code 6 (+0.03/+0.01) mm}: second and third are the upper and lower deviation */
        DEVIATIONS
    }

    /**
     * A number with its tolerance and unit. Digits are kept as written.
     *
     * @param first the first number
     * @param firstUnit the unit written behind the first number, or {@code null}
     * @param form how second and third are meant
     * @param second the second number or {@code null}
     * @param third the third number or {@code null}
     * @param unit the unit written at the end of the literal, or {@code null}; for {@link Form#SINGLE} the unit stands
     *     here and {@code firstUnit} is {@code null}
     */
    record Literal(Number first, Name firstUnit, Form form, Number second, Number third, Name unit, Span span)
            implements Expression {}

    /** Digits as written, with a sign that touches them; U+2212 is turned into {@code -}. */
    record Number(String digits, Span span) {}

    record DateLiteral(String date, Span span) implements Expression {}

    record TextLiteral(Text text, Span span) implements Expression {}

    /** A name on its own: a word, a thing, a setting, a property, a root. */
    record NameUse(Name name, Span span) implements Expression {}

    /** {@code target.name} */
    record Member(Expression target, Name name, Span span) implements Expression {}

    /** {@code name(…)}, or {@code target.name(…)}; {@code target} is {@code null} for the first. */
    record Call(Expression target, Name name, List<Argument> arguments, Span span) implements Expression {
        /** Asks for a setting that is to be found; has a meaning as a step's setting alone, where it is read before any call is. */
        public static final String SOLVE = "solve";

        public Call {
            arguments = List.copyOf(arguments);
        }
    }

    /** An argument; {@code name} is {@code null} where the place says which it is. */
    record Argument(Name name, Expression value) {}

    /** {@code -x}, {@code not x} */
    record Prefix(Operator operator, Expression operand, Span span) implements Expression {}

    record Infix(Operator operator, Expression left, Expression right, Span span) implements Expression {}

    enum Operator {
        PLUS("+"), MINUS("-"), TIMES("*"), OVER("/"), AT_MOST("<="), AT_LEAST(">="), LESS("<"), MORE(">"), EQUALS("="),
        IN("in"), AND("and"), OR("or"), NOT("not");

        private final String sign;

        Operator(String sign) {
            this.sign = sign;
        }

        public String sign() {
            return sign;
        }
    }

    /** {@code max 0.4 µm}, {@code <= limit(steel)}: {@code upper} says which end is bound. */
    record Limit(boolean upper, Expression bound, Span span) implements Expression {}

    /** {@code if a then b else c} */
    record Choice(Expression condition, Expression then, Expression otherwise, Span span) implements Expression {}

    /** {@code a, b, c} or {@code (a, b, c)}: two or more */
    record ListOf(List<Expression> elements, Span span) implements Expression {
        public ListOf {
            elements = List.copyOf(elements);
        }
    }

    /** {@code 5 per load} */
    record Per(Expression amount, Name each, Span span) implements Expression {}
}
