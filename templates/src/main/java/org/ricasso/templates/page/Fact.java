package org.ricasso.templates.page;

/** A line of a plain table: what it is, and its value. */
public record Fact(String label, Shown value) {}
