package org.ricasso.dsl.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;

/** Cases in texts: what is printed of them is compared with the fence {@code prints} beside them, or written into it. */
final class Cases {
    private Cases() {}

    static String printed(List<Diagnostic> findings) {
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
        return String.join("", findings.stream().map(printer::print).toList());
    }

    /** @param said what stands in the case's fence {@code prints}; empty where it has none */
    static void prints(Path text, String name, String said, String printed) {
        if (!"write".equals(System.getProperty("ricasso.golden"))) {
            assertThat(printed).as("%s in %s; if the change is meant, write it anew with -Dricasso.golden=write", name, text)
                    .isEqualTo(said);
        } else if (!printed.equals(said)) {
            write(text, name, printed);
            fail("written anew, look at what changed: " + name + " in " + text);
        }
    }

    private static void write(Path text, String name, String printed) {
        try {
            String whole = Files.readString(text, StandardCharsets.UTF_8).replace("\r\n", "\n");
            Matcher section = Pattern.compile("(?ms)^## " + Pattern.quote(name) + "(?: \\(\\w+\\))?$.*?(?=^## |\\z)").matcher(whole);
            assertThat(section.find()).as("section %s of %s", name, text).isTrue();
            String fence = "```prints\n" + printed + "```\n";
            String old = section.group().replaceFirst("(?ms)^```prints\n.*?^```\n", "");
            // behind what gives it, or behind what is asked
            Matcher before = Pattern.compile("(?ms)\\A.*^```(?:gives|asks)\n.*?^```\n").matcher(old);
            assertThat(before.find()).as("a fence gives or asks in section %s of %s", name, text).isTrue();
            String now = old.substring(0, before.end()) + fence + old.substring(before.end());
            Files.writeString(text, whole.substring(0, section.start()) + now + whole.substring(section.end()),
                    StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
