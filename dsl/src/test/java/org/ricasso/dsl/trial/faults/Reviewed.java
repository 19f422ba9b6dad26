package org.ricasso.dsl.trial.faults;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.regex.Pattern;
import org.ricasso.dsl.diagnostics.Severity;

/**
 * Cases in which second opinion and check differ, read by a person: who is right, and why. {@code disagreements.txt} holds one a
 * line: kind, what was done (a star stands for anything), who is right, the reason.
 */
final class Reviewed {
    private record Case(String kind, Pattern what, boolean checkIsRight, String line) {}

    private final List<Case> cases = new ArrayList<>();
    private final Set<String> used = new ConcurrentSkipListSet<>();

    Reviewed() {
        try (InputStream in = Reviewed.class.getResourceAsStream("disagreements.txt")) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(l -> !l.isBlank() && !l.startsWith("#")).forEach(line -> {
                String[] cells = line.split("\\|");
                if (cells.length != 4 || cells[3].isBlank() || !List.of("check", "opinion").contains(cells[2].strip())) {
                    throw new AssertionError("kind | what | check or opinion | reason: " + line);
                }
                cases.add(new Case(cells[0].strip(), Pattern.compile(Pattern.quote(cells[1].strip()).replace("*", "\\E.*\\Q")),
                        cells[2].strip().equals("check"), line));
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The outcome as it counts: where the check is right, the knife is what the check says of it. */
    Outcome judged(Outcome outcome) {
        if (outcome.agreed()) {
            return outcome;
        }
        for (Case one : cases) {
            if (one.kind.equals(outcome.fault().kind()) && one.what.matcher(outcome.fault().what()).matches()) {
                used.add(one.line);
                if (one.checkIsRight) {
                    return outcome.as(outcome.found().stream().anyMatch(d -> d.severity() == Severity.ERROR));
                }
            }
        }
        return outcome;
    }

    /** Cases that no fault met. */
    Set<String> unused() {
        Set<String> unused = new TreeSet<>();
        cases.stream().map(Case::line).filter(l -> !used.contains(l)).forEach(unused::add);
        return unused;
    }
}
