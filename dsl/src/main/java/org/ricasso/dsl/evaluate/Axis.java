package org.ricasso.dsl.evaluate;

import org.ricasso.dsl.source.Span;

/**
 * A line on the product along which numbers vary.
 *
 * @param name its name behind {@code along}
 * @param start the name of its beginning
 * @param end the name of its end
 * @param length where its length from the product is written, as an expression in the language
 */
public record Axis(String name, String start, String end, Span length) {}
