package org.ricasso.dsl.format;

import java.util.Random;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Name;

/** Values made by chance. */
final class RandomExpression {
    private static final Expression.Operator[] INFIX = {Expression.Operator.PLUS, Expression.Operator.MINUS,
        Expression.Operator.TIMES, Expression.Operator.OVER, Expression.Operator.AT_MOST, Expression.Operator.AT_LEAST,
        Expression.Operator.LESS, Expression.Operator.MORE, Expression.Operator.EQUALS, Expression.Operator.IN,
        Expression.Operator.AND, Expression.Operator.OR};

    private final Random random;
    private final RandomTree tree;

    RandomExpression(Random random, RandomTree tree) {
        this.random = random;
        this.tree = tree;
    }

    /** What may stand behind an entry's colon. */
    Expression value() {
        return switch (random.nextInt(8)) {
            case 0 -> new Expression.Limit(tree.chance(50), tree.chance(60) ? literal() : operand(2), null);
            case 1 -> choice(2);
            case 2 -> new Expression.ListOf(tree.list(2, 4, () -> operand(3)), null);
            case 3 -> new Expression.TextLiteral(tree.text(true), null);
            case 4 -> literal();
            default -> operand(0);
        };
    }

    private Expression choice(int depth) {
        return new Expression.Choice(operand(depth), operand(depth), depth < 4 && tree.chance(20) ? choice(depth + 1)
                : operand(depth), null);
    }

    /** What may stand in a hole: no text, and no choice but in brackets. */
    Expression hole() {
        return tree.chance(50) ? name() : operand(1);
    }

    private Expression name() {
        return new Expression.NameUse(tree.word(), null);
    }

    /** An expression that is no list and no choice. */
    Expression operand(int depth) {
        if (depth > 3) {
            return tree.chance(50) ? name() : literal();
        }
        return switch (random.nextInt(12)) {
            case 0, 1 -> new Expression.Infix(INFIX[random.nextInt(INFIX.length)], operand(depth + 1), operand(depth + 1), null);
            case 2 -> new Expression.Prefix(tree.chance(50) ? Expression.Operator.MINUS : Expression.Operator.NOT,
                    operand(depth + 1), null);
            case 3 -> new Expression.Call(tree.chance(20) ? name() : null, tree.word(), tree.list(0, 3,
                    () -> new Expression.Argument(tree.chance(50) ? tree.anyWord() : null, operand(depth + 1))), null);
            case 4 -> new Expression.Member(tree.chance(20) ? literal() : operand(depth + 1), tree.anyWord(), null);
            case 5 -> new Expression.Per(operand(depth + 1), tree.name(), null);
            case 6 -> new Expression.DateLiteral("2026-09-14", null);
            case 7, 8 -> literal();
            default -> name();
        };
    }

    Expression range() {
        return new Expression.Literal(number(), null, Expression.Form.RANGE, number(), null, tree.unit(), null);
    }

    Expression literal() {
        Name unit = tree.chance(80) ? tree.unit() : null;
        Name first = unit != null && tree.chance(15) ? tree.unit() : null;
        return switch (random.nextInt(5)) {
            case 0, 1 -> new Expression.Literal(number(), null, Expression.Form.SINGLE, null, null, unit, null);
            case 2 -> new Expression.Literal(number(), first, Expression.Form.RANGE, number(), null, unit, null);
            case 3 -> new Expression.Literal(number(), first, Expression.Form.DEVIATIONS, number(), number(), unit, null);
            default -> new Expression.Literal(number(), first, Expression.Form.PLUS_MINUS, number(), null, unit, null);
        };
    }

    private Expression.Number number() {
        return new Expression.Number(tree.digits(), null);
    }
}
