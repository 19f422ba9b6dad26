package org.ricasso.dsl.evaluate;

import org.ricasso.dsl.source.Span;

/**
 * A property of the workpiece.
 *
 * @param slot its place in the state
 * @param part the part it belongs to, or null for the whole piece
 * @param name its name
 * @param type its type
 * @param starts its value at the start of a route, or null when nothing says
 * @param span where it is declared
 */
public record Property(int slot, String part, String name, Type type, Node starts, Span span) {
    /** {@code blade.hardness}, or the plain name for the whole piece. */
    public String path() {
        return part == null ? name : part + "." + name;
    }
}
