package org.ricasso.dsl.format;

import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.syntax.Path;
import org.ricasso.dsl.syntax.Text;

/** Prints values: operands that are not plain stand in brackets. */
final class RandomValuePrint {
    private final RandomWriter out;

    RandomValuePrint(RandomWriter out) {
        this.out = out;
    }

    void path(Path path) {
        String before = "";
        for (Name name : path.names()) {
            if (!before.isEmpty() && Character.isDigit(before.charAt(0)) && Character.isDigit(name.text().charAt(0))) {
                out.signs("20".equals(before) ? " . " : ".");
            } else if (!before.isEmpty()) {
                out.signs(".");
            }
            out.signs(name.text());
            before = name.text();
        }
    }

    <T> void separated(List<T> list, Consumer<T> print) {
        for (int i = 0; i < list.size(); i++) {
            if (i > 0) {
                out.signs(",");
            }
            print.accept(list.get(i));
        }
    }

    void text(Text text) {
        StringBuilder written = new StringBuilder("\"");
        for (Text.Piece piece : text.pieces()) {
            if (piece instanceof Text.Plain plain) {
                written.append(plain.text().replace("\\", "\\\\").replace("\"", "\\\"").replace("{", "{{"));
            } else if (piece instanceof Text.Hole hole) {
                written.append('{').append(hole(hole.expression())).append('}');
            }
        }
        out.signs(written.append('"').toString());
    }

    private static String hole(Expression expression) {
        // always the last of what can be chosen: no line ends, the longest blanks, the rarest spellings
        RandomWriter inside = new RandomWriter(new Random() {
            private static final long serialVersionUID = 1;

            @Override
            public int nextInt(int bound) {
                return bound - 1;
            }
        });
        new RandomValuePrint(inside).expression(expression);
        return inside.text();
    }

    /** What stands behind a colon or in a cell. */
    void value(Expression value) {
        if (value instanceof Expression.Limit limit) {
            if (limit.bound() instanceof Expression.Literal && out.chance(50)) {
                out.signs(limit.upper() ? "max" : "min");
            } else {
                out.signs(limit.upper() ? "<=" : ">=");
            }
            expression(limit.bound());
        } else if (value instanceof Expression.Choice choice) {
            choice(choice);
        } else if (value instanceof Expression.ListOf list && out.chance(80)) {
            separated(list.elements(), this::expression);
        } else {
            expression(value);
        }
    }

    private void choice(Expression.Choice choice) {
        out.signs("if");
        expression(choice.condition());
        out.signs("then");
        expression(choice.then());
        out.signs("else");
        if (choice.otherwise() instanceof Expression.Choice inner) {
            choice(inner);
        } else {
            expression(choice.otherwise());
        }
    }

    void expression(Expression expression) {
        if (expression instanceof Expression.Literal literal) {
            literal(literal);
        } else if (expression instanceof Expression.NameUse use) {
            out.signs(use.name().text());
        } else if (expression instanceof Expression.DateLiteral date) {
            out.signs(date.date());
        } else if (expression instanceof Expression.TextLiteral text) {
            text(text.text());
        } else if (expression instanceof Expression.Member member) {
            operand(member.target());
            out.signs(".", member.name().text());
        } else if (expression instanceof Expression.Call call) {
            call(call);
        } else if (expression instanceof Expression.Prefix prefix) {
            out.signs(prefix.operator().sign());
            operand(prefix.operand());
        } else if (expression instanceof Expression.Infix infix) {
            operand(infix.left());
            out.signs(infix.operator().sign());
            operand(infix.right());
        } else if (expression instanceof Expression.Per per) {
            operand(per.amount());
            out.signs("per", per.each().text());
        } else if (expression instanceof Expression.Choice choice) {
            out.signs("(");
            choice(choice);
            out.signs(")");
        } else if (expression instanceof Expression.ListOf list) {
            out.signs("(");
            separated(list.elements(), this::expression);
            out.signs(")");
        }
    }

    private void call(Expression.Call call) {
        if (call.target() != null) {
            operand(call.target());
            out.signs(".");
        }
        out.signs(call.name().text(), "(");
        separated(call.arguments(), argument -> {
            if (argument.name() != null) {
                out.signs(argument.name().text(), ":");
            }
            expression(argument.value());
        });
        out.signs(")");
    }

    private void operand(Expression expression) {
        boolean plain = expression instanceof Expression.NameUse || expression instanceof Expression.Literal
                || expression instanceof Expression.DateLiteral || expression instanceof Expression.Call
                || expression instanceof Expression.Member;
        if (!plain || out.chance(10)) {
            out.signs("(");
            expression(expression);
            out.signs(")");
        } else {
            expression(expression);
        }
    }

    private void literal(Expression.Literal literal) {
        out.number(literal.first().digits());
        if (literal.firstUnit() != null) {
            out.signs(literal.firstUnit().text());
        }
        switch (literal.form()) {
            case PLUS_MINUS -> {
                out.signs("±");
                out.number(literal.second().digits());
            }
            case RANGE -> {
                out.signs("..");
                out.number(literal.second().digits());
            }
            case DEVIATIONS -> {
                out.signs("(");
                out.number(literal.second().digits());
                out.touching("/");
                out.number(literal.third().digits());
                out.signs(")");
            }
            case SINGLE -> { }
        }
        if (literal.unit() != null) {
            out.signs(literal.unit().text());
        }
    }
}
