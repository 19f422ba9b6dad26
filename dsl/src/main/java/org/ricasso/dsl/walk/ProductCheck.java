package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.vocabulary.Vocabulary;

/**
 * Checks one product: walks its route, tries remedies by walking again, and puts together what has one cause: findings on
 * one value, and findings that go with the same remedy.
 */
final class ProductCheck {
    private static final int REMEDIES = 2;
    private static final int MARKS = 4;
    private final Vocabulary vocabulary;
    private final Thing product;
    private final Route route;
    private final Practice practice;

    /** @param practice how the house does things, for remedies */
    ProductCheck(Vocabulary vocabulary, Thing product, Route route, Practice practice) {
        this.practice = practice;
        this.vocabulary = vocabulary;
        this.product = product;
        this.route = route;
    }

    /** @param pages whether what its pages need is kept: its steps */
    CheckedProduct check(boolean pages) {
        Walk walk = new Walk(vocabulary, route, Changes.none(product)).withMargins().run();
        List<Outcome> outcomes = new Characteristics(walk).judge();
        List<Diagnostic> diagnostics = new ArrayList<>();
        groups(walk, practice).forEach(group -> diagnostics.add(group.diagnostic(walk)));
        diagnostics.sort(Diagnostic.ORDER);
        return new CheckedProduct(product, pages ? new StepPages(walk).steps() : List.of(), outcomes, walk.judgements, diagnostics,
                pages ? StepPages.loops(route) : List.of());
    }

    private static List<Group> groups(Walk walk, Practice practice) {
        Attempts attempts = new Attempts(walk, practice);
        Map<Span, Group> byPlace = new LinkedHashMap<>();
        Map<Finding, Group> byFinding = new IdentityHashMap<>();
        Map<Finding, List<Attempts.Held>> remedies = new LinkedHashMap<>();
        walk.findings.forEach(f -> remedies.put(f, attempts.of(f)));
        for (Finding suspect : walk.suspects) {
            if (standsAlone(suspect, remedies)) {
                remedies.put(suspect, attempts.of(suspect));
            }
        }
        for (Map.Entry<Finding, List<Attempts.Held>> entry : remedies.entrySet()) {
            Finding finding = entry.getKey();
            List<Attempts.Held> held = entry.getValue();
            Finding placed = placed(finding, held);
            Group group = byPlace.computeIfAbsent(placed.primary(), place -> new Group());
            group.findings.put(finding, placed);
            // what mends an error comes before what mends a warning
            group.held.addAll(finding.severity() == Severity.ERROR ? group.errorRemedies : group.held.size(), held);
            group.errorRemedies += finding.severity() == Severity.ERROR ? held.size() : 0;
            byFinding.put(finding, group);
        }
        // what hurts somebody is not kept silent because a need tells of the same
        walk.suspects.stream().filter(s -> s.safety() && !byFinding.containsKey(s)).forEach(suspect -> walk.findings.stream()
                .filter(f -> f.isOfNeed() && suspect.about().containsAll(f.about())).limit(1)
                .forEach(f -> byFinding.get(f).findings.put(suspect, suspect)));
        List<Group> groups = new ArrayList<>(byPlace.values());
        for (Group group : List.copyOf(groups)) {
            if (groups.contains(group) && group.severity() == Severity.ERROR) {
                Set<Finding> clears = new LinkedHashSet<>();
                group.held.stream().filter(h -> h.clears().containsAll(group.gravest())).forEach(h -> clears.addAll(h.clears()));
                for (Finding cleared : clears) {
                    Group other = byFinding.get(cleared);
                    if (other != null && other != group && clears.containsAll(other.findings.keySet())) {
                        group.take(other, byFinding);
                        groups.remove(other);
                    }
                }
            }
        }
        return groups;
    }

    /** Whether a finding on a value that was wrong already stays when each error before it is mended. */
    private static boolean standsAlone(Finding suspect, Map<Finding, List<Attempts.Held>> remedies) {
        return remedies.entrySet().stream().filter(e -> e.getKey().severity() == Severity.ERROR).allMatch(e ->
                !e.getValue().isEmpty() && e.getValue().stream().noneMatch(held -> held.clears().contains(suspect)));
    }

    /** A characteristic that is missed is marked at the setting that can bring it right. */
    private static Finding placed(Finding finding, List<Attempts.Held> held) {
        if (held.isEmpty() || held.get(0).setting() == null
                || !finding.isSearched()) {
            return finding;
        }
        return asked(finding, held.get(0).setting());
    }

