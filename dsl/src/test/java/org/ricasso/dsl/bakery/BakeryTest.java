package org.ricasso.dsl.bakery;

import org.junit.jupiter.api.Test;
import java.util.Map;

class BakeryTest {
    @Test
    void dump() {
        for (Map<String, String> m : java.util.List.of(Map.<String,String>of(), Map.of("hold:      48 ± 2 min", "hold:      30 ± 2 min"),
            Map.of("        40 rise at room-1 { room: 27 ± 1 °C; hold: 70 ± 5 min }\n", ""),
            Map.of("        30 flour-tray\n        40 rise at room-1 { room: 27 ± 1 °C; hold: 70 ± 5 min }", "        40 rise at room-1 { room: 27 ± 1 °C; hold: 70 ± 5 min }"),
            Map.of("water-mass: 3000 ± 10 g", "water-mass: 3300 ± 10 g"),
            Map.of("        30 flour-tray\n        40 rise at room-1 { room: 27 ± 1 °C; hold: 70 ± 5 min }", "30 flour-tray\n 35 rest { hold: 40 min }\n       40 rise at room-1 { room: 27 ± 1 °C; hold: 70 ± 5 min }"),
            Map.of("flour: rye-1150","flour: rye-1510"),
            Map.of("oven:       255 ± 4 °C","oven:       268 ± 4 °C"),
            Map.of("room: 27 ± 1 °C","room: 33 ± 1 °C"),
            Map.of("hold: 70 ± 5 min","hold: 110 ± 5 min"),
            Map.of("protein: 9 %", "protein: 13 %"),
            Map.of("play: 0.5 mm", "play: 1.5 mm"),
            Map.of("hold:      48 ± 2 min", "hold:      48 ± 2 °C")
        )) {
        System.out.println("#### " + m);
        var r = Bakery.checked(m);
        r.checked().diagnostics().forEach(d -> System.out.println(new org.ricasso.dsl.diagnostics.DiagnosticPrinter(java.nio.charset.StandardCharsets.UTF_8, false).print(d)));
        }
    }
}
