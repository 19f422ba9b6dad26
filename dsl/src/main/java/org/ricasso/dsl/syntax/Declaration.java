package org.ricasso.dsl.syntax;

import java.util.List;
import org.ricasso.dsl.source.Span;

/** A top-level declaration. {@code span} covers its head, not its block. */
public sealed interface Declaration {
    Span span();

    /** {@code kind blade "Blade" { … }}: which entries things of a kind have. */
    record KindDeclaration(Head head, List<Field> fields, Span span) implements Declaration {
        public KindDeclaration {
            fields = List.copyOf(fields);
        }
    }

    /**
     * {@code workpiece of knife { … }}: what is carried through a route.
     *
     * @param product the kind of thing that a route makes
     */
    record WorkpieceDeclaration(Name product, List<Field> fields, List<Part> parts, Span span) implements Declaration {
        public WorkpieceDeclaration {
            fields = List.copyOf(fields);
            parts = List.copyOf(parts);
        }
    }

    /** {@code operation temper "Temper" { … }}. A section that is not written is empty. */
    record OperationDeclaration(Head head, List<ValueEntry> entries, List<Field> takes, List<Need> needs,
            List<Effect> leaves, List<ValueEntry> time, List<Text> instruct, Span span) implements Declaration {
        public OperationDeclaration {
            entries = List.copyOf(entries);
            takes = List.copyOf(takes);
            needs = List.copyOf(needs);
            leaves = List.copyOf(leaves);
            time = List.copyOf(time);
            instruct = List.copyOf(instruct);
        }
    }

    /** {@code table tempering "…" { columns { … } from: … }}; {@code rows} is the grid written in place, or null. */
    record TableDeclaration(Head head, List<Field> columns, List<ValueEntry> entries, Grid rows, Span span)
            implements Declaration {
        public TableDeclaration {
            columns = List.copyOf(columns);
            entries = List.copyOf(entries);
        }
    }

    /** {@code rule web "…" { … }}: its lets, entries, remedy and examples; {@code remedy} is empty when not written. */
    record RuleDeclaration(Head head, List<Effect.Let> lets, List<ValueEntry> entries, List<ValueEntry> remedy,
            Span remedySpan, List<Example> examples, Span span) implements Declaration {
        public RuleDeclaration {
            lets = List.copyOf(lets);
            entries = List.copyOf(entries);
            remedy = List.copyOf(remedy);
            examples = List.copyOf(examples);
        }
    }

    /** {@code route forged "…" { … }}: steps that routes of products take over. */
    record RouteDeclaration(Head head, List<RouteItem> items, Span span) implements Declaration {
        public RouteDeclaration {
            items = List.copyOf(items);
        }
    }

    /** {@code knife cooks-200 "…" { … }}: a thing of a declared kind. */
    record ThingDeclaration(Name kind, Head head, Block block, Span span) implements Declaration {}

    /** {@code words de { … }}: another language's words for what is printed. */
    record WordsDeclaration(Name language, List<WordsItem> items, Span span) implements Declaration {
        public WordsDeclaration {
            items = List.copyOf(items);
        }
    }

    /** A line of {@code words}. */
    sealed interface WordsItem {
        Span span();
    }

    /** {@code path: "…"}: a word, a property, an entry, or one text of a declaration. */
    record Translation(Path path, Text text, Span span) implements WordsItem {}

    /**
     * {@code operation temper "Anlassen" { … }}
     *
     * @param what the kind of declaration: operation, rule, kind, workpiece, or a thing's kind
     * @param name its name
     * @param title its title in the language, or {@code null}
     * @param entries its texts by path; {@code of} is the fingerprint of what they translate
     * @param instruct its work, line by line
     * @param span the name
     */
    record WordsOf(Name what, Name name, Text title, List<Translation> entries, List<Text> instruct, Span span)
            implements WordsItem {
        public WordsOf {
            entries = List.copyOf(entries);
            instruct = List.copyOf(instruct);
        }
    }

    /** A part of the workpiece with its own properties. */
    record Part(Name name, Text title, List<Field> fields) {
        public Part {
            fields = List.copyOf(fields);
        }
    }

    /** {@code word: value} in an operation, a rule, a remedy or a table. */
    record ValueEntry(Name name, Expression value, Span span) {}

    /** {@code path: condition else "…"}. {@code complaint} says what happens otherwise. */
    record Need(Path path, Expression condition, Text complaint, Span span) {}

    /** A line of {@code leaves}. */
    sealed interface Effect {
        Span span();

        /** {@code let size: …} */
        record Let(Name name, Expression value, Span span) implements Effect {}

        /** {@code spine: …} */
        record Leave(Path path, Expression value, Span span) implements Effect {}
    }

    /** {@code example passes { … }}; {@code outcome} is as written. */
    record Example(Name outcome, List<Binding> bindings, Span span) {
        public Example {
            bindings = List.copyOf(bindings);
        }
    }

    /** {@code path: value} in an example; {@code value} may also be a grid. */
    record Binding(Path path, EntryValue value, Span span) {}
}
