package org.ricasso.templates.page;

/**
 * A page in one of the set's languages.
 *
 * @param tag the language's tag
 * @param name what it calls itself
 * @param href where the page lies, seen from the page that holds this
 * @param here whether it is that page itself
 */
public record LanguageLink(String tag, String name, String href, boolean here) {}
