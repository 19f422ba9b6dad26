package org.ricasso.dsl.trial.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Comparisons;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Truth;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.trial.TrialHouse;
import org.ricasso.dsl.trial.coverage.Holder;
import org.ricasso.dsl.trial.coverage.Rows;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;

/**
 * The needs that hold the reference's rules ({@code coverage/rules.csv}): in a knife of the house that has the operation, the step before it
 * spoils what is needed, and that is found. Operations that no knife of the house has are tried by {@code NeedsOfOperationsTest}.
 */
class NeedsAreJudgedTest {
    private static final Vocabulary VOCABULARY = TrialHouse.whole().vocabulary(new Findings());
    private static final Set<Holder> NEEDS = Rows.of("/org/ricasso/dsl/trial/coverage/rules.csv").stream()
            .flatMap(row -> Holder.in(row.get("held by")).stream()).filter(h -> h.what().equals("need"))
            .collect(Collectors.toCollection(() -> new TreeSet<>((a, b) -> a.name().compareTo(b.name()))));
    private static final Set<String> TRIED_ELSEWHERE = Stream.of("blank-and-blade", "handles-and-edges")
            .flatMap(p -> Rows.of("/org/ricasso/dsl/trial/" + p + "-needs.csv").stream()).map(r -> r.get("operation") + "." + r.get("need"))
            .collect(Collectors.toSet());

    @Test
    void whatIsSpoiledIsFound() {
        Map<Holder, String> spoils = new LinkedHashMap<>();
        NEEDS.forEach(need -> spoils.put(need, spoil(need)));
        HouseOfFaults house = new HouseOfFaults(String.join("\n", spoils.values()));
        List<String> missed = new ArrayList<>();
        int tried = 0;
        for (Holder need : NEEDS) {
            WrittenKnife knife = house.knives().stream().filter(k -> place(k, need) >= 0).findFirst().orElse(null);
            if (knife == null) {
                if (!TRIED_ELSEWHERE.contains(need.name())) {
                    missed.add(need + ": no route has it");
                }
                continue;
            }
            tried++;
            List<WrittenStep> steps = new ArrayList<>(knife.steps());
            steps.add(place(knife, need), new WrittenStep(9999, name(need), "rack-1", Map.of(), Map.of()));
            List<Diagnostic> found = house.check(new KnifeText(knife.with(steps)).text());
            if (found.stream().noneMatch(d -> says(d, need))) {
                missed.add(need + " in " + knife.name() + ": " + found.stream().map(d -> d.primary().text()).toList());
            }
        }
        assertThat(missed).isEmpty();
        assertThat(tried).isGreaterThan(60);
    }

    private static int place(WrittenKnife knife, Holder need) {
        for (int i = 0; i < knife.steps().size(); i++) {
            if (knife.steps().get(i).operation().equals(need.operation())) {
                return i;
            }
        }
        return -1;
    }

    private static boolean says(Diagnostic found, Holder need) {
        String property = need.own().substring(need.own().lastIndexOf('.') + 1);
        return Stream.of(Stream.of(found.primary().text()), found.others().stream().map(Mark::text), found.also().stream()).flatMap(s -> s)
                .anyMatch(text -> text.contains(property + " ") && text.contains(", " + need.operation() + " needs "));
    }

    private static String name(Holder need) {
        return "spoil-" + need.name().replace('.', '-');
    }

    /** An operation that does no more than leave a property as it must not be; a clock runs for a month. */
    private static String spoil(Holder holder) {
        Operation.Need need = holder.need(VOCABULARY);
        assertThat(need).as(holder.toString()).isNotNull();
        Property property = need.property();
        boolean clock = property.type() == Type.Plain.CLOCK;
        return "operation " + name(holder) + " \"Spoil\" {\n    purpose: \"Spoils one property.\"\n    at: rack\n"
                + (property.part() == null ? "" : "    works: " + property.part() + "\n")
                + (clock ? "" : "    leaves { " + property.name() + ": " + wrong(need) + " }\n")
                + (clock ? "    time { run: 30 d per piece }\n" : "") + "    instruct { \"Spoil it.\" }\n}\n";
    }

    private static String wrong(Operation.Need need) {
        if (need.property().type() instanceof Type.WordsOf of) {
            Value asked = need.condition().eval(new Frame());
            return of.words().stream().filter(w -> Comparisons.meets(Value.Words.of(w), asked, false) == Truth.NONE).findFirst().orElseThrow();
        }
        // a length: far above what is asked, or nothing where a least is asked
        Value asked = need.reads().settings.isEmpty() ? need.condition().eval(new Frame()) : null;
        boolean least = asked instanceof Value.Num num && Double.isInfinite(num.quantity().aim().most());
        return least ? "0 mm" : "500 mm";
    }
}
