package org.ricasso.dsl.vocabulary;

import java.util.List;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Checker;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Field;

/** Reads what is carried through a route. */
final class WorkpieceReader {
    private final Vocabulary vocabulary;
    private final Findings findings;
    private final TypeReader types;

    WorkpieceReader(Vocabulary vocabulary, Findings findings) {
        this.vocabulary = vocabulary;
        this.findings = findings;
        this.types = new TypeReader(vocabulary, findings);
    }

    /** Says which kind is the product; before anything is checked that speaks of it. */
    void product(Declaration.WorkpieceDeclaration workpiece) {
        String product = workpiece.product().text();
        if (!vocabulary.kinds.containsKey(product)) {
            findings.unknownName(workpiece.product().span(), "kind", product, vocabulary.kindNames());
            return;
        }
        vocabulary.productKind = product;
    }

    /** Reads the properties; what they start with is checked when all names are known. */
    void properties(Declaration.WorkpieceDeclaration workpiece) {
        add(null, workpiece.fields());
        for (Declaration.Part part : workpiece.parts()) {
            String name = part.name().text();
            String title = part.title() == null ? name : part.title().written();
            if (vocabulary.parts.putIfAbsent(name, title) != null) {
                findings.error("declared-twice", part.name().span(), "a part is named " + name + " already");
                continue;
            }
            add(name, part.fields());
        }
        vocabulary.properties.forEach(this::wordsApart);
    }

    private void add(String part, List<Field> fields) {
        Scope scope = Scope.made(vocabulary.productKind == null ? Set.of() : Set.of(vocabulary.productKind));
        for (Field field : fields) {
            Type type = types.read(field.type());
            Node starts = null;
            for (Field.Mark mark : field.marks()) {
                if (mark instanceof Field.Mark.Starts given) {
                    starts = new Checker(vocabulary, scope, findings).check(given.value(), type).node();
                }
            }
            Property property = new Property(vocabulary.properties.size(), part, field.name().text(), type, starts,
                    field.name().span());
            Property earlier = vocabulary.property(part, property.name());
            if (earlier != null || part == null && vocabulary.parts.containsKey(property.name())) {
                findings.error("declared-twice", field.name().span(), property.path() + " is declared twice");
                continue;
            }
            vocabulary.add(property);
        }
    }

    /** A property may not share its name with a word that it, or a property beside it, could be compared to. */
    private void wordsApart(Property property) {
        for (Property other : vocabulary.properties) {
            boolean together = other.part() == null || property.part() == null || other.part().equals(property.part());
            if (together && other.type() instanceof Type.WordsOf words && words.words().contains(property.name())) {
                findings.add(Diagnostic.error("name-clash", new Mark(property.span(),
                        property.name() + " is a property and also a word of " + other.path()))
                        .and(new Mark(other.span(), "the word stands here")));
            }
        }
    }
}
