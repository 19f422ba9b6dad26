package org.ricasso.dsl.trial.faults;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.oracle.Figure;
import org.ricasso.oracle.Job;
import org.ricasso.oracle.Oracle;
import org.ricasso.oracle.Violation;

/** Seeds faults into every route of the house and looks what the check says of each. The same house gives the same faults. */
final class Trial {
    private static final long SEED = 20260914;
    private static final List<String> KINDS = List.of("centre", "stock", "die", "wheel", "belt", "rivet");
    /** Classes of materials that the reference lists for rivets, shells and joints, not for handles. */
    private static final List<Figure> NO_HANDLE = List.of(new Figure.Word("metal"), new Figure.Word("adhesive"));
    final HouseOfFaults house;
    private final Map<String, Map<String, Figure>> things = new HashMap<>();

    Trial() {
        HouseOfFaults bare = new HouseOfFaults("");
        house = new HouseOfFaults(Things.text(bare.things("stock").values(), bare.things("centre").values(),
                bare.things("steel").values()));
        for (String kind : KINDS) {
            house.things(kind).forEach((name, thing) -> things.put(name, Plain.entries(thing)));
        }
    }

    /** Valid routes that the second opinion does not hold to be sound, or knows an operation of not, and why. */
    Map<String, String> refused() {
        Map<String, String> refused = new TreeMap<>();
        for (WrittenKnife knife : house.knives()) {
            String unknown = knife.all().stream().map(WrittenStep::operation).filter(o -> !Oracle.knows(o)).sorted().distinct()
                    .collect(Collectors.joining(", "));
            List<Violation> violations = unknown.isEmpty() ? Oracle.judge(job(knife)) : List.of();
            if (!unknown.isEmpty() || !violations.isEmpty()) {
                refused.put(knife.name(), unknown.isEmpty() ? violations.toString() : "it knows nothing of " + unknown);
            }
        }
        return refused;
    }

    List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        Map<String, String> refused = refused();
        for (WrittenKnife knife : house.knives()) {
            if (refused.containsKey(knife.name())) {
                continue;
            }
            faults.addAll(ChangedRoute.of(knife, random(knife, 1), house::measurable));
            faults.addAll(ChangedSettings.of(knife, job(knife), random(knife, 2)));
            faults.addAll(ChangedSettings.centres(knife, random(knife, 3), things("centre")));
            faults.addAll(ChangedSpec.of(knife, random(knife, 4), Map.of("steel", names("steel"), "material", names("material").stream()
                            .filter(m -> !NO_HANDLE.contains(Plain.entries(house.things("material").get(m)).get("class"))).toList())));
        }
        return faults;
    }

    /** A knife that comes to the house changes nothing about the others. */
    private static Random random(WrittenKnife knife, int of) {
        return new Random(SEED + 31L * knife.name().hashCode() + of);
    }

    private List<String> names(String kind) {
        return house.things(kind).keySet().stream().sorted().toList();
    }

    private Map<String, Map<String, Figure>> things(String kind) {
        Map<String, Map<String, Figure>> result = new HashMap<>();
        house.things(kind).keySet().forEach(name -> result.put(name, things.get(name)));
        return result;
    }

    Job job(WrittenKnife knife) {
        return Plain.job(knife, things);
    }

    Outcome outcome(Fault fault) {
        List<Violation> violations = Oracle.judge(job(fault.knife()));
        KnifeText text = new KnifeText(fault.knife());
        List<Diagnostic> found = house.check(text.text());
        boolean error = found.stream().anyMatch(d -> d.severity() == Severity.ERROR);
        boolean grave = violations.stream().anyMatch(Violation::grave);
        boolean warned = found.stream().anyMatch(d -> d.severity() != Severity.NOTE);
        List<Remedy> remedies = found.stream().filter(d -> d.severity() == Severity.ERROR).flatMap(d -> d.remedies().stream())
                .filter(r -> !r.edits().isEmpty()).distinct().toList();
        int work = (int) remedies.stream().filter(r -> holds(text.text(), r)).count();
        return new Outcome(fault, violations, !violations.isEmpty(), found, grave ? error : warned, !error, located(fault, violations, text, found),
                remedies.size(), work);
    }

    private boolean holds(String text, Remedy remedy) {
        List<Edit> edits = new ArrayList<>(remedy.edits());
        edits.sort(Comparator.comparingInt((Edit e) -> e.span().start()).reversed());
        StringBuilder mended = new StringBuilder(text);
        for (Edit edit : edits) {
            if (!edit.span().file().name().equals("knife.ricasso")) {
                return false;
            }
            mended.replace(edit.span().start(), edit.span().end(), edit.replacement());
        }
        return house.check(mended.toString()).stream().noneMatch(d -> d.severity() == Severity.ERROR);
    }

    private static boolean located(Fault fault, List<Violation> violations, KnifeText text, List<Diagnostic> found) {
        List<KnifeText.Stretch> places = new ArrayList<>(fault.where().stream().map(place -> Fault.stretch(text, place)).toList());
        if (fault.lacking()) {
            List<WrittenStep> all = fault.knife().all();
            for (Violation violation : violations) {
                if (violation.step() >= 0) {
                    places.add(text.step(all.get(violation.step()).id()));
                }
                places.add(text.entry(violation.at()));
            }
        }
        List<KnifeText.Stretch> there = places.stream().filter(Objects::nonNull).toList();
        return found.stream().filter(d -> d.severity() != Severity.NOTE)
                .flatMap(d -> Stream.concat(Stream.of(d.primary()), d.others().stream())).map(Mark::span)
                .filter(s -> s.file().name().equals("knife.ricasso"))
                .anyMatch(s -> there.stream().anyMatch(p -> p.holds(s.start(), s.end())));
    }
}
