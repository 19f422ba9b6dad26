package org.ricasso.dsl.syntax;

import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.IntStream;
import org.antlr.v4.runtime.misc.Interval;

/**
 * A stretch of a text as ANTLR reads it: whole code points, but positions are UTF-16 offsets in the whole text, so that
 * tokens can be turned into spans as they are.
 */
final class OffsetStream implements CharStream {
    private final String name;
    private final String text;
    private final int end;
    private int index;

    OffsetStream(String name, String text, int start, int end) {
        this.name = name;
        this.text = text;
        this.index = start;
        this.end = end;
    }

    @Override
    public void consume() {
        if (index >= end) {
            throw new IllegalStateException("nothing is left to read");
        }
        index += index + 1 < end ? Character.charCount(text.codePointAt(index)) : 1;
    }

    /** The code point at the place, or {@link IntStream#EOF}; the lexer asks for the next one only. */
    @Override
    public int LA(int distance) {
        if (distance <= 0) {
            return distance == 0 || index + distance < 0 ? 0 : text.charAt(index + distance);
        }
        int at = index;
        for (int i = 1; i < distance && at < end; i++) {
            at += Character.charCount(text.codePointAt(at));
        }
        if (at >= end) {
            return IntStream.EOF;
        }
        char first = text.charAt(at);
        return Character.isHighSurrogate(first) && at + 1 < end ? text.codePointAt(at) : first;
    }

    @Override
    public int mark() {
        return -1;
    }

    @Override
    public void release(int marker) {
        // The whole text stays in memory: nothing is held.
    }

    @Override
    public int index() {
        return index;
    }

    @Override
    public void seek(int position) {
        index = position;
    }

    @Override
    public int size() {
        return end;
    }

    @Override
    public String getText(Interval interval) {
        return interval.b < interval.a ? "" : text.substring(interval.a, Math.min(interval.b + 1, end));
    }

    @Override
    public String getSourceName() {
        return name;
    }
}