    private static Finding asked(Finding finding, Span place) {
        Finding moved = finding.at(place, "asked for here");
        List<Mark> others = new ArrayList<>(moved.others());
        // that the step of the setting left it so is said by the place already
        others.removeIf(m -> m.span().file().equals(moved.primary().file()) && m.span().line() == moved.primary().line());
        return new Finding(moved.name(), moved.severity(), moved.primary(),
                moved.text().replace(Characteristics.ASKED, ""), others, moved.because(), moved.sources(), moved.attempts(),
                moved.about(), moved.safety());
    }

    /** Findings that become one diagnostic. */
    private static final class Group {
        /** As found, and as placed. */
        private final Map<Finding, Finding> findings = new LinkedHashMap<>();
        private final List<Attempts.Held> held = new ArrayList<>();
        private int errorRemedies;

        private Severity severity() {
            return findings.keySet().stream().map(Finding::severity).min(Severity::compareTo).orElseThrow();
        }

        /** What a remedy has to clear: the errors, or the warnings where there is none. */
        private List<Finding> gravest() {
            Severity severity = severity();
            return findings.keySet().stream().filter(f -> f.severity() == severity).toList();
        }

        private void take(Group other, Map<Finding, Group> byFinding) {
            findings.putAll(other.findings);
            held.addAll(other.held);
            other.findings.keySet().forEach(f -> byFinding.put(f, this));
        }

        private Diagnostic diagnostic(Walk walk) {
            List<Finding> placed = new ArrayList<>(findings.values());
            Span moved = held.stream().filter(h -> h.clears().containsAll(gravest())).limit(1).map(Attempts.Held::moved)
                    .filter(Objects::nonNull).findFirst().orElse(null);
            Finding lead = lead(placed, moved);
            Diagnostic result = alone(walk, moved == null || !lead.isSearched() ? lead : asked(lead, moved));
            for (Finding other : placed) {
                if (other != lead) {
                    result = together(result, alone(walk, other));
                }
            }
            for (Attempts.Held one : held) {
                if (!one.edge().isEmpty() && one.setting().equals(result.primary().span())) {
                    result = result.because(one.edge());
                    break;
                }
            }
            Set<List<?>> known = new LinkedHashSet<>();
            for (Attempts.Held one : held) {
                if (known.size() < REMEDIES && one.clears().containsAll(gravest()) && known.add(one.remedy().edits())) {
                    result = result.remedy(one.remedy());
                }
            }
            return result;
        }

        /** What is said of the step that stands at the wrong place before others; but what hurts somebody before a need that is not met. */
        private Finding lead(List<Finding> placed, Span moved) {
            List<Finding> gravest = placed.stream().filter(f -> f.severity() == severity()).toList();
            Finding lead = gravest.stream().filter(f -> f.primary().equals(moved)).findFirst()
                    .or(() -> gravest.stream().filter(f -> f.primary().equals(placed.get(0).primary())).findFirst())
                    .orElse(gravest.get(0));
            // a need tells what a rule tells of a hurt more plainly
            return lead.isOfNeed() ? gravest.stream().filter(Finding::safety).findFirst().orElse(lead) : lead;
        }

        private static Diagnostic alone(Walk walk, Finding finding) {
            List<String> sources = new ArrayList<>(finding.sources());
            for (Finding.Attempt attempt : finding.attempts()) {
                if (attempt instanceof Finding.Attempt.Search search) {
                    Sources.of(walk, search.slot()).stream().limit(4).forEach(sources::add);
                }
            }
            return new Diagnostic(finding.name(), finding.severity(), new Mark(finding.primary(), finding.text()),
                    finding.others(), finding.because(), List.of(), List.of(), union(List.of(), sources));
        }

        /** The first leads; what the other says at the same place is said as well, at another it is marked there. */
        private static Diagnostic together(Diagnostic lead, Diagnostic other) {
            List<Mark> marks = new ArrayList<>(lead.others());
            List<String> also = new ArrayList<>(lead.also());
            Mark own = other.primary();
            if (own.span().equals(lead.primary().span())) {
                if (!own.text().equals(lead.primary().text())) {
                    also.add(own.text().replace(Characteristics.ASKED, "the route "));
                }
            } else {
                marks.removeIf(m -> m.span().equals(own.span()));
                marks.add(own);
            }
            for (Mark mark : other.others()) {
                if (marks.size() < MARKS && !mark.span().equals(lead.primary().span())
                        && marks.stream().noneMatch(m -> m.span().equals(mark.span()))) {
                    marks.add(mark);
                }
            }
            return new Diagnostic(lead.name(), lead.severity(), lead.primary(), marks, union(lead.because(), other.because()),
                    also, lead.remedies(), union(lead.sources(), other.sources()));
        }

        private static List<String> union(List<String> a, List<String> b) {
            List<String> result = new ArrayList<>(a);
            b.stream().filter(s -> !result.contains(s)).forEach(result::add);
            return result;
        }
    }
}
