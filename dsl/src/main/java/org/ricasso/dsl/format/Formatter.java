package org.ricasso.dsl.format;

import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.ParseResult;
import org.ricasso.dsl.syntax.Parser;

/**
 * Lays a text out, in the only way there is.
 *
 * <p>Four blanks a block; one fact a line, unless a whole block was written on one line and fits; values, marks, comments
 * and the columns of grids below each other; at most one empty line. What a text says never changes: the result is read
 * again and compared. Laid out twice it is the same as once.
 */
public final class Formatter {
    private Formatter() {}

    /**
     * Lays a text out.
     *
     * @param file the text, with line ends of any kind
     * @throws IllegalStateException if the result would not say the same, which is a fault of this class
     */
    public static Formatted format(SourceFile file) {
        ParseResult read = Parser.parse(file);
        if (!read.diagnostics().isEmpty()) {
            return new Formatted(file.text(), read.diagnostics());
        }
        StringBuilder text = new StringBuilder(file.text().length() + 256);
        BlockLayout.lines(BlockReader.read(file)).forEach(line -> text.append(line).append('\n'));
        SameMeaning.require(file, new SourceFile(file.name(), text.toString(), file.shipped()));
        return new Formatted(text.toString(), read.diagnostics());
    }
}
