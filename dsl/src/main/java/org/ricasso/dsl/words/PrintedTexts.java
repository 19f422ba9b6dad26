package org.ricasso.dsl.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Declaration.ThingDeclaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Field;
import org.ricasso.dsl.syntax.Head;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.dsl.vocabulary.VocabularyLoader;

/** Finds the texts of a house that may be printed, and the names that are shown as labels. */
final class PrintedTexts {
    /** What pages say of their own is declared in the words of the texts' own language, in groups of this kind. */
    static final String PAGE = "page";
    static final String OPERATION = "operation";
    static final String KIND = "kind";
    static final String WORKPIECE = "workpiece";
    private static final String AXIS = "axis";
    private final Vocabulary vocabulary;
    private final Map<String, Printed> found = new LinkedHashMap<>();

    private PrintedTexts(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /**
     * All declarations with texts or names that may be printed, by {@link Printed#key}.
     *
     * @param works whether the works has words, so that its own things are looked through as well
     */
    static Map<String, Printed> of(List<Declaration> declarations, VocabularyLoader.Loaded loaded, boolean works) {
        PrintedTexts texts = new PrintedTexts(loaded.vocabulary());
        texts.pages(declarations);
        loaded.vocabulary().kindNames().forEach(name -> texts.kind(loaded.vocabulary().kind(name)));
        declarations.stream().filter(Declaration.WorkpieceDeclaration.class::isInstance).limit(1)
                .forEach(piece -> texts.workpiece((Declaration.WorkpieceDeclaration) piece));
        loaded.vocabulary().operations().forEach(o -> texts.operation(loaded.vocabulary().operationText(o.name())));
        loaded.vocabulary().rules().forEach(texts::rule);
        for (Declaration declaration : declarations) {
            if (declaration instanceof ThingDeclaration thing && thing.kind().text().equals(AXIS)) {
                texts.axis(thing);
            }
        }
        loaded.routes().values().forEach(texts::route);
        loaded.things().stream().filter(thing -> works || thing.span().file().shipped() || loaded.vocabulary()
                .replaced(thing.kind().text(), thing.head().name().text()) != null).forEach(texts::thing);
        return texts.found;
    }

    private void add(String what, Head head, List<Printed.Line> lines, List<Printed.Label> labels) {
        add(new Printed(what, head.name().text(), head.name().span(), lines, labels));
    }

    private void add(Printed printed) {
        found.putIfAbsent(printed.key(), printed);
    }

    private void pages(List<Declaration> declarations) {
        for (Declaration declaration : declarations) {
            if (declaration instanceof Declaration.WordsDeclaration words && words.language().text().equals(Words.SOURCE)) {
                words.items().stream().filter(Declaration.WordsOf.class::isInstance).map(Declaration.WordsOf.class::cast)
                        .filter(of -> of.what().text().equals(PAGE))
                        .forEach(of -> add(new Printed(PAGE, of.name().text(), of.span(), of.entries().stream()
                                .map(e -> Lines.ofPage(e.path().text(), e.text())).toList(), List.of())));
            }
        }
    }

    private void kind(Declaration.KindDeclaration kind) {
        List<Printed.Line> lines = new ArrayList<>(List.of(Lines.title(kind.head(), true)));
        List<Printed.Label> labels = new ArrayList<>();
        fields(kind.fields(), "", lines, labels);
        add(KIND, kind.head(), lines, labels);
    }

    private void workpiece(Declaration.WorkpieceDeclaration piece) {
        List<Printed.Line> lines = new ArrayList<>();
        List<Printed.Label> labels = new ArrayList<>();
        fields(piece.fields(), "", lines, labels);
        for (Declaration.Part part : piece.parts()) {
            if (part.title() != null) {
                lines.add(Lines.line(part.name().text(), part.title(), true));
            }
            fields(part.fields(), part.name().text() + ".", lines, labels);
        }
        add(new Printed(WORKPIECE, piece.product().text(), piece.product().span(), lines, labels));
    }

    /** Names of fields and of the words that they may hold, and texts that stand where nothing is written. */
    private static void fields(List<Field> fields, String before, List<Printed.Line> lines, List<Printed.Label> labels) {
        for (Field field : fields) {
            if (Lines.isNote(field.type())) {
                continue;
            }
            String path = before + field.name().text();
            labels.add(new Printed.Label(path, field.name().text(), field.name().span()));
            Field.TypeName type = field.type() instanceof Field.TypeName.ListOf list ? list.element() : field.type();
            if (type instanceof Field.TypeName.OneOf words) {
                words.words().forEach(word ->
                        labels.add(new Printed.Label(path + "." + word.text(), word.text(), word.span())));
            }
            for (Field.Mark mark : field.marks()) {
                if (mark instanceof Field.Mark.Default given) {
                    lines.addAll(Lines.of(path + ".default", given.value(), field.type()));
                }
            }
        }
    }

    private void operation(Declaration.OperationDeclaration operation) {
        List<Printed.Line> lines = new ArrayList<>(List.of(Lines.title(operation.head(), true)));
        List<Printed.Label> labels = new ArrayList<>();
        Map<String, Field> attributes = Lines.byName(vocabulary.kind(OPERATION));
        for (Declaration.ValueEntry entry : operation.entries()) {
            Field attribute = attributes.get(entry.name().text());
            lines.addAll(Lines.of(entry.name().text(), entry.value(), attribute == null ? null : attribute.type()));
        }
        fields(operation.takes(), "takes.", lines, labels);
        operation.time().forEach(entry -> labels.addAll(Lines.rates(entry.value())));
        operation.needs().forEach(need ->
                lines.add(Lines.line("needs." + need.path().text(), need.complaint(), true)));
        operation.instruct().forEach(text -> lines.add(Lines.line(Printed.INSTRUCT, text, true)));
        add(OPERATION, operation.head(), lines, labels);
    }

    private void rule(Rule rule) {
        List<Printed.Line> lines = new ArrayList<>(List.of(Lines.title(rule.syntax().head(), true)));
        for (Declaration.ValueEntry entry : rule.syntax().entries()) {
            if (entry.value() instanceof Expression.TextLiteral text) {
                // a reason is said where a finding is, and findings are in the language of the texts
                lines.add(Lines.line(entry.name().text(), text.text(), entry.name().text().equals("say")));
            }
        }
        add("rule", rule.syntax().head(), lines, List.of());
    }

    /** The names of its ends and of places along it stand on pages. */
    private void axis(ThingDeclaration axis) {
        List<Printed.Label> stations = new ArrayList<>();
        List<Printed.Line> lines = new ArrayList<>(List.of(Lines.title(axis.head(), false)));
        for (Block.Item item : axis.block().items()) {
            if (item instanceof Block.Item.Entry entry && entry.value() instanceof Expression.TextLiteral text
                    && List.of("start", "end").contains(entry.path().text())) {
                lines.add(Lines.line(entry.path().text(), text.text(), true));
            } else if (item instanceof Block.Item.Nested nested && nested.name().text().equals("stations")) {
                nested.block().items().stream().filter(Block.Item.Entry.class::isInstance).map(Block.Item.Entry.class::cast)
                        .forEach(entry -> stations.add(new Printed.Label("stations." + entry.path().text(), entry.path().text(),
                                entry.path().span())));
            }
        }
        add(AXIS, axis.head(), lines, stations);
    }

    private void route(Declaration.RouteDeclaration route) {
        ThingTexts texts = new ThingTexts(vocabulary);
        texts.route(route.items());
        add("route", route.head(), texts.lines(), texts.rates());
    }

    private void thing(ThingDeclaration thing) {
        ThingTexts texts = new ThingTexts(vocabulary);
        texts.title(thing.head());
        texts.block("", thing.block(), Lines.byName(vocabulary.kind(thing.kind().text())));
        add(thing.kind().text(), thing.head(), texts.lines(), texts.rates());
    }
}
