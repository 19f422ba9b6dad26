package org.ricasso.dsl.evaluate;

import org.ricasso.dsl.syntax.Expression.Operator;

/**
 * A comparison of numbers inside a condition.
 *
 * @param node the comparison as a whole
 * @param operator one of {@code <= >= < >}, or {@code in} where the left is to lie inside the right
 * @param left what is compared
 * @param right what it is compared with
 */
public record Comparison(Node node, Operator operator, Node left, Node right) {

    /** Whether a type is a number, or one that varies along an axis. */
    static boolean isNumber(Type type) {
        return Members.measureOf(type) != null;
    }
}
