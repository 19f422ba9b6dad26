package org.ricasso.dsl.evaluate;

import java.util.List;
import org.ricasso.dsl.source.Span;

/** A checked expression, ready to be evaluated. Immutable, shared by threads; all that changes is in the frame. */
public abstract class Node {
    private final Span span;
    private final Type type;

    protected Node(Span span, Type type) {
        this.span = span;
        this.type = type;
    }

    public Type type() {
        return type;
    }

    public Span span() {
        return span;
    }

    /** Evaluates, and records how when the frame is traced. */
    public final Value eval(Frame frame) {
        if (frame.trace == null) {
            return compute(frame);
        }
        frame.trace.enter();
        Value value = compute(frame);
        frame.trace.leave(oneLine(span), value, source(frame, value));
        return value;
    }

    /** What is written at a place, on one line. */
    static String oneLine(Span span) {
        return span.text().strip().replaceAll("\\s*\\R\\s*", " ");
    }

    /** The expression as written, on one line. */
    public String text() {
        return oneLine(span);
    }

    /** The places that the expression reads, each way of writing it once. */
    public List<Input> inputs() {
        return Input.of(parts());
    }

    /** What it is made of. */
    List<Node> parts() {
        return List.of();
    }

    /** For a condition the comparisons of numbers that must all hold for it to hold, as written from left to right. */
    public List<Comparison> comparisons() {
        return List.of();
    }

    protected abstract Value compute(Frame frame);

    /** The rows, formula or place behind the value, for derivations. */
    protected String source(Frame frame, Value value) {
        return "";
    }

    /** A node that is always worth the same. */
    static final class Constant extends Node {
        private final Value value;

        Constant(Span span, Type type, Value value) {
            super(span, type);
            this.value = value;
        }

        Value value() {
            return value;
        }

        @Override
        protected Value compute(Frame frame) {
            return value;
        }
    }
}
