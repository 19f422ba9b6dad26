package org.ricasso.templates.page;

/**
 * Where a name or a value is declared, so that its words are found.
 *
 * @param what the kind of declaration: {@code kind}, {@code operation}, {@code workpiece}
 * @param declaration the declaration's name
 * @param path the path in it, such as {@code takes.hold} or {@code blade.structure}
 * @param owner whose texts the value holds
 */
record Where(String what, String declaration, String path, Owner owner) {

    /** A declaration whose texts are meant. */
    record Owner(String what, String name) {}

    /** An entry, inside what this speaks of. */
    Where in(String entry) {
        return new Where(what, declaration, path.isEmpty() ? entry : path + "." + entry, owner);
    }

    /** The last name of the path. */
    String name() {
        return path.substring(path.lastIndexOf('.') + 1);
    }
}
