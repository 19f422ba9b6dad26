package org.ricasso.dsl.diagnostics;

import org.ricasso.dsl.source.Span;

/** A change of a text: the stretch is replaced. */
public record Edit(Span span, String replacement) {}
