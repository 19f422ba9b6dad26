package org.ricasso.dsl.trial.faults;
import org.junit.jupiter.api.Test;
class FirstLookTest {
    @Test void look() {
        HouseOfFaults house = new HouseOfFaults("");
        for (WrittenKnife knife : house.knives()) {
            KnifeText text = new KnifeText(knife);
            try { java.nio.file.Files.writeString(java.nio.file.Path.of("/tmp/written-" + knife.name() + ".txt"), text.text()); } catch (Exception e) {}
            var found = house.check(text.text());
            System.out.println(knife.name() + " " + found.size());
            found.forEach(d -> System.out.println("  " + d.severity() + d.name() + " " + d.primary()));
        }
        String t = new KnifeText(house.knives().get(0)).text();
        for (int r = 0; r < 5; r++) { long a = System.nanoTime(); for (int i = 0; i < 50; i++) house.check(t); System.out.println((System.nanoTime() - a) / 50e6); }
    }
}
