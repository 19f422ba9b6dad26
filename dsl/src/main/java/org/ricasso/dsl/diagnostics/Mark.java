package org.ricasso.dsl.diagnostics;

import org.ricasso.dsl.source.Span;

/**
 * A marked place and what is special there.
 *
 * @param span the place
 * @param text what is said of it; stands alone
 */
public record Mark(Span span, String text) {}
