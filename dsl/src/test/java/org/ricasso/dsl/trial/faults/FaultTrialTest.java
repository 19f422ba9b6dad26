package org.ricasso.dsl.trial.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ricasso.oracle.Oracle;

class FaultTrialTest {
    @Test
    void trial() throws IOException {
        Trial trial = new Trial();
        StringBuilder out = new StringBuilder();
        for (WrittenKnife knife : trial.house.knives()) {
            out.append("good ").append(knife.name()).append(' ').append(Oracle.judge(trial.job(knife))).append(' ')
                    .append(trial.house.check(new KnifeText(knife).text()).size()).append('\n');
        }
        long start = System.nanoTime();
        List<Fault> faults = trial.faults();
        List<Outcome> outcomes = faults.parallelStream().map(trial::outcome).toList();
        out.append("ms ").append((System.nanoTime() - start) / 1000000).append('\n');
        Map<String, List<Outcome>> kinds = outcomes.stream().collect(Collectors.groupingBy(o -> o.fault().kind(), TreeMap::new,
                Collectors.toList()));
        kinds.forEach((kind, of) -> {
            long unsound = of.stream().filter(Outcome::unsound).count();
            out.append(String.format("%-22s seeded %4d sound %4d pass %4d | unsound %4d caught %4d located %4d | remedies %4d work %4d%n", kind, of.size(),
                    of.size() - unsound, of.stream().filter(o -> !o.unsound() && o.passes()).count(), unsound,
                    of.stream().filter(o -> o.unsound() && o.caught()).count(),
                    of.stream().filter(o -> o.unsound() && o.caught() && o.located()).count(),
                    of.stream().mapToInt(Outcome::remedies).sum(), of.stream().mapToInt(Outcome::work).sum()));
        });
        for (Outcome o : outcomes) {
            if (!o.agreed()) out.append("DIS ").append(o.fault()).append(" | ").append(o.opinion()).append(" | ").append(o.finding()).append('\n');
            else if (o.unsound() && !o.located()) out.append("LOC ").append(o.fault()).append(" | ").append(o.opinion()).append(" | ").append(o.finding()).append('\n');
            if (o.remedies() > o.work()) out.append("REM ").append(o.fault()).append(" | ").append(o.finding()).append(" | ").append(o.found().get(0).remedies().stream().map(r -> r.text()).toList()).append('\n');
        }
        Files.writeString(Path.of("/tmp/trial-out.txt"), out.toString());
        assertThat(outcomes).isNotEmpty();
    }
}
