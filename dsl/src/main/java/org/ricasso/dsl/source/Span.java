package org.ricasso.dsl.source;

/**
 * A stretch of a file.
 *
 * @param file the file
 * @param start UTF-16 offset of its first character
 * @param end UTF-16 offset behind its last character, not before {@code start}
 */
public record Span(SourceFile file, int start, int end) implements Comparable<Span> {

    /** The stretch from the beginning of this to the end of the other. */
    public Span to(Span other) {
        return new Span(file, Math.min(start, other.start), Math.max(end, other.end));
    }

    public int line() {
        return file.line(start);
    }

    public int column() {
        return file.column(start);
    }

    public String text() {
        return file.text(this);
    }

    /** By file name, then by place. */
    @Override
    public int compareTo(Span other) {
        int byFile = file.name().compareTo(other.file.name());
        if (byFile != 0) {
            return byFile;
        }
        return start != other.start ? Integer.compare(start, other.start) : Integer.compare(end, other.end);
    }

    @Override
    public String toString() {
        return file.name() + ":" + line() + ":" + column();
    }
}
