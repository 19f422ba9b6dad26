package org.ricasso.dsl.syntax;

import java.util.List;
import java.util.regex.Pattern;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.LimitFindings;
import org.ricasso.dsl.source.Limits;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Expression.Argument;
import org.ricasso.dsl.syntax.Expression.Form;
import org.ricasso.dsl.syntax.Expression.Operator;
import org.ricasso.dsl.syntax.grammar.SpecParser;

/** Makes expressions of what ANTLR read. */
final class ExpressionBuilder {
    /** What does not count towards a number's digits: its sign and zeros before the first other digit. */
    private static final Pattern LEADING = Pattern.compile("^[+-]?[0.]*|\\.");
    private final Spans spans;
    private final TextBuilder texts;
    private final List<Diagnostic> findings;

    ExpressionBuilder(Spans spans, TextBuilder texts, List<Diagnostic> findings) {
        this.spans = spans;
        this.texts = texts;
        this.findings = findings;
    }

    Expression value(SpecParser.ValueContext context) {
        if (context instanceof SpecParser.ListedContext listed) {
            List<SpecParser.ExprContext> elements = listed.expr();
            return elements.size() == 1 ? expression(elements.get(0))
                    : new Expression.ListOf(expressions(elements), spans.of(listed));
        }
        if (context instanceof SpecParser.LimitedContext limited) {
            return limit(limited.limit());
        }
        return choice(((SpecParser.ChosenContext) context).choice());
    }

    private Expression limit(SpecParser.LimitContext context) {
        boolean upper = context.LE() != null || context.MAX() != null;
        Expression bound = context.literal() != null ? literal(context.literal()) : expression(context.expr());
        return new Expression.Limit(upper, bound, spans.of(context));
    }

    private Expression choice(SpecParser.ChoiceContext context) {
        SpecParser.ChoiceContext nested = context.choice();
        return new Expression.Choice(expression(context.expr(0)), expression(context.expr(1)),
                nested != null ? choice(nested) : expression(context.expr(2)), spans.of(context));
    }

    private List<Expression> expressions(List<SpecParser.ExprContext> contexts) {
        return contexts.stream().map(this::expression).toList();
    }

    Expression expression(SpecParser.ExprContext context) {
        if (context instanceof SpecParser.NumberContext number) {
            return literal(number.literal());
        }
        if (context instanceof SpecParser.NameOrCallContext use) {
            Name name = spans.name(use.word());
            return use.arguments() == null ? new Expression.NameUse(name, name.span())
                    : new Expression.Call(null, name, arguments(use.arguments()), spans.of(use));
        }
        if (context instanceof SpecParser.MemberContext member) {
            Expression target = expression(member.expr());
            Name name = spans.name(member.word());
            return member.arguments() == null ? new Expression.Member(target, name, spans.of(member))
                    : new Expression.Call(target, name, arguments(member.arguments()), spans.of(member));
        }
        if (context instanceof SpecParser.InfixContext infix) {
            Token sign = (Token) infix.getChild(1).getPayload();
            return new Expression.Infix(operator(sign), expression(infix.expr(0)), expression(infix.expr(1)),
                    spans.of(infix));
        }
        if (context instanceof SpecParser.PrefixContext prefix) {
            return new Expression.Prefix(operator(prefix.start), expression(prefix.expr()), spans.of(prefix));
        }
        if (context instanceof SpecParser.PerContext per) {
            return new Expression.Per(expression(per.expr()), spans.name(per.name()), spans.of(per));
        }
        if (context instanceof SpecParser.GroupContext group) {
            return group(group);
        }
        Span span = spans.of(context);
        return context instanceof SpecParser.DateContext ? new Expression.DateLiteral(span.text(), span)
                : new Expression.TextLiteral(texts.text(context.start), span);
    }

    private Expression group(SpecParser.GroupContext group) {
        if (group.choice() != null) {
            return choice(group.choice());
        }
        List<SpecParser.ExprContext> elements = group.expr();
        return elements.size() == 1 ? expression(elements.get(0))
                : new Expression.ListOf(expressions(elements), spans.of(group));
    }

    private List<Argument> arguments(SpecParser.ArgumentsContext context) {
        return context.argument().stream()
                .map(a -> new Argument(spans.optionalName(a.word()), expression(a.expr()))).toList();
    }

    private Expression literal(SpecParser.LiteralContext context) {
        Expression.Number low = number(context.low);
        Name lowUnit = spans.optionalName(context.lowUnit);
        Name highUnit = spans.optionalName(context.highUnit);
        Span span = spans.of(context);
        if (context.upper != null) {
            return new Expression.Literal(low, lowUnit, Form.DEVIATIONS, number(context.upper), number(context.lower),
                    highUnit, span);
        }
        if (context.high != null) {
            Form form = context.PM() != null ? Form.PLUS_MINUS : Form.RANGE;
            return new Expression.Literal(low, lowUnit, form, number(context.high), null, highUnit, span);
        }
        return new Expression.Literal(low, null, Form.SINGLE, null, null, lowUnit, span);
    }

    private Expression.Number number(Token token) {
        String digits = Spans.word(token).replace('\u2212', '-');
        if (digits.length() > Limits.DIGITS && LEADING.matcher(digits).replaceAll("").length() > Limits.DIGITS) {
            findings.add(LimitFindings.numberTooLong(spans.of(token)));
            digits = "0";
        }
        return new Expression.Number(digits, spans.of(token));
    }

    private static Operator operator(Token token) {
        return switch (token.getType()) {
            case SpecParser.PLUS -> Operator.PLUS;
            case SpecParser.MINUS -> Operator.MINUS;
            case SpecParser.TIMES -> Operator.TIMES;
            case SpecParser.SLASH -> Operator.OVER;
            case SpecParser.LE -> Operator.AT_MOST;
            case SpecParser.GE -> Operator.AT_LEAST;
            case SpecParser.LT -> Operator.LESS;
            case SpecParser.GT -> Operator.MORE;
            case SpecParser.EQ -> Operator.EQUALS;
            case SpecParser.IN -> Operator.IN;
            case SpecParser.AND -> Operator.AND;
            case SpecParser.OR -> Operator.OR;
            case SpecParser.NOT -> Operator.NOT;
            default -> throw new IllegalArgumentException("no operator: " + token.getText());
        };
    }
}
