package org.ricasso.dsl.source;

/**
 * Who wrote something: the tool, a library that was added to it, or the works.
 *
 * @param library the library's name, its jar without the ending; empty for the tool's own and for the works
 * @param shipped whether it came with the tool or with a library
 */
public record Origin(String library, boolean shipped) {
    private static final String OURS = "ricasso/";

    public static Origin of(SourceFile file) {
        boolean library = file.shipped() && !file.name().startsWith(OURS) && file.name().indexOf('/') > 0;
        return new Origin(library ? file.name().substring(0, file.name().indexOf('/')) : "", file.shipped());
    }

    public static Origin of(Span span) {
        return of(span.file());
    }

    /** Something that is not written in a text and comes with a library, or with the tool where there is none. */
    public static Origin of(String library) {
        return new Origin(library, true);
    }

    /** Whether it comes with the tool. */
    public boolean isOurs() {
        return shipped && library.isEmpty();
    }

    @Override
    public String toString() {
        return !shipped ? "the works' own" : library.isEmpty() ? "shipped" : "from " + library;
    }
}
