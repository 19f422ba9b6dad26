package org.ricasso.dsl.vocabulary;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.evaluate.Checker;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Field;
import org.ricasso.shared.quantity.Quantity;

/** Reads the entries of kinds and the settings of operations: their types first, their defaults when names are known. */
final class FieldReader {
    private final Vocabulary vocabulary;
    private final Findings findings;
    private final TypeReader types;

    FieldReader(Vocabulary vocabulary, Findings findings) {
        this.vocabulary = vocabulary;
        this.findings = findings;
        this.types = new TypeReader(vocabulary, findings);
    }

    /** The entries with their types; defaults and ranges are not read yet. */
    Map<String, EntryType> types(List<Field> fields) {
        Map<String, EntryType> result = new LinkedHashMap<>();
        for (Field field : fields) {
            boolean optional = false;
            boolean sized = false;
            String madeAs = null;
            for (Field.Mark mark : field.marks()) {
                if (mark instanceof Field.Mark.Plain plain && plain.word() == Field.Mark.Word.OPTIONAL) {
                    optional = true;
                } else if (mark instanceof Field.Mark.Plain plain && plain.word() == Field.Mark.Word.SIZED) {
                    sized = true;
                } else if (mark instanceof Field.Mark.MadeAs made) {
                    madeAs = made.path().text();
                }
            }
            EntryType entry = new EntryType(field.name().text(), types.read(field.type()), optional, null, null, null, madeAs, sized,
                    field.name().span());
            EntryType earlier = result.putIfAbsent(entry.name(), entry);
            if (earlier != null) {
                findings.add(Diagnostic.error("declared-twice",
                        new Mark(field.name().span(), entry.name() + " is declared twice"))
                        .and(new Mark(earlier.span(), "first here")));
            }
        }
        return result;
    }

    /** The entries with their defaults and ranges, which are checked in {@code scope}. */
    List<EntryType> whole(List<Field> fields, Map<String, EntryType> typed, Scope scope) {
        List<EntryType> result = new ArrayList<>();
        for (Field field : fields) {
            EntryType entry = typed.get(field.name().text());
            if (!entry.span().equals(field.name().span())) {
                continue;
            }
            Node byDefault = null;
            Quantity within = null;
            Quantity usual = null;
            for (Field.Mark mark : field.marks()) {
                if (mark instanceof Field.Mark.Default given) {
                    byDefault = new Checker(vocabulary, scope, findings).check(given.value(), entry.type()).node();
                } else if (mark instanceof Field.Mark.Within given) {
                    within = range(given.value(), entry);
                } else if (mark instanceof Field.Mark.Usual given) {
                    usual = range(given.value(), entry);
                } else if (mark instanceof Field.Mark.MadeAs made && entry.madeAs() != null
                        && vocabulary.productKind() != null && vocabulary.propertyFor(null, entry.madeAs()) == null) {
                    findings.unknownName(made.path().span(), "property", entry.madeAs(),
                            vocabulary.properties().stream().map(p -> p.path()).toList());
                }
            }
            result.add(new EntryType(entry.name(), entry.type(), entry.optional(), byDefault, within, usual, entry.madeAs(), entry.sized(),
                    entry.span()));
        }
        return result;
    }

    private Quantity range(Expression given, EntryType entry) {
        Type type = entry.type() instanceof Type.AlongAxis along ? along.element()
                : entry.type() instanceof Type.ListOf list ? list.element() : entry.type();
        Checker checker = new Checker(vocabulary, Scope.roots(java.util.Set.of()), findings);
        Value value = checker.check(given, type).node().eval(new Frame());
        return value instanceof Value.Num num ? num.quantity() : null;
    }
}
