package org.ricasso.dsl.syntax;

import org.ricasso.dsl.source.Span;

/** A word (or a steel's number) used as a name. */
public record Name(String text, Span span) {
    @Override
    public String toString() {
        return text;
    }
}
