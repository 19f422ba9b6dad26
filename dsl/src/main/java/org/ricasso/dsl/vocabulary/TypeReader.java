package org.ricasso.dsl.vocabulary;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.evaluate.Axis;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.syntax.Field;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.shared.quantity.Measure;

/** Reads types as written. */
final class TypeReader {
    private final Vocabulary vocabulary;
    private final Findings findings;

    TypeReader(Vocabulary vocabulary, Findings findings) {
        this.vocabulary = vocabulary;
        this.findings = findings;
    }

    Type read(Field.TypeName written) {
        if (written instanceof Field.TypeName.OneOf oneOf) {
            List<String> words = oneOf.words().stream().map(Name::text).toList();
            if (Set.copyOf(words).size() < words.size()) {
                findings.error("declared-twice", written.span(), "a word stands twice in the list");
            }
            return new Type.WordsOf(words.stream().distinct().toList());
        }
        if (written instanceof Field.TypeName.ListOf list) {
            return new Type.ListOf(read(list.element()));
        }
        Field.TypeName.Named named = (Field.TypeName.Named) written;
        Type type = named(named.name());
        if (named.along() == null || type == Type.Plain.ANY) {
            return type;
        }
        Axis axis = vocabulary.axes.get(named.along().text());
        if (axis == null) {
            findings.unknownName(named.along().span(), "axis", named.along().text(), vocabulary.axes.keySet());
            return Type.Plain.ANY;
        }
        if (!(type instanceof Type.Measured measured)) {
            findings.error("wrong-type", named.name().span(), "only a number varies along an axis");
            return Type.Plain.ANY;
        }
        return new Type.AlongAxis(measured, axis);
    }

    private Type named(Name name) {
        Measure measure = vocabulary.dimensions.get(name.text());
        if (measure != null) {
            return new Type.Measured(measure, name.text());
        }
        switch (name.text()) {
            case "text":
            case "note":
                // a note is a text that is on no page
                return Type.Plain.TEXT;
            case "date":
                return Type.Plain.DATE;
            case "yes-no":
                return Type.YES_NO;
            case "rate":
                return Type.Plain.RATE;
            case "clock":
                return Type.Plain.CLOCK;
            default:
        }
        if (vocabulary.kinds.containsKey(name.text())) {
            return new Type.ThingOf(name.text());
        }
        Set<String> known = new TreeSet<>(vocabulary.dimensions.keySet());
        known.addAll(vocabulary.kinds.keySet());
        known.addAll(List.of("text", "note", "date", "yes-no", "rate", "clock"));
        findings.unknownName(name.span(), "type", name.text(), known);
        return Type.Plain.ANY;
    }
}
