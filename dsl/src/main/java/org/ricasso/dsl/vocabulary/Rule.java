package org.ricasso.dsl.vocabulary;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Reads;
import org.ricasso.dsl.evaluate.TextNode;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration;

/**
 * A rule, checked against the vocabulary.
 *
 * @param name its name
 * @param title its title
 * @param subject what it is for
 * @param subjectName the operation's or kind's name
 * @param level how grave a breach is
 * @param because its reason
 * @param source where it comes from
 * @param forms for {@link Subject#OPERATION} and {@link Subject#STEP} its form for each operation it applies to
 * @param measured for {@link Subject#MEASUREMENT} its form for each type of limit it applies to
 * @param used for {@link Subject#SETTING} its form for each setting it applies to, by operation and index
 * @param general its form for the product, for a kind, and for its examples
 * @param examples its examples
 * @param syntax how it is written
 */
public record Rule(String name, String title, Subject subject, String subjectName, Level level, String because,
        String source, Map<Operation, Form> forms, Map<Type, Form> measured,
        Map<Operation, Map<Integer, Form>> used, Form general, List<Example> examples, Declaration.RuleDeclaration syntax) {
    public Rule {
        examples = List.copyOf(examples);
        measured = Map.copyOf(measured);
        used = Collections.unmodifiableMap(new IdentityHashMap<>(used));
        forms = Collections.unmodifiableMap(new IdentityHashMap<>(forms));
    }

    public enum Subject { OPERATION, STEP, SETTING, MEASUREMENT, PRODUCT, KIND }

    /** How grave a breach is. Safety is judged on the reach. */
    public enum Level {
        SAFETY(Severity.ERROR), ERROR(Severity.ERROR), WARNING(Severity.WARNING), NOTE(Severity.NOTE);

        private final Severity severity;

        Level(Severity severity) {
            this.severity = severity;
        }

        public Severity severity() {
            return severity;
        }
    }

    /**
     * A rule's expressions, ready for one kind of subject.
     *
     * @param when the condition under which it applies, or null
     * @param lets in-between values in order
     * @param require what must hold
     * @param say what is said of a breach, or null
     * @param reads what {@code require} and the in-between values read
     * @param mark what is marked, or null
     * @param remedy the computed remedy, or null
     * @param asked what {@code when} reads
     */
    public record Form(Node when, List<Node> lets, Node require, TextNode say, Reads reads, Mark mark, Remedy remedy,
            Reads asked) {
        public Form {
            lets = List.copyOf(lets);
        }
    }

    /** A rule in the form that it has for one operation. */
    public record Judged(Rule rule, Form form) {}

    /**
     * An example.
     *
     * @param passes whether the rule is to hold
     * @param bound what it binds, by path as the rule writes it
     * @param form the form of the rule that it is for, or null for the general one
     */
    public record Example(boolean passes, Map<String, Value> bound, Form form, Span span) {
        public Example {
            bound = Map.copyOf(bound);
        }
    }

    /** What a finding marks: a setting by index, or an entry of the product, thing or measurement by path. */
    public record Mark(int setting, String entry) {}

    /** How a remedy changes what it sets. */
    public enum Change { MOST, LEAST, MIDDLE, TOLERANCE, TO }

    /** A computed remedy. */
    public record Remedy(Mark target, Change change, Node value, Span span) {}
}
