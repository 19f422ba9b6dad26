package org.ricasso.dsl.source;

import java.util.Arrays;

/** A text with its name. Positions are UTF-16 offsets; lines and columns are counted from 1. */
public final class SourceFile {
    private final String name;
    private final String text;
    private final boolean shipped;
    /** Counted when somebody asks: of most texts nobody does. Counted twice at once, it is the same. */
    private volatile int[] lineStarts;

    /**
     * @param name the path shown to people, relative, with forward slashes
     * @param text the whole text; a byte order mark is not part of it
     * @param shipped whether the text came with the tool rather than from the works
     */
    public SourceFile(String name, String text, boolean shipped) {
        this.name = name;
        this.text = text;
        this.shipped = shipped;
    }

    private int[] lineStarts() {
        int[] known = lineStarts;
        if (known == null) {
            known = starts(text);
            lineStarts = known;
        }
        return known;
    }

    private static int[] starts(String text) {
        int[] result = new int[16];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n')) {
                if (count == result.length) {
                    result = Arrays.copyOf(result, count * 2);
                }
                result[count++] = i + 1;
            }
        }
        return Arrays.copyOf(result, count);
    }

    public String name() {
        return name;
    }

    public String text() {
        return text;
    }

    public boolean shipped() {
        return shipped;
    }

    public int lineCount() {
        return lineStarts().length;
    }

    /** The line that holds the offset, from 1. */
    public int line(int offset) {
        int index = Arrays.binarySearch(lineStarts(), offset);
        return index >= 0 ? index + 1 : -index - 1;
    }

    /** The column of the offset in code points, from 1. */
    public int column(int offset) {
        int start = lineStarts()[line(offset) - 1];
        return text.codePointCount(start, Math.min(offset, text.length())) + 1;
    }

    /** The offset at which a line begins. */
    public int lineStart(int line) {
        return lineStarts()[line - 1];
    }

    /** A line's text without its end. */
    public String lineText(int line) {
        int start = lineStarts()[line - 1];
        int end = line < lineStarts().length ? lineStarts()[line] : text.length();
        while (end > start && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
            end--;
        }
        return text.substring(start, end);
    }

    public String text(Span span) {
        return text.substring(span.start(), span.end());
    }

    @Override
    public String toString() {
        return name;
    }
}
