package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.EntryValue;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Field;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.syntax.Head;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.syntax.Path;
import org.ricasso.dsl.syntax.RouteItem;
import org.ricasso.dsl.syntax.Step;
import org.ricasso.dsl.syntax.Text;

/** Trees made by chance, of all forms of the language; nothing in them has a place. */
final class RandomTree {
    private static final String[] WORDS = {"a", "steel", "as-quenched", "since-quench", "hold", "größe", "x2", "spine-to",
        "blade", "knife", "a-rather-long-name-for-a-thing", "N", "weichgeglüht"};
    private static final String[] CLAUSES = {"at", "key", "max", "min", "time", "to", "of", "let", "part", "starts", "found"};
    private static final String[] DIGITS = {"0", "5", "12", "180", "2.8", "0.30", "0.005", "1.50", "1140", "-70", "-0.3"};
    private static final String[] UNITS = {"mm", "°C", "%", "HRC", "min", "µm", "N/mm²", "°", "l/min"};
    private static final String[] PLAIN = {"Cook's knife", "a // b", "; | }", "µ ± °", "“quoted”", "\"", "\\", "{", "\uD83D\uDD2A",
        "no", " two  blanks ", "0.3 mm"};

    private final Random random;
    private final RandomExpression expressions;

    RandomTree(Random random) {
        this.random = random;
        this.expressions = new RandomExpression(random, this);
    }

    List<Declaration> declarations() {
        return list(0, 4, this::declaration);
    }

    <T> List<T> list(int least, int most, Supplier<T> element) {
        List<T> result = new ArrayList<>();
        int size = least + random.nextInt(most - least + 1);
        for (int i = 0; i < size; i++) {
            result.add(element.get());
        }
        return result;
    }

    boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T perhaps(int percent, Supplier<T> value) {
        return chance(percent) ? value.get() : null;
    }

    Name word() {
        return new Name(WORDS[random.nextInt(WORDS.length)], null);
    }

    /** A word that may lead a clause elsewhere. */
    Name anyWord() {
        return chance(15) ? new Name(CLAUSES[random.nextInt(CLAUSES.length)], null) : word();
    }

    Name name() {
        return chance(20) ? new Name(chance(50) ? "1.4116" : "20", null) : word();
    }

    String digits() {
        return DIGITS[random.nextInt(DIGITS.length)];
    }

    Name unit() {
        return new Name(UNITS[random.nextInt(UNITS.length)], null);
    }

    Path path() {
        return new Path(list(1, 3, this::anyWord), null);
    }

    Text text(boolean holes) {
        List<Text.Piece> pieces = new ArrayList<>();
        int size = 1 + random.nextInt(3);
        for (int i = 0; i < size; i++) {
            boolean hole = holes && chance(40);
            if (hole) {
                pieces.add(new Text.Hole(expressions.hole()));
            } else if (pieces.isEmpty() || pieces.get(pieces.size() - 1) instanceof Text.Hole) {
                pieces.add(new Text.Plain(PLAIN[random.nextInt(PLAIN.length)].repeat(1 + random.nextInt(2))));
            }
        }
        return new Text(pieces, null);
    }

    private Text plainText() {
        return text(false);
    }

    private Head head() {
        return new Head(name(), perhaps(60, this::plainText), perhaps(20, this::name), perhaps(10, this::name));
    }

    private Declaration declaration() {
        return switch (random.nextInt(9)) {
            case 0 -> new Declaration.KindDeclaration(head(), list(0, 5, this::field), null);
            case 1 -> new Declaration.WorkpieceDeclaration(word(), list(0, 4, this::field), list(0, 2, this::part), null);
            case 2 -> operation();
            case 3 -> table();
            case 4 -> rule();
            case 5 -> new Declaration.RouteDeclaration(head(), routeItems(), null);
            case 6 -> new Declaration.WordsDeclaration(word(), list(0, 3, this::wordsItem), null);
            default -> new Declaration.ThingDeclaration(chance(10) ? new Name("family", null) : word(), head(), block(0), null);
        };
    }

    private Declaration.Part part() {
        return new Declaration.Part(word(), perhaps(50, this::plainText), list(0, 4, this::field));
    }

    private Declaration operation() {
        return new Declaration.OperationDeclaration(head(), list(0, 4, this::valueEntry), list(0, 4, this::field),
                list(0, 3, this::need), list(0, 4, this::effect), list(0, 2, this::valueEntry),
                list(0, 3, () -> text(true)), null);
    }

    private Declaration table() {
        return new Declaration.TableDeclaration(head(), list(0, 5, this::field), list(0, 3, this::valueEntry),
                perhaps(40, this::grid), null);
    }

