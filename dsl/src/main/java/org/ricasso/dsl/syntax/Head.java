package org.ricasso.dsl.syntax;

/**
 * The head of a declaration.
 *
 * @param name what it declares
 * @param title its title, or {@code null}
 * @param like whose entries it takes over, or {@code null}
 * @param replaces what it stands in place of, or {@code null}
 */
public record Head(Name name, Text title, Name like, Name replaces) {}
