package org.ricasso.dsl.syntax;

import org.ricasso.dsl.source.Span;

/** The value of an entry: an {@link Expression} or a {@link Grid}. */
public sealed interface EntryValue permits Expression, Grid {
    Span span();
}
