package org.ricasso.dsl.evaluate;

import java.util.List;
import java.util.regex.Pattern;
import org.ricasso.dsl.source.Span;

/** A checked expression, ready to be evaluated. Immutable, shared by threads; all that changes is in the frame. */
public abstract class Node {
    private static final Pattern LINE_END = Pattern.compile("\\s*\\R\\s*");
    private final Span span;
    private final Type type;
    /** Found when first asked for; several threads may find it, and find the same. */
    private List<Input> inputs;

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
        frame.trace.leave(span, value, source(frame, value));
        return value;
    }

    /** What is written at a place, on one line. */
    static String oneLine(Span span) {
        String text = span.text().strip();
        return text.indexOf('\n') < 0 && text.indexOf('\r') < 0 ? text : LINE_END.matcher(text).replaceAll(" ");
    }

    /** The expression as written, on one line. */
    public String text() {
        return oneLine(span);
    }

    /** The places that the expression reads, each way of writing it once. */
    public final List<Input> inputs() {
        List<Input> found = inputs;
        if (found == null) {
            found = List.copyOf(places());
            inputs = found;
        }
        return found;
    }

    /** The same, looked for. */
    List<Input> places() {
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
