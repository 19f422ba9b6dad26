package org.ricasso.dsl.syntax;

import org.ricasso.dsl.source.Span;

/**
 * {@code 170 temper at temper-3 { … }}
 *
 * @param number its number as written
 * @param operation the operation's name
 * @param centre the work centre's name, or {@code null}
 * @param block its settings and measurements; without items where none are written
 * @param span number to centre, without the block
 */
public record Step(Name number, Name operation, Name centre, Block block, Span span) {}