    private Declaration rule() {
        return new Declaration.RuleDeclaration(head(), list(0, 2, this::let), list(0, 4, this::valueEntry),
                list(0, 2, this::valueEntry), null, list(0, 2, this::example), null);
    }

    private Declaration.Example example() {
        return new Declaration.Example(word(), list(0, 4, () -> new Declaration.Binding(path(), entryValue(), null)), null);
    }

    private Declaration.ValueEntry valueEntry() {
        return new Declaration.ValueEntry(word(), expressions.value(), null);
    }

    private Declaration.Need need() {
        return new Declaration.Need(path(), expressions.value(), text(true), null);
    }

    private Declaration.Effect effect() {
        return chance(30) ? let() : new Declaration.Effect.Leave(new Path(list(1, 2, this::word), null), expressions.value(), null);
    }

    private Declaration.Effect.Let let() {
        return new Declaration.Effect.Let(word(), expressions.value(), null);
    }

    private Declaration.WordsItem wordsItem() {
        if (chance(40)) {
            return translation();
        }
        String[] whats = {"operation", "rule", "kind", "steel"};
        Name what = new Name(whats[random.nextInt(whats.length)], null);
        return new Declaration.WordsOf(what, name(), perhaps(60, this::plainText), list(0, 3, this::translation),
                list(0, 2, this::plainText), null);
    }

    private Declaration.Translation translation() {
        return new Declaration.Translation(new Path(list(1, 2, this::word), null), text(true), null);
    }

    private Field field() {
        List<Field.Mark> marks = list(0, 2, this::mark);
        return new Field(word(), type(0), marks, null);
    }

    private Field.TypeName type(int depth) {
        return switch (random.nextInt(depth > 2 ? 2 : 5)) {
            case 0 -> new Field.TypeName.OneOf(list(1, 5, this::word), null);
            case 1, 2, 3 -> new Field.TypeName.Named(word(), perhaps(20, this::word), null);
            default -> new Field.TypeName.ListOf(type(depth + 1), null);
        };
    }

    private Field.Mark mark() {
        return switch (random.nextInt(8)) {
            case 0 -> new Field.Mark.Default(expressions.operand(2), null);
            case 1 -> new Field.Mark.Starts(expressions.operand(2), null);
            case 2 -> new Field.Mark.Within(expressions.literal(), null);
            case 3 -> new Field.Mark.MadeAs(new Path(list(1, 2, this::word), null), null);
            case 4 -> new Field.Mark.Usual(expressions.literal(), null);
            default -> new Field.Mark.Plain(Field.Mark.Word.values()[random.nextInt(6)], null);
        };
    }

    Block block(int depth) {
        return new Block(list(0, depth > 2 ? 2 : 5, () -> item(depth)), null);
    }

    private Block.Item item(int depth) {
        int kind = random.nextInt(10);
        if (kind < 7 || depth > 3) {
            return new Block.Item.Entry(path(), entryValue(), null);
        }
        return kind < 9 ? new Block.Item.Nested(word(), block(depth + 1), null)
                : new Block.Item.Route(perhaps(40, this::name), routeItems(), null);
    }

    private List<RouteItem> routeItems() {
        return list(0, 4, this::routeItem);
    }

    private RouteItem routeItem() {
        Step step = new Step(new Name(Integer.toString(random.nextInt(400)), null), word(), perhaps(60, this::name),
                chance(60) ? block(2) : new Block(List.of(), null), null);
        return switch (random.nextInt(10)) {
            case 0 -> new RouteItem.Change(step, null);
            case 1 -> new RouteItem.Add(step, null);
            case 2 -> new RouteItem.Omit(step, null);
            case 3 -> new RouteItem.Rework(new Name("200", null), new Name("180", null), block(2), null);
            case 4 -> new RouteItem.Part(word(), name(), null);
            default -> new RouteItem.Own(step, null);
        };
    }

    private EntryValue entryValue() {
        return chance(12) ? grid() : expressions.value();
    }

    private Grid grid() {
        int columns = 1 + random.nextInt(3);
        List<Path> head = list(columns, columns, () -> {
            List<Name> names = new ArrayList<>(List.of(word()));
            names.addAll(list(0, 2, this::name));
            return new Path(names, null);
        });
        int style = random.nextInt(3);
        List<Grid.Row> rows = list(0, 3, () -> new Grid.Row(list(columns, columns, () -> cell(style)), null));
        return new Grid(head, rows, null);
    }

    private Expression cell(int style) {
        return chance(10) ? null : style == 0 ? expressions.value() : style == 1 ? expressions.literal() : expressions.range();
    }
}
