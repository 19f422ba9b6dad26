package org.ricasso.plugin;

import java.nio.charset.Charset;
import java.util.List;
import org.apache.maven.plugin.logging.Log;
import org.ricasso.dsl.diagnostics.Diagnostic;

/** Speaks to the log: one finding is one record, at the level of its severity. */
final class Console {
    private final Log log;

    Console(Log log) {
        this.log = log;
    }

    void print(Diagnostic finding) {
        String text = finding.severity().word() + ": " + finding.name() + "\n  " + finding.primary().span() + " " + finding.primary().text();
        switch (finding.severity()) {
            case ERROR -> log.error(text);
            case WARNING -> log.warn(text);
            case NOTE -> log.info(text);
        }
    }

    void print(List<String> lines) {
        log.info(String.join("\n", lines));
    }
}
