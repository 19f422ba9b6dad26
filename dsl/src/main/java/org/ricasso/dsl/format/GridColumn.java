package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The cells of a grid's column as text. Where all below the head are numbers of one form, their decimal signs, tolerances
 * and units stand below each other; else they begin at the left.
 */
final class GridColumn {
    private GridColumn() {}

    /** @param cells the column, its head first */
    static List<String> texts(List<List<Piece>> cells) {
        List<LiteralSigns> numbers = new ArrayList<>();
        for (List<Piece> cell : cells.subList(1, cells.size())) {
            LiteralSigns literal = LiteralSigns.at(cell, 0);
            if (!cell.isEmpty() && (literal == null || literal.end() != cell.size() || !literal.firstUnit().isEmpty())) {
                return cells.stream().map(Spacing::flat).toList();
            }
            numbers.add(literal);
        }
        List<LiteralSigns> written = numbers.stream().filter(n -> n != null).toList();
        boolean ranges = written.stream().anyMatch(n -> n.form().equals(".."));
        if (ranges && !written.stream().allMatch(n -> n.form().equals(".."))) {
            return cells.stream().map(Spacing::flat).toList();
        }
        List<String> result = new ArrayList<>();
        result.add(Spacing.flat(cells.get(0)));
        result.addAll(ranges ? ranges(numbers) : toleranced(numbers));
        return result;
    }

    private static List<String> ranges(List<LiteralSigns> numbers) {
        List<String> low = right(texts(numbers, LiteralSigns::first));
        List<String> high = left(texts(numbers, LiteralSigns::second));
        List<String> units = texts(numbers, LiteralSigns::unit);
        List<String> result = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            result.add(numbers.get(i) == null ? "" : (low.get(i) + ".." + high.get(i) + " " + units.get(i)).stripTrailing());
        }
        return result;
    }

    private static List<String> toleranced(List<LiteralSigns> numbers) {
        List<String> first = decimal(texts(numbers, LiteralSigns::first));
        List<String> forms = texts(numbers, LiteralSigns::form);
        List<String> seconds = texts(numbers, LiteralSigns::second);
        boolean plain = forms.stream().noneMatch("("::equals);
        List<String> second = plain ? decimal(seconds) : seconds;
        List<String> tolerances = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            tolerances.add(forms.get(i).isEmpty() ? "" : forms.get(i).equals("±") ? " ± " + second.get(i)
                    : " " + second.get(i));
        }
        tolerances = left(tolerances);
        List<String> units = texts(numbers, LiteralSigns::unit);
        List<String> result = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            String unit = units.get(i).isEmpty() ? "" : " " + units.get(i);
            result.add(numbers.get(i) == null ? "" : (first.get(i) + tolerances.get(i) + unit).stripTrailing());
        }
        return result;
    }

    private static List<String> texts(List<LiteralSigns> numbers, Function<LiteralSigns, String> part) {
        return numbers.stream().map(n -> n == null ? "" : part.apply(n)).toList();
    }

    /** Numbers with their decimal signs below each other. */
    private static List<String> decimal(List<String> numbers) {
        List<String> whole = right(numbers.stream().map(n -> n.contains(".") ? n.substring(0, n.indexOf('.')) : n).toList());
        List<String> part = left(numbers.stream().map(n -> n.contains(".") ? n.substring(n.indexOf('.')) : "").toList());
        List<String> result = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            result.add(whole.get(i) + part.get(i));
        }
        return result;
    }

    private static List<String> left(List<String> texts) {
        int width = width(texts);
        return texts.stream().map(t -> t + " ".repeat(width - Line.width(t))).toList();
    }

    private static List<String> right(List<String> texts) {
        int width = width(texts);
        return texts.stream().map(t -> " ".repeat(width - Line.width(t)) + t).toList();
    }

    private static int width(List<String> texts) {
        return texts.stream().mapToInt(Line::width).max().orElse(0);
    }
}
