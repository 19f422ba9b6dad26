package org.ricasso.plugin;

import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.maven.plugin.logging.Log;
import org.apache.maven.shared.utils.logging.MessageUtils;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;

/**
 * Speaks to the log: one finding is one record at the level of its severity, in colour only when Maven writes colour,
 * and in signs that the console can show.
 */
final class Console {
    private final Log log;
    private final DiagnosticPrinter printer;

    Console(Log log) {
        this(log, charset(), MessageUtils.isColorEnabled());
    }

    Console(Log log, Charset charset, boolean colour) {
        this.log = log;
        this.printer = new DiagnosticPrinter(charset, colour);
    }

    void print(Diagnostic finding) {
        String text = printer.print(finding).stripTrailing();
        switch (finding.severity()) {
            case ERROR -> log.error(text);
            case WARNING -> log.warn(text);
            case NOTE -> log.info(text);
        }
    }

    /** Lines as one record. */
    void print(List<String> lines) {
        log.info(lines.stream().map(printer::show).collect(Collectors.joining("\n")));
    }

    /**
     * What the stream of the log is written in. Java names it {@code stdout.encoding} from 19 on; before, a console
     * may have its own under an older name, and all else is written in the default.
     */
    private static Charset charset() {
        for (String property : List.of("stdout.encoding", "sun.stdout.encoding")) {
            String name = System.getProperty(property, "");
            if (!name.isEmpty()) {
                try {
                    return Charset.forName(name);
                } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
                    continue;
                }
            }
        }
        return Charset.defaultCharset();
    }
}
