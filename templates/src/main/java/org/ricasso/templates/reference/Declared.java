package org.ricasso.templates.reference;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.syntax.Declaration.ThingDeclaration;
import org.ricasso.dsl.syntax.Parser;

/** Declarations that are not things of a kind and of which the vocabulary keeps no text: dimensions, units and axes. */
record Declared(List<ThingDeclaration> all) {
    private static final Set<String> KINDS = Set.of("dimension", "unit", "axis");

    static Declared of(Texts texts) {
        return new Declared(texts.inOrder().stream().flatMap(text -> Parser.parse(text).tree().declarations().stream())
                .filter(ThingDeclaration.class::isInstance).map(ThingDeclaration.class::cast)
                .filter(d -> KINDS.contains(d.kind().text()))
                .sorted(Comparator.comparing(Declared::key)).toList());
    }

    static String key(ThingDeclaration declaration) {
        return declaration.kind().text() + "." + declaration.head().name().text();
    }

    List<ThingDeclaration> of(String kind) {
        return all.stream().filter(d -> d.kind().text().equals(kind)).toList();
    }
}
