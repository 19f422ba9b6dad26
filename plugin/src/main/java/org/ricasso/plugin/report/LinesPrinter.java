package org.ricasso.plugin.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;

/** Lays JSON out so that one fact stands on one line: indented down to where a fact begins, and a line from there on. */
final class LinesPrinter extends DefaultPrettyPrinter {
    private static final long serialVersionUID = 1L;
    private static final Separators PLAIN = Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER).withObjectEmptySeparator("").withArrayEmptySeparator("");
    private final Lines lines;

    LinesPrinter() {
        this(new Lines());
    }

    private LinesPrinter(Lines lines) {
        super(PLAIN);
        this.lines = lines;
        _objectIndenter = lines;
        _arrayIndenter = lines;
    }

    /** What is written from here on stands on one line. */
    void beginLine() {
        lines.inside++;
    }

    void endLine() {
        lines.inside--;
    }

    private static final class Lines implements Indenter {
        private int inside;

        @Override
        public void writeIndentation(JsonGenerator json, int level) throws IOException {
            if (inside == 0) {
                json.writeRaw('\n');
                for (int i = 0; i < level; i++) {
                    json.writeRaw(' ');
                }
            }
        }

        @Override
        public boolean isInline() {
            return false;
        }
    }
}
