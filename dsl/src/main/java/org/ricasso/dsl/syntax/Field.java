package org.ricasso.dsl.syntax;

import java.util.List;
import org.ricasso.dsl.source.Span;

/** {@code name: type marks…}: an entry that may be written, a setting, a property or a column. */
public record Field(Name name, TypeName type, List<Mark> marks, Span span) {
    public Field {
        marks = List.copyOf(marks);
    }

    /** A type as written. */
    public sealed interface TypeName {
        Span span();

        /** {@code one of (a, b, c)} */
        record OneOf(List<Name> words, Span span) implements TypeName {
            public OneOf {
                words = List.copyOf(words);
            }
        }

        /** {@code list of steel} */
        record ListOf(TypeName element, Span span) implements TypeName {}

        /** {@code length} or {@code length along blade}; {@code along} is null when not written. */
        record Named(Name name, Name along, Span span) implements TypeName {}
    }

    /** What is said of a field behind its type. */
    public sealed interface Mark {
        Span span();

        /** The plain marks. */
        enum Word { OPTIONAL, SIZED, KEY, HOLDS, BETWEEN, FOUND }

        record Plain(Word word, Span span) implements Mark {}

        /** {@code default …} */
        record Default(Expression value, Span span) implements Mark {}

        /** {@code starts …} */
        record Starts(Expression value, Span span) implements Mark {}

        /** {@code within …}: the sensible range of a setting or entry. */
        record Within(Expression value, Span span) implements Mark {}

        /** {@code usual …}: where a setting or entry usually lies. */
        record Usual(Expression value, Span span) implements Mark {}

        /** {@code made as blade.hardness} */
        record MadeAs(Path path, Span span) implements Mark {}
    }
}
